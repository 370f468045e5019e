using System.CommandLine;
using System.Text.Json;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Recalls;
using ExamDocs.Core.Records;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs recall</c>: which items of the register a maker's safety notice names.</summary>
internal static class RecallCommand
{
    private static readonly Argument<FileInfo> Notice = new("NOTICE.json")
    {
        Description = "A maker's safety notice as data, format examdocs-recall/1 (docs/recall.md).",
    };

    private static readonly Option<bool> Json = new("--json") { Description = "Print every item as JSON, those not affected too." };

    public static Command Create()
    {
        var command = new Command("recall", "Looks through the register for kit that a maker's safety notice names.") { Notice, Json };
        command.SetAction((parsed, _) => RunGuard.RunAsync(() => Task.FromResult(Run(parsed))));
        return command;
    }

    private static int Run(ParseResult parsed)
    {
        if (RegisterCommand.Existing(parsed) is not { } register)
            return ExitCode.Refused;
        var (notice, faults) = ReadNotice.From(parsed.GetRequiredValue(Notice).ToString());
        foreach (var fault in faults)
            parsed.InvocationConfiguration.Error.WriteLine(fault);
        if (notice is null)
            return ExitCode.Refused;
        var items = RecallItems.In(register.Place, notice, CommonOptions.Today());
        var output = parsed.InvocationConfiguration.Output;
        if (parsed.GetValue(Json))
            output.WriteLine(AsJson(notice, items));
        else
            Print(notice, items, output, parsed.GetValue(CommonOptions.Quiet));
        return items.Any(i => i.Verdict is RecallVerdict.Affected) ? ExitCode.Findings
            : items.Any(i => i.Verdict is RecallVerdict.CannotTell) ? ExitCode.CannotTell
            : ExitCode.Done;
    }

    private static void Print(SafetyNotice notice, IReadOnlyList<RecalledItem> items, TextWriter output, bool quiet)
    {
        output.WriteLine($"{notice.Maker}, {notice.Reference}, {notice.On:uuuu'-'MM'-'dd}: {notice.Demands}");
        foreach (var item in items.Where(i => !quiet || i.Verdict is not RecallVerdict.NotAffected))
            output.WriteLine(Line(item));
        int Count(RecallVerdict verdict) => items.Count(i => i.Verdict == verdict);
        var (affected, open, not) = (Count(RecallVerdict.Affected), Count(RecallVerdict.CannotTell), Count(RecallVerdict.NotAffected));
        output.WriteLine(Screen.Say($"{affected} affected, {open} cannot be told, {not} not affected"));
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

    private static string AsJson(SafetyNotice notice, IReadOnlyList<RecalledItem> items) =>
        JsonSerializer.Serialize(
            new
            {
                Format = "examdocs-recalled/1",
                notice.Maker,
                notice.Reference,
                notice.On,
                Items = items.Select(i => new
                {
                    i.Item.Id,
                    i.OtherIds,
                    i.Owner,
                    i.Item.Maker,
                    i.Item.Model,
                    i.Item.PartNumber,
                    i.Item.Serial,
                    Manufactured = i.Item.Manufactured?.ToString(),
                    i.Verdict,
                    Reasons = i.Reasons.Select(r => r.Text),
                    i.Standing,
                    Why = i.Why?.Text,
                }),
            },
            RuleJson.Options
        );
}
