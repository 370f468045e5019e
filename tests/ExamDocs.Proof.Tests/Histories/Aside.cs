using System.Text.Json;
using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Histories;

/// <summary>What records say of a thing that nobody examined for it: put in quarantine, sent for repair, lost, held.</summary>
internal static class Aside
{
    /// <summary>Since it was examined last.</summary>
    /// <param name="things">The things.</param>
    /// <param name="thing">A part that the record does not have.</param>
    /// <param name="latest">The rows of its latest examination.</param>
    /// <param name="sheets">All records.</param>
    /// <param name="own">The record that is decided.</param>
    public static bool Since(this Things things, int thing, IReadOnlyList<Row> latest, IReadOnlyList<Sheet> sheets, Sheet own)
    {
        return Told(things, thing, sheets, own)
            .Any(row =>
                (row.Kit.Element.Text("status") == "lost" && IsLater(row, row.Day))
                || (row is { Examined: false, Said.Outcome: "undetermined" } && row.Said.Codes.Any(c => c != "U0") && IsLater(row, row.Day))
                || Disposals(row).Any(d => d.Text("action") != "destroyed" && IsLater(row, d.Day("on") ?? row.Day))
            );

        bool IsLater(Row row, DateOnly day) => latest.All(e => (day, row.Sheet.Number).CompareTo((e.Day, e.Sheet.Number)) > 0);
    }

    /// <summary>An earlier record put it in quarantine, and none has released it; it was not withdrawn then.</summary>
    public static bool IsQuarantined(this Things things, Row row, IReadOnlyList<Sheet> sheets, Sheet own)
    {
        var thing = things.Of(row);
        var told = Told(things, thing, sheets, own).ToList();
        var released = things
            .With[thing]
            .SelectMany(r => r.Sheet.Record.List("releases").Where(release => release.Text("item") == r.Kit.Id))
            .Select(release => release.Day("on"))
            .ToList();
        return (
            from earlier in told
            from disposal in Disposals(earlier)
            where disposal.Text("action") == "quarantined"
            let day = disposal.Day("on") ?? earlier.Day
            where day <= row.Day && !released.Exists(r => r >= day) && !WasWithdrawn(told, day)
            select day
        ).Any();
    }

    private static bool WasWithdrawn(List<Row> told, DateOnly day) =>
        told.Where(r => r.Examined && r.Day <= day).GroupBy(r => r.Day).MaxBy(g => g.Key)?.Any(r => r.Said is { Withdrawn: true }) == true;

    private static IEnumerable<Row> Told(Things things, int thing, IReadOnlyList<Sheet> sheets, Sheet own) =>
        things.With[thing].Where(row => row.Sheet != own && !things.IsReplaced(row, sheets));

    private static IEnumerable<JsonElement> Disposals(Row row) =>
        row.Sheet.Record.List("disposals").Where(d => d.Text("item") == row.Kit.Id);
}
