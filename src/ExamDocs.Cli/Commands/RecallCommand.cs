using System.CommandLine;
using System.Text.Json;
using ExamDocs.Cli.Progress;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Recalls;
using ExamDocs.Core.Records;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Recalling;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs recall</c>: which items of the register a maker's safety notice names.</summary>
internal static class RecallCommand
{
    private static readonly Argument<FileInfo> Notice = new("NOTICE.json")
    {
        Description = "A maker's safety notice as data, format examdocs-recall/1 (docs/recall.md).",
    };

    private static readonly Option<DirectoryInfo?> Out = new("--out")
    {
        Description =
            "Take everything that the notice names out of use: notices, labels and the record of the sweep go into this folder. Left out: "
            + "nothing is changed.",
        HelpName = "DIR",
    };

    private static readonly Option<string?> Examiner = new("--examiner")
    {
        Description = "With --out: name of the competent person who takes the items out of use, as the papers print it.",
        HelpName = "NAME",
    };

    private static readonly Option<bool> Json = new("--json") { Description = "Print every item as JSON, those not affected too." };

    public static Command Create()
    {
        var command = new Command("recall", "Looks through the register for kit that a maker's safety notice names; takes it out of use.")
        {
            Notice,
            Json,
            Out,
            Examiner,
            CommonOptions.Letterhead,
            CommonOptions.Rules,
        };
        ReadingOptions.AddTo(command);
        SigningOptions.AddTo(command);
        command.Validators.Add(result =>
        {
            if (result.GetResult(Out) is null != string.IsNullOrWhiteSpace(result.GetValue(Examiner)))
                result.AddError("--out DIR and --examiner NAME go together: somebody has to take the items out of use");
        });
        command.SetAction((parsed, cancellation) => RunGuard.RunAsync(() => RunAsync(parsed, cancellation)));
        return command;
    }

    private static async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        if (RegisterCommand.Existing(parsed) is not { } register)
            return ExitCode.Refused;
        var (notice, faults) = ReadNotice.From(parsed.GetRequiredValue(Notice).ToString());
        foreach (var fault in faults)
            parsed.InvocationConfiguration.Error.WriteLine(fault);
        if (notice is null)
            return ExitCode.Refused;
        if (parsed.GetValue(Out) is { } folder)
            return await SweepAsync(parsed, register.Place, notice, folder, cancellation);
        return Shown(parsed, notice, SweepRecall.Plan(register.Place, notice, CommonOptions.Today()));
    }

    private static async Task<int> SweepAsync(
        ParseResult parsed,
        string register,
        SafetyNotice notice,
        DirectoryInfo folder,
        CancellationToken cancellation
    )
    {
        if (CommonOptions.KnownRules(parsed) is not { } rules || CommonOptions.PrintStyle(parsed) is not { } style)
            return ExitCode.Refused;
        var request = new SweepRequest
        {
            Notice = notice,
            RegisterPath = register,
            Today = CommonOptions.Today(),
            OutFolder = folder.ToString(),
            Examiner = new Person { Name = parsed.GetValue(Examiner)!.Trim() },
            Rules = rules,
            Style = style,
        };
        var result = await ProgressScreen.ShowAsync(parsed, told => SweepRecall.RunAsync(request with { Progress = told }, cancellation));
        var code = Shown(parsed, notice, result.Items);
        if (result.Issued is { } issued)
            IssueCommand.PrintIssued(issued with { Refused = [] }, folder.FullName, parsed.GetValue(CommonOptions.Quiet));
        if (result.File is not null)
            parsed.InvocationConfiguration.Error.WriteLine(
                Screen.Say($"record of the sweep: {Path.Combine(folder.FullName, result.File)}")
            );
        return result.Issued?.Failure is null ? code : ExitCode.Stopped;
    }

    private static int Shown(ParseResult parsed, SafetyNotice notice, IReadOnlyList<PlannedItem> items)
    {
        var output = parsed.InvocationConfiguration.Output;
        if (parsed.GetValue(Json))
            output.WriteLine(AsJson(notice, items));
        else
            Print(notice, items, output, parsed.GetValue(CommonOptions.Quiet));
        return items.Any(i => i.Item.Verdict is RecallVerdict.Affected) ? ExitCode.Findings
            : items.Any(i => i.Item.Verdict is RecallVerdict.CannotTell) ? ExitCode.CannotTell
            : ExitCode.Done;
    }

    private static void Print(SafetyNotice notice, IReadOnlyList<PlannedItem> items, TextWriter output, bool quiet)
    {
        output.WriteLine($"{notice.Maker}, {notice.Reference}, {notice.On:uuuu'-'MM'-'dd}: {notice.Demands}");
        foreach (var item in items.Where(i => !quiet || i.Item.Verdict is not RecallVerdict.NotAffected))
            output.WriteLine(Line(item.Item) + (item.Said is { } said ? $"\n    {Screen.Say(said)}" : ""));
        int Count(RecallVerdict verdict) => items.Count(i => i.Item.Verdict == verdict);
        var (affected, open, not) = (Count(RecallVerdict.Affected), Count(RecallVerdict.CannotTell), Count(RecallVerdict.NotAffected));
        output.WriteLine(Screen.Say($"{affected} affected, {open} cannot be told, {not} not affected"));
        var (withdraw, hold) = (items.Count(i => i.Action is SweepAction.Withdraw), items.Count(i => i.Action is SweepAction.Hold));
        output.WriteLine(Screen.Say($"{withdraw} to withdraw, {hold} to hold"));
    }

    private static string Line(RecalledItem item)
    {
        var id = item.Item.Id ?? Screen.Say($"(no id)");
        var others = item.OtherIds.Count == 0 ? "" : $" ({string.Join(", ", item.OtherIds)})";
        var marks = new[] { item.Item.Maker, item.Item.Model, item.Item.Serial, item.Owner }.Where(m => !string.IsNullOrWhiteSpace(m));
        var stands = item.Why is null ? "" : $"\n    {Screen.Say(item.Why)}";
        return $"{id}{others}  {Screen.Say(Words(item.Verdict))}: {Screen.Say(Message.Join("; ", item.Reasons))}\n"
            + $"    {string.Join(", ", marks)}{stands}";
    }

    private static Message Words(RecallVerdict verdict) =>
        verdict switch
        {
            RecallVerdict.Affected => $"AFFECTED, DO NOT USE",
            RecallVerdict.CannotTell => $"CANNOT TELL, DO NOT USE until somebody has looked",
            _ => $"not affected",
        };

    private static string AsJson(SafetyNotice notice, IReadOnlyList<PlannedItem> items) =>
        JsonSerializer.Serialize(
            new
            {
                Format = "examdocs-recalled/1",
                notice.Maker,
                notice.Reference,
                notice.On,
                Items = items.Select(i => new
                {
                    i.Item.Item.Id,
                    i.Item.OtherIds,
                    i.Item.Owner,
                    i.Item.Item.Maker,
                    i.Item.Item.Model,
                    i.Item.Item.PartNumber,
                    i.Item.Item.Serial,
                    Manufactured = i.Item.Item.Manufactured?.ToString(),
                    i.Item.Verdict,
                    Reasons = i.Item.Reasons.Select(r => r.Text),
                    i.Item.Standing,
                    Why = i.Item.Why?.Text,
                    i.Action,
                    Said = i.Said?.Text,
                }),
            },
            RuleJson.Options
        );
}
