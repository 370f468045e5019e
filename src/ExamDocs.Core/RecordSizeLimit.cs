using System.Globalization;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Core.Service;

namespace ExamDocs.Core;

/// <summary>
/// How many rows of a record must be compared with how many others before it is decided. A record in which thousands of rows
/// are about the same thing would keep a computer busy for hours: it is refused as a whole, before anything is decided.
/// </summary>
/// <remarks>The limits are our own, far above any recorded visit. They refuse a record or change nothing.</remarks>
public static class RecordSizeLimit
{
    /// <summary>Most rows in one list, inclusive.</summary>
    public const int Rows = 20_000;

    /// <summary>What is said of a record with more rows than that.</summary>
    public const string TooManyRows = "the record has more rows than any recorded visit needs: at most 20,000 in one list";

    /// <summary>Most pairs of rows to compare, inclusive.</summary>
    public const long Pairs = 20_000_000;

    /// <summary>
    /// A pair in which each may decide on the other, or give a finding about it, costs as much as this many plain comparisons.
    /// </summary>
    private const long Deciding = 200;

    /// <summary>Cost of comparing two names letter by letter, in plain comparisons.</summary>
    private const long Spelling = 10;

    /// <summary>Cost for each item of one more pass over all items, because a reason passed one whole further.</summary>
    private const long Climbing = 50;

    /// <param name="record">As read.</param>
    /// <param name="intake">What reading found wrong with it.</param>
    /// <returns>A sentence that says what there is too much of; null where the record is small enough.</returns>
    public static string? Of(ExaminationRecord record, IReadOnlyList<Finding> intake)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(intake);
        if (Lists(record).Any(l => l.Count > Rows))
            return TooManyRows;
        var heaviest = Weights(record, intake).MaxBy(w => w.Pairs);
        return heaviest.Pairs <= Pairs ? null : $"the record cannot be decided in any bearable time: {heaviest.What}";
    }

    private static (string List, int Count)[] Lists(ExaminationRecord r) =>
        [
            ("people", r.People.Count),
            ("items", r.Items.Count),
            ("limits", r.Limits.Count),
            ("examinations", r.Examinations.Count),
            ("renewals", r.Renewals.Count),
            ("remedies", r.Remedies.Count),
            ("releases", r.Releases.Count),
            ("disposals", r.Disposals.Count),
        ];

    private static IEnumerable<(long Pairs, string What)> Weights(ExaminationRecord record, IReadOnlyList<Finding> intake)
    {
        long items = record.Items.Count;
        var ids = Tally(record.Items.Select(i => i.Id));
        var named = Tally(Named(record));
        yield return (
            ids.Where(i => i.Value > 1).Sum(i => i.Value * (i.Value + named.GetValueOrDefault(i.Key)) * Deciding),
            "too many items share one id; give each its own"
        );
        yield return (named.Sum(n => n.Value * n.Value), "too many rows are about one item");
        yield return (
            named.Where(n => !ids.ContainsKey(n.Key)).Sum(n => n.Value) * items * Spelling,
            "too many rows name items that the record does not have; correct their ids"
        );
        yield return (
            (long)(record.Renewals.Count + record.Releases.Count + record.Remedies.Count + record.Disposals.Count) * items,
            "it has too many renewals, releases, remedies and disposals for so many items"
        );
        yield return (
            record.People.Count * (long)(record.Examinations.Count + record.Renewals.Count + record.Releases.Count),
            "it has too many people"
        );
        yield return (
            UnknownPeople(record) * record.People.Count * Spelling,
            "too many rows name people that the record does not have; correct their ids"
        );
        yield return (OfLimits(record), "too many of the makers' limits are about one model, or do not say which");
        yield return (intake.Count(f => !IsOfRow(f)) * items, "too much is wrong with what every item depends on");
        yield return (record.Examinations.Sum(WithinOne), "an examination has too many entries");
        yield return (FittingDepth.Of(record) * items * Climbing, "parts are fitted to parts too many times over");
    }

    /// <summary>The id of an item once for every row that is about it.</summary>
    private static IEnumerable<string?> Named(ExaminationRecord r) =>
        r
            .Examinations.Select(e => e.Item)
            .Concat(r.Items.Select(i => i.FittedTo))
            .Concat(
                r.Renewals.SelectMany(n => new[] { n.Item, n.RemovedPart, n.FittedPart })
                    .Distinct(StringComparer.Ordinal)
                    .Concat(r.Renewals.Select(n => n.Item))
            )
            .Concat(r.Remedies.Select(m => m.Item))
            .Concat(r.Releases.Select(l => l.Item))
            .Concat(r.Disposals.Select(d => d.Item));

    private static Dictionary<string, long> Tally(IEnumerable<string?> ids) =>
        ids.OfType<string>().CountBy(id => id, StringComparer.Ordinal).ToDictionary(c => c.Key, c => (long)c.Value, StringComparer.Ordinal);

    private static long UnknownPeople(ExaminationRecord record)
    {
        var known = record.People.Select(p => p.Id).OfType<string>().ToHashSet(StringComparer.Ordinal);
        return record
            .Examinations.SelectMany(e => new[] { e.Examiner, e.Author, e.AuthenticatedBy })
            .Concat(record.Renewals.SelectMany(r => new[] { r.DoneBy, r.SupervisedBy }))
            .Concat(record.Releases.Select(r => r.By))
            .Count(id => id is not null && !known.Contains(id));
    }

    private static long OfLimits(ExaminationRecord record)
    {
        long vague = record.Limits.Count(l => l.Maker is null || l.Model is null);
        long unclear = record.Items.Count(i => i.Maker is null || i.Model is null);
        var items = Tally(record.Items.Select(i => Model(i.Maker, i.Model)));
        var alike = Tally(record.Limits.Select(l => Model(l.Maker, l.Model)));
        return (vague * (record.Items.Count + (long)record.Limits.Count))
            + (record.Limits.Count * (unclear + record.Items.Count))
            + alike.Sum(l => l.Value * (l.Value + items.GetValueOrDefault(l.Key)) * Spelling)
            + ((items.Keys.Count(k => !alike.ContainsKey(k)) + MissingNames(record)) * (long)alike.Count * 2 * Spelling);
    }

    /// <summary>Different names of items that leave out maker or model: each is compared with all limits.</summary>
    private static int MissingNames(ExaminationRecord record) =>
        record.Items.Where(i => i.Maker is null || i.Model is null).Select(i => (i.Maker, i.Model, i.Category)).Distinct().Count();

    private static string? Model(string? maker, string? model) =>
        maker is null || model is null
            ? null
            : string.Create(CultureInfo.InvariantCulture, $"{LimitsSpelling.Folded(maker)}\n{LimitsSpelling.Folded(model)}");

    /// <summary>A finding under a list reaches the items of its row; any other reaches them all.</summary>
    private static bool IsOfRow(Finding finding) => finding.Path.Split('/', 4) is { Length: > 2 } steps && steps[1] is not "visit";

    private static long WithinOne(Examination e) =>
        Squared(e.Observations.Count)
        + Squared(e.Defects.Count)
        + Squared(e.Diameters.Count)
        + Squared(e.Tests.Count)
        + e.Diameters.Sum(d => Squared(d.ReadingsMm.Count));

    private static long Squared(int count) => (long)count * count;
}
