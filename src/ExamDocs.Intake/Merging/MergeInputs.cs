using System.Globalization;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Photos;

namespace ExamDocs.Intake.Merging;

/// <summary>
/// Makes one record of several inputs of one visit, so that they are decided together. Nothing is chosen between two that
/// disagree: both stay, the disagreement is an error that names both places, and the worse holds.
/// </summary>
public static class MergeInputs
{
    private static readonly string[] Lists = ["people", "items", "limits", "examinations", "renewals", "remedies", "releases", "disposals"];

    /// <param name="inputs">Readable inputs of one visit, one at least.</param>
    public static ReadResult Of(IReadOnlyList<ReadResult> inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        if (inputs.Count == 1)
            return inputs[0];
        var visit = MergedVisit.Of(inputs.Select(i => i.Record!.Visit));
        List<ReadResult> dated = [.. inputs.Select(i => i with { Record = WithItsDay(i.Record!, visit) })];
        var rows = Lists.ToDictionary(list => list, list => Rows(list, dated), StringComparer.Ordinal);
        var places = new MergedPlaces(inputs, rows);
        List<Finding> findings =
        [
            .. inputs.SelectMany((input, n) => input.Findings.Select(f => f with { Path = places.Rebased(n, f.Path) })),
            .. MergedVisit.Disagreements(inputs),
            .. Lists.SelectMany(list => rows[list].TakenOnce().Concat(rows[list].Disagreements(row => KeyOf(row, visit)))),
        ];
        return new ReadResult(Record(dated, visit, rows), findings, places.Map(), null);
    }

    /// <summary>An examination without a date is of its own input's day, whatever the visit's day comes to be.</summary>
    private static ExaminationRecord WithItsDay(ExaminationRecord record, Visit visit) => record.Visit.ExaminedOn is not { } day || day == visit.ExaminedOn
        ? record
        : record with { Examinations = [.. record.Examinations.Select(e => e.ExaminedOn is null && !e.ExaminedOnUnreadable ? e with { ExaminedOn = day } : e)] };

    private static MergedRows Rows(string list, List<ReadResult> inputs)
    {
        var merged = new MergedRows();
        for (var n = 0; n < inputs.Count; n++)
        {
            var flawed = FlawedRows(list, inputs[n]);
            var nodes = RecordTree.Of(inputs[n].Record!).Members.Where(m => string.Equals(m.Key, list, StringComparison.Ordinal)).SelectMany(m => ((ListNode)m.Value).Elements);
            foreach (var (node, index) in nodes.Select((node, index) => ((ObjectNode)node, index)))
                merged.Add(new SourceRow(n, inputs[n], list, index, node, flawed.Contains(index)));
        }
        return merged;
    }

    /// <summary>Rows that reading had something to say about; a photo that is missing makes no typed value doubtful.</summary>
    private static HashSet<int> FlawedRows(string list, ReadResult input) => input.Findings
        .Where(f => !PhotoRules.All.Any(r => string.Equals(r.Code, f.Code, StringComparison.Ordinal))).Select(f => f.Path.Split('/'))
        .Where(steps => steps.Length > 2 && string.Equals(steps[1], list, StringComparison.Ordinal))
        .Select(steps => int.TryParse(steps[2], NumberStyles.None, CultureInfo.InvariantCulture, out var index) ? index : -1).ToHashSet();

    /// <summary>What a row is about, where two about the same contradict each other.</summary>
    private static string? KeyOf(SourceRow row, Visit visit) => row.List switch
    {
        "people" or "items" => row.Member("id"),
        "limits" => string.Join('\n', row.Member("maker"), row.Member("model"), row.Member("partNumber")),
        "examinations" => row.Member("item") is { } item ? $"{item}\n{row.Member("examinedOn") ?? Day(visit)}" : null,
        _ => null,
    };

    private static string? Day(Visit visit) => visit.ExaminedOn?.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture);

    private static ExaminationRecord Record(List<ReadResult> inputs, Visit visit, Dictionary<string, MergedRows> rows)
    {
        return new ExaminationRecord
        {
            Format = inputs.Select(i => i.Record!.Format).FirstOrDefault(f => f is not null),
            Visit = visit,
            People = Kept("people", r => r.People),
            Items = Kept("items", r => r.Items),
            Limits = Kept("limits", r => r.Limits),
            Examinations = Kept("examinations", r => r.Examinations),
            Renewals = Kept("renewals", r => r.Renewals),
            Remedies = Kept("remedies", r => r.Remedies),
            Releases = Kept("releases", r => r.Releases),
            Disposals = Kept("disposals", r => r.Disposals),
        };

        IReadOnlyList<T> Kept<T>(string list, Func<ExaminationRecord, IReadOnlyList<T>> of) =>
            [.. rows[list].Kept.Select(row => of(inputs[row.Input].Record!)[row.Index])];
    }
}
