using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using NodaTime;

namespace ExamDocs.Core.Determination;

/// <summary>A whole record with an outcome for every item, in input order.</summary>
public sealed class DeterminedVisit
{
    internal DeterminedVisit(
        RecordContext context,
        IReadOnlyList<DeterminedItem> items,
        IReadOnlyList<DeterminedItem> unlisted,
        IReadOnlyList<Finding> findings,
        IReadOnlyList<Finding> reading
    )
    {
        (Record, Recorded) = (context.Record, context.Recorded);
        (Rules, AsOf, History) = (context.Rules, context.AsOf, context.History);
        (Items, Unlisted, Findings, Reading) = (items, unlisted, findings, reading);
    }

    /// <summary>The record as documents print it: what is stated once for the visit or for a model is filled in at each row.</summary>
    public ExaminationRecord Record { get; }

    /// <summary>The record as typed: it is stored, embedded, and decided again.</summary>
    public ExaminationRecord Recorded { get; }

    /// <summary>What reading found wrong with the record, as it was passed in.</summary>
    public IReadOnlyList<Finding> Reading { get; }

    /// <summary>The categories and regimes that it was determined with.</summary>
    public KnownRules Rules { get; }

    /// <summary>The day on which it was determined.</summary>
    public LocalDate AsOf { get; }

    /// <summary>What other records knew of the items.</summary>
    public History History { get; }

    /// <summary>Cuts out of the record what bears on some of its items.</summary>
    public RecordSlices Slices => field ??= new RecordSlices(Recorded, Reading, History);

    public IReadOnlyList<DeterminedItem> Items { get; }

    /// <summary>
    /// What was examined under an id that no item of the record has, and has a reason to withdraw. It is reported and labelled under
    /// the id as typed, so that a slip of the pen hides no danger.
    /// </summary>
    public IReadOnlyList<DeterminedItem> Unlisted { get; }

    /// <summary>Items and unlisted.</summary>
    public IEnumerable<DeterminedItem> Everything => Items.Concat(Unlisted);

    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The person with this id; null where the record has none.</summary>
    public Person? Person(string? id) =>
        id is null ? null : Record.People.FirstOrDefault(p => string.Equals(p.Id, id, StringComparison.Ordinal));
}
