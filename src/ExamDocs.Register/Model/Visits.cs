using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Register.Model;

/// <summary>What was decided of one item, as it is remembered: plain data, from which nothing can be composed.</summary>
/// <param name="Item">Id of the item; null where it had none.</param>
/// <param name="Outcome">The word of the outcome, for example withdraw.</param>
/// <param name="Codes">Codes of its reasons.</param>
public sealed record RememberedOutcome(string? Item, string Outcome, IReadOnlyList<string> Codes)
{
    /// <summary>Day of the deciding examination; null where there is none.</summary>
    public LocalDate? ExaminedOn { get; init; }

    /// <summary>Last day on which it may be used, inclusive.</summary>
    public LocalDate? Until { get; init; }

    /// <summary>Latest date for the next thorough examination, inclusive.</summary>
    public LocalDate? NextBy { get; init; }

    /// <summary>The day by which it has to be examined to stay in use, inclusive: the earlier of the two; null for neither.</summary>
    public LocalDate? FallsDue => Until is { } until && !(NextBy <= until) ? until : NextBy;

    /// <summary>Ids of the parts or wholes that led to a withdrawal.</summary>
    public IReadOnlyList<string> Parts { get; init; } = [];

    /// <summary>No release can ever undo it.</summary>
    public bool NeverReleasable { get; init; }
}

/// <summary>Documents of a visit no longer say that an item may be used.</summary>
/// <param name="Visit">Number of the visit whose documents said it.</param>
/// <param name="Item">Id of the item as that visit has it; empty for an item without one.</param>
/// <param name="On">The day since which it may not.</param>
/// <param name="Why">Why, in words that can be printed.</param>
public sealed record LineEnd(int Visit, string Item, LocalDate On, string Why);

/// <summary>A visit to be remembered.</summary>
/// <param name="Record">What was recorded; its rows are searched by.</param>
/// <param name="Json">The same whole, as it goes into documents.</param>
/// <param name="Outcomes">What was decided, item by item.</param>
public sealed record VisitToRemember(ExaminationRecord Record, byte[] Json, IReadOnlyList<RememberedOutcome> Outcomes)
{
    /// <summary>Version of the program whose rules decided it.</summary>
    public string? Version { get; init; }

    /// <summary>The day as of which it was decided; left out, the day on which it is stored.</summary>
    public LocalDate? AsOf { get; init; }

    /// <summary>What it ends of what documents of earlier visits say.</summary>
    public IReadOnlyList<LineEnd> Ends { get; init; } = [];
}

/// <summary>A visit that is remembered.</summary>
/// <param name="Visit">Its number in the register, from 1, in the order stored.</param>
/// <param name="Sha256">Of its record; lower-case hexadecimal.</param>
/// <param name="Reference">As typed; null where there is none.</param>
/// <param name="Employer">Name as typed.</param>
/// <param name="ExaminedOn">Day of the visit.</param>
/// <param name="StoredOn">Day on which it was stored.</param>
public sealed record RememberedVisit(
    int Visit,
    string Sha256,
    string? Reference,
    string? Regime,
    string? Employer,
    LocalDate? ExaminedOn,
    LocalDate? StoredOn
)
{
    /// <summary>
    /// The last visit that could be known when it was decided, itself among them; in the numbers of <see cref="Origin"/>. Null where a
    /// version before did not keep it.
    /// </summary>
    public int? Seen { get; init; }

    /// <summary>Version of the program that decided it; null where a version before did not keep it.</summary>
    public string? Version { get; init; }

    /// <summary>The day as of which it was decided; null where a version before did not keep it.</summary>
    public LocalDate? AsOf { get; init; }

    /// <summary>Identity of the register that it came from; null for this one's own.</summary>
    public string? Origin { get; init; }

    /// <summary>
    /// Whether a record of the same reference can be a version of this one: of two employers' visits with one reference each is its
    /// own, and a version that corrects both the employer and the day is another visit.
    /// </summary>
    public bool MayBeVersion(LocalDate? examinedOn, string? employer) => ExaminedOn == examinedOn || FirmName.MayBeSame(Employer, employer);
}

/// <summary>A visit that has to do with an item of another record, with all that was decided in it.</summary>
/// <param name="Visit">The visit.</param>
/// <param name="Outcomes">In the order stored.</param>
public sealed record TouchingVisit(RememberedVisit Visit, IReadOnlyList<RememberedOutcome> Outcomes);

/// <summary>A line of a document that no longer holds, while others of it may.</summary>
/// <param name="Item">Id of the item as the document has it.</param>
/// <param name="On">The day since which it does not.</param>
/// <param name="Why">In words.</param>
/// <param name="ByVisit">Number of the visit that ended it.</param>
/// <param name="Documents">Numbers of the labels and notices that this visit gave about that item.</param>
public sealed record EndedLine(string Item, LocalDate On, string Why, int ByVisit, IReadOnlyList<string> Documents);

/// <summary>An outcome with the visit and the identity that it belongs to.</summary>
/// <param name="Visit">The visit.</param>
/// <param name="Outcome">What was decided.</param>
/// <param name="Category">Of the item, as typed.</param>
/// <param name="Maker">As typed.</param>
/// <param name="Model">As typed.</param>
/// <param name="Serial">As typed.</param>
public sealed record PastOutcome(
    RememberedVisit Visit,
    RememberedOutcome Outcome,
    string? Category,
    string? Maker,
    string? Model,
    string? Serial
);
