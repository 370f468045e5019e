using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Register;

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

    /// <summary>Ids of the parts or wholes that a withdrawal rested on.</summary>
    public IReadOnlyList<string> Parts { get; init; } = [];

    /// <summary>No release can ever undo it.</summary>
    public bool NeverReleasable { get; init; }
}

/// <summary>A visit to be remembered.</summary>
/// <param name="Record">What was recorded; its rows are searched by.</param>
/// <param name="Json">The same whole, as it goes into documents.</param>
/// <param name="Outcomes">What was decided, item by item.</param>
public sealed record VisitToRemember(ExaminationRecord Record, byte[] Json, IReadOnlyList<RememberedOutcome> Outcomes);

/// <summary>A visit that is remembered.</summary>
/// <param name="Visit">Its number in the register, from 1, in the order stored.</param>
/// <param name="Sha256">Of its record; lower-case hexadecimal.</param>
/// <param name="Reference">As typed; null where there is none.</param>
/// <param name="Employer">Name as typed.</param>
/// <param name="ExaminedOn">Day of the visit.</param>
/// <param name="StoredOn">Day on which it was stored.</param>
public sealed record RememberedVisit(int Visit, string Sha256, string? Reference, string? Regime, string? Employer, LocalDate? ExaminedOn, LocalDate? StoredOn);

/// <summary>An outcome with the visit and the identity that it belongs to.</summary>
/// <param name="Visit">The visit.</param>
/// <param name="Outcome">What was decided.</param>
/// <param name="Category">Of the item, as typed.</param>
/// <param name="Maker">As typed.</param>
/// <param name="Model">As typed.</param>
/// <param name="Serial">As typed.</param>
public sealed record PastOutcome(RememberedVisit Visit, RememberedOutcome Outcome, string? Category, string? Maker, string? Model, string? Serial);
