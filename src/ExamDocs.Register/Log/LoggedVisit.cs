using ExamDocs.Register.Model;
using NodaTime;

namespace ExamDocs.Register.Log;

/// <summary>The visit that a log entry is about.</summary>
/// <param name="Number">In the register, from 1.</param>
/// <param name="Record">SHA-256 of its record, lower-case hexadecimal.</param>
public sealed record LoggedVisit(int Number, string Record)
{
    /// <summary>The last visit that it could know when it was decided, itself among them; null where that was not kept.</summary>
    public int? Seen { get; init; }

    /// <summary>Version of the program that decided it; null where that was not kept.</summary>
    public string? Version { get; init; }

    /// <summary>The day as of which it was decided; null where that was not kept.</summary>
    public LocalDate? AsOf { get; init; }

    /// <summary>Identity of the register that it came from; null for its own.</summary>
    public string? Origin { get; init; }

    /// <summary>Its number in that register; null for its own.</summary>
    public int? OriginNumber { get; init; }

    /// <summary>What was decided; null where the entry is not about that.</summary>
    public IReadOnlyList<RememberedOutcome>? Outcomes { get; init; }
}
