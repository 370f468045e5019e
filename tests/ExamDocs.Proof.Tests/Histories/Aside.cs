using System.Text.Json;
using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Histories;

/// <summary>What records say of a thing that nobody examined for it: put in quarantine, sent for repair, lost, held.</summary>
internal static class Aside
{
    private const string Quarantined = "quarantined";

    /// <summary>Since it was examined last.</summary>
    /// <param name="things">The things.</param>
    /// <param name="thing">A part that the record does not have.</param>
    /// <param name="latest">The rows of its latest examination.</param>
    /// <param name="own">The record that is decided.</param>
    public static bool Since(this Things things, int thing, IReadOnlyList<Row> latest, Sheet own)
    {
        return things
            .Told(thing, own)
            .Any(row =>
                row.Quarantines().Any(day => IsLater(row, day))
                || (!things.IsTakenBack(row, row.Day) && (IsLost(row) || IsHeldUnseen(row)) && IsLater(row, row.Day))
                || IsAway(row)
            );

        bool IsAway(Row row) =>
            Disposals(row)
                .Where(d => d.Text("action") is not ("destroyed" or Quarantined))
                .Select(d => d.Day("on") ?? row.Day)
                .Any(day => IsLater(row, day) && !things.IsTakenBack(row, day));

        bool IsLater(Row row, DateOnly day) => latest.All(e => (day, row.Sheet.Number).CompareTo((e.Day, e.Sheet.Number)) > 0);
    }

    /// <summary>Another record has it as lost, and none has examined it after that day.</summary>
    /// <param name="things">The things.</param>
    /// <param name="inherited">The thing, and what it was said to be formerly.</param>
    /// <param name="own">The record that is decided.</param>
    public static bool IsLost(this Things things, IReadOnlyList<int> inherited, Sheet own)
    {
        var told = inherited.SelectMany(thing => things.Told(thing, own)).ToList();
        return told.Exists(lost =>
            IsLost(lost) && !things.IsTakenBack(lost, lost.Day) && told.TrueForAll(row => !row.Examined || row.Day <= lost.Day)
        );
    }

    /// <summary>The days on which a row was put in quarantine.</summary>
    public static IEnumerable<DateOnly> Quarantines(this Row row) =>
        Disposals(row).Where(d => d.Text("action") == Quarantined).Select(d => d.Day("on") ?? row.Day);

    /// <summary>The rows that other records have of a thing.</summary>
    public static IEnumerable<Row> Told(this Things things, int thing, Sheet own) => things.With[thing].Where(row => row.Sheet != own);

    private static bool IsLost(Row row) => row.Kit.Element.Text("status") == "lost";

    private static bool IsHeldUnseen(Row row) =>
        row is { Examined: false, Said.Outcome: "undetermined" } && row.Said.Codes.Any(code => code != "U0");

    private static IEnumerable<JsonElement> Disposals(Row row) =>
        row.Sheet.Record.List("disposals").Where(d => d.Text("item") == row.Kit.Id);
}
