using System.CommandLine;
using System.CommandLine.Parsing;
using ExamDocs.Cli.Progress;
using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Company.Packing;
using NodaTime;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs pack</c>: everything that an auditor, an insurer or an authority asks for, in one file.</summary>
internal static class PackCommand
{
    private static readonly Option<string> Employer = new("--employer")
    {
        Description = "Whose kit.",
        HelpName = "NAME",
        Required = true,
    };

    private static readonly Option<string?> Premises = new("--premises")
    {
        Description = "Only what was recorded last at these premises. Default: at all.",
        HelpName = "NAME",
    };

    private static readonly Option<string[]> Items = new("--items")
    {
        Description = "Only these items, by id, or the ids in a text file, one on each line. Default: all.",
        HelpName = "ID|FILE",
        AllowMultipleArgumentsPerToken = true,
    };

    private static readonly Option<LocalDate?> AsOf = new("--as-of")
    {
        Description = "The day for which it says how things stand, by what the register knew by then. Default: today.",
        HelpName = "YYYY-MM-DD",
        CustomParser = CommonOptions.Day,
    };

    private static readonly Option<FileInfo> Out = new("--out")
    {
        Description = "The ZIP to write. A PDF for reading is written beside it.",
        HelpName = "FILE",
        Required = true,
    };

    private static readonly Option<DirectoryInfo?> Evidence = new("--evidence")
    {
        Description =
            "Folder of PDFs and pictures to enclose: a name that begins with an examiner's id or name is evidence of competence, one that "
            + "begins with an item's id or model a declaration of conformity.",
        HelpName = "DIR",
    };

    public static Command Create()
    {
        var command = new Command(
            "pack",
            "Builds an audit pack: every current document as issued, what is missing, evidence, and how to verify it all. Decides nothing."
        )
        {
            Employer,
            Premises,
            Items,
            AsOf,
            Out,
            Evidence,
            CommonOptions.Letterhead,
            CommonOptions.Rules,
            OutputOptions.Replace,
        };
        command.Validators.Add(CheckOut);
        command.SetAction((parsed, cancellation) => RunGuard.RunAsync(() => RunAsync(parsed, cancellation)));
        return command;
    }

    private static void CheckOut(CommandResult command)
    {
        if (command.GetResult(Out) is { Tokens: [var typed, ..] } && !typed.Value.EndsWith(".zip", StringComparison.OrdinalIgnoreCase))
            command.AddError($"--out is a ZIP: name it with .zip at the end, not {typed.Value}");
    }

    private static async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        if (
            CommonOptions.PrintStyle(parsed) is not { } style
            || CommonOptions.KnownRules(parsed) is not { } rules
            || RegisterCommand.Existing(parsed) is not { } register
        )
            return ExitCode.Refused;
        var today = CommonOptions.Today();
        var asked = new PackQuestion(parsed.GetRequiredValue(Employer), parsed.GetValue(AsOf) ?? today, today)
        {
            Premises = parsed.GetValue(Premises),
            Items = PackItemList.Read(parsed.GetValue(Items) ?? []),
            Language = style.Language,
            Rules = rules,
        };
        var request = new PackRequest(register.Place, asked, parsed.GetRequiredValue(Out).ToString())
        {
            EvidenceFolder = parsed.GetValue(Evidence)?.ToString(),
            Outputs = OutputOptions.Guard(parsed, Out),
            Style = style,
        };
        var result = await ProgressScreen.ShowAsync(parsed, told => BuildPack.RunAsync(request with { Progress = told }, cancellation));
        return Say(parsed, request, result);
    }

    private static int Say(ParseResult parsed, PackRequest request, PackResult result)
    {
        var (output, error) = (parsed.InvocationConfiguration.Output, parsed.InvocationConfiguration.Error);
        foreach (var remark in result.Remarks)
            error.WriteLine(Screen.Say(remark));
        if (!result.IsBuilt)
        {
            error.WriteLine(result.Refused is { } refused ? Screen.Say(refused) : result.Failure);
            return result.Refused is null ? ExitCode.Stopped : ExitCode.Refused;
        }
        foreach (var (code, about, words) in result.Gaps)
            output.WriteLine($"{code}  {about}: {words}");
        if (!parsed.GetValue(CommonOptions.Quiet))
        {
            var (gaps, (items, documents)) = (result.Gaps.Count, result.Counted);
            output.WriteLine(Screen.Say($"{items} items, {documents} documents, {gaps} gaps"));
            output.WriteLine(Path.GetFullPath(request.OutFile));
            if (result.HasCopy)
                output.WriteLine(Path.GetFullPath(request.CopyFile));
        }
        return result.Gaps.Count > 0 || !result.HasCopy ? ExitCode.Findings : ExitCode.Done;
    }
}
