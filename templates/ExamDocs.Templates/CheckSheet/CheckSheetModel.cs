using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Templates.CheckSheet.Wording;
using ExamDocs.Templates.Shared;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Items;
using NodaTime;

namespace ExamDocs.Templates.CheckSheet;

/// <summary>
/// A sheet on which an item's next examination is written down by hand. It says what was found last time and ticks
/// nothing. It is printed in spite of gaps and errors of the record, and says what they affect.
/// </summary>
public sealed class CheckSheetModel
{
    private static CheckSheetPhrases Words => CheckSheetPhrases.Current;

    /// <summary>Lines for an item of which the catalogue has no criteria.</summary>
    private const int FreeLines = 12;

    /// <param name="identity">Of kind check-sheet.</param>
    /// <param name="visit">The visit at which the item was examined last.</param>
    /// <param name="item">The item to be examined.</param>
    public CheckSheetModel(DocumentIdentity identity, DeterminedVisit visit, DeterminedItem item)
    {
        (Identity, Determined, Item) = (identity, visit, item);
        Code = ItemCode.Of(CodeText.Of(identity, visit, item, Words.Title));
        Last = item.Examination ?? Earlier(visit, item).MaxBy(e => e.DayAt(visit.Record.Visit));
        Criteria = [.. Lines()];
        Diameters = SheetDiameters.Of(item, Last);
        OpenDefects = Last is null ? [] : DefectEntry.Of(Last);
    }

    public DocumentIdentity Identity { get; }

    public DeterminedVisit Determined { get; }

    public DeterminedItem Item { get; }

    public string Id => Printed.Text(Item.Item.Id);

    public ItemCode Code { get; }

    /// <summary>The latest examination in the record; null where it has none of this item.</summary>
    public Examination? Last { get; }

    public LocalDate? LastOn => Last?.DayAt(Visit);

    /// <summary>Decisive first, then judged, then advisory, as the catalogue has them.</summary>
    public IReadOnlyList<SheetCriterion> Criteria { get; }

    public bool IsInCatalogue => Item.Category is not null;

    /// <summary>Null where no diameter is asked for.</summary>
    public SheetDiameters? Diameters { get; }

    /// <summary>What was found last time and has to be answered: still there, or put right.</summary>
    public IReadOnlyList<DefectEntry> OpenDefects { get; }

    public Visit Visit => Determined.Record.Visit;

    public bool IsWithdrawn => Item.Outcome is Outcome.Withdraw;

    public bool MayBeUsed => Item.Outcome is Outcome.Fit or Outcome.FitUntil;

    public string Examiner => Printed.Text(Determined.Person(Last?.Examiner)?.Name);

    public string Release =>
        !IsWithdrawn ? Words.ReleaseHold
        : Item.NeverReleasable ? Words.NeverRelease
        : Words.ReleaseByPerson;

    /// <summary>The maker's document with revision and page.</summary>
    public string MakersDocument => MakersDocuments.Of(Item);

    public string FirstUsed => Item.Item.NeverUsed is true ? ItemPhrases.Current.NeverUsed : Printed.Day(Item.Item.FirstUsed);

    /// <summary>Codes of the errors in the record that concern the item: do not rely on what is printed from it.</summary>
    public IReadOnlyList<string> Errors =>
        [.. Item.Findings.Where(f => f.Severity is Severity.Error).Select(f => f.Code).Distinct(StringComparer.Ordinal)];

    /// <summary>Releases and disposals on record, a sentence each: they may have come after the outcome.</summary>
    public IReadOnlyList<string> Since =>
        [
            .. Determined
                .Record.Releases.Where(r => IsThis(r.Item))
                .Select(r => Words.Released(r.On, RenewalLine.Name(r.By, Determined), r.Grounds)),
            .. Determined
                .Record.Disposals.Where(d => IsThis(d.Item))
                .Select(d => Words.Disposed(d.Action, d.On, RenewalLine.Name(d.By, Determined))),
        ];

    private IEnumerable<SheetCriterion> Lines() =>
        Item.Category is { } category
            ? category.Criteria.OrderBy(c => c.Class).Select(c => SheetCriterion.Of(c, Last))
            : (Last?.Observations ?? [])
                .Where(o => o.Criterion is not null)
                .Select(SheetCriterion.Of)
                .Concat(Enumerable.Repeat(0, FreeLines).Select(_ => SheetCriterion.Free()));

    private bool IsThis(string? id) => id is not null && string.Equals(id, Item.Item.Id, StringComparison.Ordinal);

    private static IEnumerable<Examination> Earlier(DeterminedVisit visit, DeterminedItem item) =>
        visit.Record.Examinations.Where(e => e.Item is not null && string.Equals(e.Item, item.Item.Id, StringComparison.Ordinal));
}
