using ExamDocs.Core.Determination;
using ExamDocs.Core.Regimes;
using ExamDocs.Templates.Shared;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.LawAndSources;

namespace ExamDocs.Templates.Evidence;

/// <summary>What law the items were examined under, the interval, how long to keep the report, and how surely each is known.</summary>
public sealed class LawSources
{
    private static LawAndSourcesPhrases Words => LawAndSourcesPhrases.Current;

    /// <param name="visit">The visit.</param>
    /// <param name="items">At least one.</param>
    internal LawSources(DeterminedVisit visit, IReadOnlyList<DeterminedItem> items)
    {
        var day = items.FirstOrDefault(i => i.ExaminedOn is not null)?.ExaminedOn;
        var regimes = items.SelectMany(i => i.Regimes).DistinctBy(r => r.Id, StringComparer.Ordinal).ToList();
        Lines =
        [
            .. regimes
                .SelectMany(r => r.Laws.InForce(day))
                .Select(l => Line(Words.Law, $"{LawCitations.Of(l)}; {Words.Confidence(l.Confidence)}")),
            .. items
                .Select(i => i.Interval)
                .OfType<ExaminationInterval>()
                .Distinct()
                .OrderBy(i => i.Months)
                .Select(i =>
                    Line(
                        Words.Interval,
                        Words.IntervalLine(
                            i.Months,
                            i.Bound is Bound.LessThan,
                            Phrases.Text(i.What),
                            i.IsByBasis,
                            Phrases.Source(i.Source),
                            i.Confidence
                        )
                    )
                ),
            .. Keep(visit, items).Select(text => (Words.Keep, text)),
            .. visit.History.Asked is { } asked
                ? [(Words.EarlierRecords, Words.Asked(asked.Identity, asked.KeptSince))]
                : Array.Empty<(string, string)>(),
            .. regimes.Select(r => FromMemory(r.Particulars.InForce(day))).OfType<string>().Select(text => (Words.FromMemory, text)),
            .. regimes.SelectMany(r => r.NotConfirmed).Select(text => (Words.NotConfirmed, Phrases.Text(text))),
            .. LawCitations.Added(regimes, items),
        ];
    }

    /// <summary>A heading and a sentence each; lines of one heading follow one another.</summary>
    public IReadOnlyList<(string Heading, string Text)> Lines { get; }

    /// <summary>
    /// Of several items the longest; where an event ends the time, every rule is named, since none is known to be the longest.
    /// </summary>
    private static IEnumerable<string> Keep(DeterminedVisit visit, IReadOnlyList<DeterminedItem> items)
    {
        var kept = items
            .SelectMany(i => i.Regimes.Select(r => r.Keep(Kept.As(i.Examination?.Basis, i.Item.Purpose), visit.Record.Visit.ReportedOn)))
            .OfType<KeepUntil>()
            .Distinct()
            .ToList();
        var known = kept.Where(k => k.IsKnown).Select(k => Words.KeepLine(k, Phrases.Text(k.Words), Phrases.Source(k.Source))).ToList();
        return kept.Count == 0
            ? [Words.KeepNotKnown]
            :
            [
                .. known.Count > 0 ? [Words.KeepThis(known)] : Array.Empty<string>(),
                .. kept.Where(k => !k.IsKnown)
                    .Select(k => Words.KeepNotFound(Phrases.Text(k.Words), Phrases.Source(k.Source), k.Confidence)),
            ];
    }

    private static string? FromMemory(IReadOnlyList<Particular> particulars)
    {
        var remembered = LawCitations.ByLaw(particulars.Where(p => p.Confidence is Confidence.FromMemory).Select(p => p.Source)).ToList();
        return remembered.Count == 0 ? null : Words.ParticularsFromMemory(remembered);
    }

    private static (string Heading, string Text) Line(string heading, string text) =>
        (heading, $"{char.ToUpperInvariant(text[0])}{text[1..]}.");
}
