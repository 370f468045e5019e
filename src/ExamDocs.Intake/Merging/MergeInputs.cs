using System.Globalization;
using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

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
        if (inputs.Select(i => (i.Record!.Visit.Examiner, i.Record.Visit.Basis)).Distinct().Count() > 1)
            inputs = [.. inputs.Select(i => i with { Record = SharedValues.PerExamination(i.Record!) })];
        var visit = MergedVisit.Of(inputs.Select(i => i.Record!.Visit));
        List<SourceInput> dated =
        [
            .. inputs.Select((input, n) => new SourceInput(n, input with { Record = WithItsDay(input.Record!, visit) })),
        ];
        var rows = Lists.ToDictionary(list => list, list => Rows(list, dated), StringComparer.Ordinal);
        var places = new MergedPlaces(dated, rows);
        List<Finding> findings =
        [
            .. inputs.SelectMany((input, n) => input.Findings.Select(f => places.Rebased(n, f))),
            .. MergedVisit.Disagreements(dated),
            .. Lists.SelectMany(list => rows[list].TakenOnce().Concat(rows[list].Disagreements(row => KeyOf(row, visit)))),
        ];
        return new ReadResult(Record(dated, visit, rows), findings, places.Map(), null)
        {
            UnreadRows = [.. inputs.SelectMany(i => i.UnreadRows)],
        };
    }

    /// <summary>An examination without a date is of its own input's day, whatever the visit's day comes to be.</summary>
    private static ExaminationRecord WithItsDay(ExaminationRecord record, Visit visit) =>
        record.Visit.ExaminedOn is not { } day || day == visit.ExaminedOn
            ? record
            : record with
            {
                Examinations =
                [
                    .. record.Examinations.Select(e => e.ExaminedOn is null && !e.ExaminedOnUnreadable ? e with { ExaminedOn = day } : e),
                ],
            };

    private static MergedRows Rows(string list, List<SourceInput> inputs)
    {
        var merged = new MergedRows();
        foreach (var row in inputs.SelectMany(input => input.Rows(list)))
            merged.Add(row);
        return merged;
    }

    /// <summary>What a row is about, where two about the same contradict each other.</summary>
    private static string? KeyOf(SourceRow row, Visit visit) =>
        row.List switch
        {
            "people" or "items" => row.Member("id"),
            "limits" => string.Join('\n', row.Member("maker"), row.Member("model"), row.Member("partNumber")),
            "examinations" => row.Member("item") is { } item ? $"{item}\n{row.Member("examinedOn") ?? Day(visit)}" : null,
            _ => null,
        };

    private static string? Day(Visit visit) => visit.ExaminedOn?.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture);

    private static ExaminationRecord Record(List<SourceInput> inputs, Visit visit, Dictionary<string, MergedRows> rows)
    {
        return new ExaminationRecord
        {
            Format = inputs.Select(i => i.Read.Record!.Format).FirstOrDefault(f => f is not null),
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
            [.. rows[list].Kept.Select(row => of(row.Read.Record!)[row.Index])];
    }
}
