using ExamDocs.Core.Criteria;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Templates.Report;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Regimes;

namespace ExamDocs.Templates.Evidence;

/// <summary>A rule that had a say in an outcome, and where it comes from.</summary>
/// <param name="Code">For example W1 or DAT011.</param>
/// <param name="Source">The law, maker's document or practice behind it.</param>
public sealed record RuleSource(string Code, string Source);

/// <summary>
/// What the outcomes of a visit rest on: the case for service of each item, measurements, and the source of each rule. It is made on
/// request, for whoever has to defend an outcome; the report says the outcome.
/// </summary>
public sealed class EvidenceModel
{
    /// <param name="identity">Of kind evidence.</param>
    /// <param name="visit">The visit the items belong to.</param>
    /// <param name="items">At least one, whatever their outcomes.</param>
    /// <param name="photos">The photo of an observation, where there is one that can be printed; left out, none are.</param>
    /// <param name="leftOut">Items that cannot be printed whole; left out, there are none.</param>
    /// <exception cref="ArgumentException">There is no item.</exception>
    public EvidenceModel(
        DocumentIdentity identity,
        DeterminedVisit visit,
        IReadOnlyList<DeterminedItem> items,
        Func<Observation, PhotoPrint?>? photos = null,
        LeftOutItems? leftOut = null
    )
    {
        if (items.Count == 0)
            throw new ArgumentException("an evidence file needs an item", nameof(items));
        (Identity, Determined, LeftOut) = (identity, visit, leftOut ?? LeftOutItems.None);
        Items = [.. items.Select((item, at) => new EvidenceItem(visit, item, at + 1, photos))];
        Law = new LawSources(visit, items);
        Regime = Phrases.Regime(visit.Rules.FindRegime(visit.Record.Visit.Regime));
    }

    public DocumentIdentity Identity { get; }

    public DeterminedVisit Determined { get; }

    public Visit Visit => Determined.Record.Visit;

    public IReadOnlyList<EvidenceItem> Items { get; }

    /// <summary>Items that the file goes without; it names them.</summary>
    public LeftOutItems LeftOut { get; }

    public LawSources Law { get; }

    /// <summary>Of the visit; an item may have been examined under another one, which it says itself.</summary>
    public RegimeWording Regime { get; }

    /// <summary>Every rule that gave a reason or a finding here, by its code.</summary>
    public IReadOnlyList<RuleSource> Rules =>
        [
            .. Items
                .SelectMany(i => Reasons(i.Determined).Concat(Findings(i.Determined)))
                .Distinct()
                .OrderBy(r => r.Code, StringComparer.Ordinal)
                .ThenBy(r => r.Source, StringComparer.Ordinal),
        ];

    /// <summary>The categories of the items, whose criteria are listed with their sources.</summary>
    public IReadOnlyList<Category> Categories =>
        [.. Items.Select(i => i.Determined.Category).OfType<Category>().DistinctBy(c => c.Id, StringComparer.Ordinal)];

    private static IEnumerable<RuleSource> Reasons(DeterminedItem item) =>
        item.Reasons.Select(r => new RuleSource(r.Code, Phrases.Source(r.Source)));

    private static IEnumerable<RuleSource> Findings(DeterminedItem item) =>
        item.Findings.Where(f => f.Severity is not Severity.Note).Select(f => new RuleSource(f.Code, Phrases.Source(f.Source)));
}
