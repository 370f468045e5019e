using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Known;

/// <summary>A visit from another record, of the same run or of a register.</summary>
/// <param name="Number">Orders the versions of one visit: the greater number is the later version.</param>
/// <param name="Record">As recorded.</param>
/// <param name="Outcomes">What was decided of its items, in any order.</param>
public sealed record KnownVisit(int Number, ExaminationRecord Record, IReadOnlyList<KnownOutcome> Outcomes)
{
    private IReadOnlyList<KnownEntry>? _entries;

    /// <summary>
    /// A visit of the same run that is not decided yet. Its outcomes are missing, and that alone must hold no item.
    /// </summary>
    public bool IsUndecided { get; init; }

    /// <summary>Identity of the register that it came in from; null for the register that is asked, or none.</summary>
    public string? Origin { get; init; }

    /// <summary>Its items, folded once for all records that are compared with them.</summary>
    internal IReadOnlyList<KnownEntry> Entries => _entries ??= [.. KnownEntry.Of(this, isCurrent: false)];

    /// <summary>Most days between two versions of one visit, inclusive: a reference may be used again another year.</summary>
    private const int MostDaysApart = 31;

    /// <summary>
    /// True where this is a later version of a visit, and what is good in that one counts only if this one says it too: its day is
    /// within 31 days of the other's, inclusive.
    /// </summary>
    /// <remarks>Whether a version that came in from another register is the later one nobody knows: then each replaces the other.</remarks>
    internal bool Replaces(KnownVisit earlier) =>
        (Number > earlier.Number || (earlier.Origin is { } origin && !string.Equals(origin, Origin, StringComparison.Ordinal)))
        && !ReferenceEquals(this, earlier)
        && AreVersions(Record, earlier.Record);

    /// <summary>True where both are versions of one visit, and their days are near one another: a reference may be used again.</summary>
    public static bool AreVersions(ExaminationRecord one, ExaminationRecord other) =>
        IsOneVisit(one, other) && IsNear(one.Visit.ExaminedOn, other.Visit.ExaminedOn);

    /// <summary>True where two days are at most 31 days apart, or one of them is not recorded.</summary>
    private static bool IsNear(LocalDate? one, LocalDate? other) =>
        one is null || other is null || Math.Abs(Period.DaysBetween(one.Value, other.Value)) <= MostDaysApart;

    /// <summary>True where both are versions of one visit: one reference and one employer.</summary>
    public static bool IsOneVisit(ExaminationRecord one, ExaminationRecord other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        return Folded.Same(one.Visit.Reference, other.Visit.Reference)
            && FirmName.MayBeSame(one.Visit.Employer?.Name, other.Visit.Employer?.Name);
    }
}

/// <summary>What was decided of one item at another visit.</summary>
/// <param name="Item">Its id as recorded there; null where it had none.</param>
/// <param name="Outcome">What was decided.</param>
/// <param name="Codes">Codes of the reasons.</param>
public sealed record KnownOutcome(string? Item, Outcome Outcome, IReadOnlyList<string> Codes)
{
    /// <summary>Day of the deciding examination; null where there is none.</summary>
    public LocalDate? ExaminedOn { get; init; }

    /// <summary>Last day of use, inclusive.</summary>
    public LocalDate? Until { get; init; }

    /// <summary>Latest date for the next examination, inclusive.</summary>
    public LocalDate? NextBy { get; init; }

    /// <summary>Ids of the parts or wholes that a withdrawal depends on.</summary>
    public IReadOnlyList<string> Parts { get; init; } = [];

    public bool NeverReleasable { get; init; }

    /// <summary>Documents that say so, the one to name first.</summary>
    public IReadOnlyList<KnownDocument> Documents { get; init; } = [];

    /// <summary>Number of the document to name; null where there is none.</summary>
    internal string? Document => Documents.Count == 0 ? null : Documents[0].Number;
}

/// <summary>A document about an item.</summary>
/// <param name="Number">For example Q-2026-000123.</param>
/// <param name="Kind">For example quarantine-label.</param>
public sealed record KnownDocument(string Number, string Kind);
