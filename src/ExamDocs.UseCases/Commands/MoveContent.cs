using ExamDocs.Core.Regimes;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>Says where the bytes of a register's documents are kept, and moves them there.</summary>
public static class MoveContent
{
    /// <param name="place">The register.</param>
    /// <param name="today">The day on which it is done.</param>
    /// <returns>Where they are kept: database, folder:PATH or s3://bucket/prefix.</returns>
    /// <exception cref="FileNotFoundException">There is no register at that place.</exception>
    public static string Where(string place, LocalDate today)
    {
        using var register = DocumentRegister.OpenToRead(place, today);
        return register.ContentPlace;
    }

    /// <param name="place">The register.</param>
    /// <param name="to">Where its documents are to be kept.</param>
    /// <param name="today">The day on which it is done.</param>
    /// <param name="rules">The regimes that say how long documents have to be kept.</param>
    /// <exception cref="FileNotFoundException">There is no register at that place.</exception>
    /// <exception cref="RegisterRefusedException">It is no such address, or this user may not move them.</exception>
    /// <exception cref="ContentStoreException">A place cannot be reached or written; nothing is lost.</exception>
    public static MovedContent Run(string place, string to, LocalDate today, KnownRules rules)
    {
        using var register = DocumentRegister.OpenExisting(place, today);
        register.KeepContentUntil(ContentRetention.Of(register, rules));
        var moved = register.MoveContent(to);
        var stayed = moved.Stayed.Select(s => $"Not all could be deleted where they were before: {s}");
        return new(
            FormattableString.Invariant($"Documents are kept at {moved.Place}; {moved.Copied} were copied there."),
            moved.Faults,
            [.. stayed]
        );
    }
}

/// <summary>What moving documents came to.</summary>
/// <param name="Summary">In a sentence.</param>
/// <param name="Faults">One sentence for each document that is nowhere as it was issued.</param>
/// <param name="Remarks">What else somebody should know.</param>
public sealed record MovedContent(string Summary, IReadOnlyList<string> Faults, IReadOnlyList<string> Remarks);
