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

    /// <summary>With what holds for a whole visit or model put where it holds: what documents print.</summary>
    public ExaminationRecord Record { get; }

    /// <summary>As typed: what is stored, embedded and decided again.</summary>
    public ExaminationRecord Recorded { get; }

    /// <summary>What reading the record found wrong with it, as it was handed in.</summary>
    public IReadOnlyList<Finding> Reading { get; }

    /// <summary>The categories and regimes it was determined by.</summary>
    public KnownRules Rules { get; }

    /// <summary>The day on which it was determined.</summary>
    public LocalDate AsOf { get; }

    /// <summary>What was known of the items from before.</summary>
    public History History { get; }

    public IReadOnlyList<DeterminedItem> Items { get; }

    /// <summary>
    /// What was examined under an id that no item of the record has, and has a reason to withdraw: it is told and
    /// labelled under the id as typed, so that a slip of the pen buries no danger.
    /// </summary>
    public IReadOnlyList<DeterminedItem> Unlisted { get; }

    /// <summary>Items and unlisted.</summary>
    public IEnumerable<DeterminedItem> Everything => Items.Concat(Unlisted);

    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The person with this id; null where the record has none.</summary>
    public Person? Person(string? id) =>
        id is null ? null : Record.People.FirstOrDefault(p => string.Equals(p.Id, id, StringComparison.Ordinal));
}
