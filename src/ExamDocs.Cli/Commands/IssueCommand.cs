using System.CommandLine;
using System.Globalization;
using ExamDocs.Cli.Progress;
using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs issue</c>: the main job.</summary>
internal static class IssueCommand
{
    private static readonly Argument<string[]> Inputs = new("INPUT")
    {
        Description = "Records: workbooks (.xlsx), JSON, .csv files, a folder of workbooks or a folder of .csv files.",
        Arity = ArgumentArity.OneOrMore,
    };

    private static readonly Option<DirectoryInfo> Out = new("--out")
    {
        Description = "Folder for the documents; made where it is missing. What a new document replaces is moved into replaced within it.",
        HelpName = "DIR",
        Required = true,
    };

    private static readonly Option<string?> Names = new("--names")
    {
        Description =
            "How the files are named, for example \"{employer} {date} {kind} {number}\"; the number is added where it is left out. "
            + $"Known: {string.Join(", ", FileNamePattern.Placeholders.Select(p => $"{{{p}}}"))}. Left out: the number alone.",
        HelpName = "PATTERN",
    };

    private static readonly Option<string[]> For = new("--for")
    {
        Description =
            "Also makes a folder ready to send: for the employer (reports, notices, certificates and a list of them), for the owner that "
            + "kit is hired from (the same), or for the enforcing authority (the copies owed to it). Can be given more than once.",
        HelpName = "WHOM",
    };

    private static readonly Option<bool> Workers = new("--workers")
    {
        Description =
            "Let the workers of a shared register print the pages (examdocs work); this machine numbers, reads back and signs them, and "
            + "needs no browser.",
    };

    static IssueCommand()
    {
        For.AcceptOnlyFromAmong([.. IssueDocuments.Recipients.Select(r => r.Word)]);
        Names.Validators.Add(result =>
        {
            if (result.Tokens is [var typed] && FileNamePattern.Parse(typed.Value, out var objection) is null)
                result.AddError(objection!);
        });
    }

    public static Command Create()
    {
        var command = new Command(
            "issue",
            "Issues documents for all that may be issued, labels and notices for what may not be used; names refusals."
        )
        {
            Inputs,
            Out,
            IssueOptions.PerItem,
            IssueOptions.Only,
            IssueOptions.Reason,
            Names,
            For,
            Workers,
            CommonOptions.Letterhead,
            CommonOptions.Rules,
        };
        ReadingOptions.AddTo(command);
        SigningOptions.AddTo(command);
        command.Validators.Add(result =>
        {
            if (result.GetResult(For) is not null && result.GetResult(IssueOptions.Only) is not null)
                result.AddError("--for takes all that is to be sent: leave --only out");
        });
        command.SetAction((parsed, cancellation) => RunGuard.RunAsync(() => RunAsync(parsed, cancellation)));
        return command;
    }

    private static async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        if (CommonOptions.KnownRules(parsed) is not { } rules || CommonOptions.PrintStyle(parsed) is not { } style)
            return ExitCode.Refused;
        var folder = parsed.GetRequiredValue(Out);
        if (CommonOptions.RegisterToWrite(parsed, folder.FullName) is not { } register)
            return ExitCode.Refused;
        var wasThere = register.Exists;
        var request = new IssueRequest
        {
            Inputs = parsed.GetRequiredValue(Inputs),
            OutFolder = folder.ToString(),
            RegisterPath = register.Place,
            Today = CommonOptions.Today(),
            Rules = rules,
            Style = style,
            PerItem = parsed.GetValue(IssueOptions.PerItem),
            Only = parsed.GetValue(IssueOptions.Only) is { } kind ? [kind] : [],
            For =
            [
                .. IssueDocuments
                    .Recipients.Where(r => (parsed.GetValue(For) ?? []).Contains(r.Word, StringComparer.Ordinal))
                    .Select(r => r.To),
            ],
            Names = parsed.GetValue(Names) is { } pattern ? FileNamePattern.Parse(pattern, out _) : null,
            Reason = IssueOptions.ReasonOf(parsed),
            ByWorkers = parsed.GetValue(Workers),
        };
        var result = await ProgressScreen.ShowAsync(parsed, told =>
            IssueDocuments.RunAsync(request with { Progress = told }, cancellation)
        );
        CommonOptions.SayWhereMade(parsed, register, wasThere);
        Print(result, folder.FullName, parsed.GetValue(CommonOptions.Quiet));
        return result.Failure is not null ? ExitCode.Stopped
            : result.Unprintable.Count > 0 ? Math.Max(ExitCode.Findings, CheckCommand.ExitOf(result.Inputs))
            : CheckCommand.ExitOf(result.Inputs);
    }

    private static void Print(IssueResult result, string folder, bool quiet)
    {
        FindingsPrinter.Print(result.Inputs, quiet);
        PrintIssued(result, folder, quiet);
    }

    /// <summary>What was issued and refused, without the findings on the records.</summary>
    public static void PrintIssued(IssueResult result, string folder, bool quiet)
    {
        foreach (var remark in result.Remarks.Concat(result.Unprintable))
            Console.Error.WriteLine(remark);
        if (!quiet)
        {
            foreach (var refusal in result.Refused)
                Console.Error.WriteLine(Screen.Say($"{refusal.Item}: no {refusal.What}: {string.Join(" ", refusal.Codes)}"));
            foreach (var issued in result.Documents)
            {
                var copy = issued.CopyOf is { } original ? Screen.Say($"  (copy of {original} for the enforcing authority)") : "";
                var before = issued.IssuedNow ? "" : Screen.Say($"  (issued before)");
                var file = string.Equals(issued.FileName, $"{issued.Number}.pdf", StringComparison.Ordinal) ? "" : $"  {issued.FileName}";
                Console.WriteLine($"{issued.Number}  {issued.Kind}  {Items(issued.Items)}{copy}{before}{file}");
            }
            Console.WriteLine(Screen.Say($"{result.Documents.Count} documents in {folder}"));
            foreach (var sentence in result.ToSend)
                Console.WriteLine(sentence);
        }
        if (result.Failure is { } failure)
            Console.Error.WriteLine(Screen.Say(Stopped(failure)));
    }

    private static Message Stopped(string failure) =>
        failure is RunFailure.ByUser ? $"stopped by the user. What is listed is whole; run the command again to go on."
        : failure.EndsWith(RunFailure.GoOn, StringComparison.Ordinal) || failure.EndsWith(RunFailure.IssueThatOne, StringComparison.Ordinal)
            ? (Message)$"stopped: {failure}. What is listed is whole."
        : $"stopped: {failure}. What is listed is whole; run the command again to go on.";

    private static string Items(IReadOnlyList<string> items) =>
        items.Count <= 3 ? string.Join(", ", items) : Screen.Say($"{items.Count} items");
}
