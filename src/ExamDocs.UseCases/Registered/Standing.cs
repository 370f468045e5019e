using ExamDocs.Core.Findings;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>What a register says of an item today, from the worst to the best.</summary>
public enum Standing
{
    /// <summary>Withdrawn from service, destroyed, or past the last day on which it may be used.</summary>
    Withdrawn,

    /// <summary>Not determined, or something came in that the latest examination did not know; to be settled before use.</summary>
    Held,

    /// <summary>Its next examination is overdue.</summary>
    Overdue,

    /// <summary>Nothing that is issued and current says that it may be used.</summary>
    NotIssued,

    /// <summary>A current document says that it may be used.</summary>
    InService,
}

/// <summary>An item as a register knows it: one owner's thing under one id, however that was spelt.</summary>
public sealed record FoundItem
{
    public required string Id { get; init; }

    /// <summary>The owner as the latest visit names it: whom it is hired from, else the employer; null where not recorded.</summary>
    public string? Owner { get; init; }

    /// <summary>For whom it was recorded last; null where not recorded.</summary>
    public string? Employer { get; init; }

    /// <summary>Name of the premises where it was recorded last, else their address; null where not recorded.</summary>
    public string? Premises { get; init; }

    /// <summary>As the latest visit recorded it.</summary>
    public required Core.Records.Item Item { get; init; }

    public required Standing Standing { get; init; }

    /// <summary>Since when, until when or why, in a sentence.</summary>
    public required Message Why { get; init; }

    /// <summary>Only because a day has passed, or none is recorded; not by anything that came in since.</summary>
    public bool IsByDate { get; init; }

    /// <summary>The last day on which it may be used by what is issued, inclusive; null unless it is in service.</summary>
    public LocalDate? UsableThrough { get; init; }

    /// <summary>Latest date for the next thorough examination by the latest decision, inclusive; null where it gives none.</summary>
    public LocalDate? NextBy { get; init; }

    /// <summary>
    /// By the latest decisions on it and on what is fitted to it, the day by which it has to be examined to stay in use, inclusive; null
    /// for none.
    /// </summary>
    public LocalDate? FallsDue { get; init; }

    /// <summary>The latest visit first.</summary>
    public required IReadOnlyList<FoundVisit> History { get; init; }
}

/// <summary>What one visit decided of an item.</summary>
/// <param name="Visit">Number of the visit in the register.</param>
/// <param name="Reference">As typed.</param>
/// <param name="Employer">As typed.</param>
/// <param name="Day">The day examined, else the visit's.</param>
/// <param name="Outcome">The word of the outcome.</param>
/// <param name="Codes">Codes of its reasons.</param>
/// <param name="Until">The last day on which it may be used, inclusive.</param>
/// <param name="NextBy">Latest date for the next thorough examination, inclusive.</param>
/// <param name="Documents">What was issued about it.</param>
public sealed record FoundVisit(
    int Visit,
    string? Reference,
    string? Employer,
    LocalDate? Day,
    string Outcome,
    IReadOnlyList<string> Codes,
    LocalDate? Until,
    LocalDate? NextBy,
    IReadOnlyList<FoundDocument> Documents
)
{
    /// <summary>Name of the premises, else their address; null where not recorded.</summary>
    public string? Premises { get; init; }

    /// <summary>The day by which it had to be examined to stay in use, inclusive; null where there is none.</summary>
    public LocalDate? FallsDue { get; init; }
}

/// <summary>A document about an item.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Kind">Word of the kind.</param>
/// <param name="IsCurrent">Nothing replaced or ended it, nor its line about this item.</param>
/// <param name="Ended">Why and since when it no longer holds, in words; null where it does.</param>
public sealed record FoundDocument(string Number, string Kind, bool IsCurrent, Message? Ended);
