using ExamDocs.Core.Regimes;
using ExamDocs.Register;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>Checks records with what a register knows of their items, and writes nothing into it.</summary>
public static class CheckAgainstRegister
{
    /// <param name="paths">As <see cref="CheckRecord.All"/> takes them.</param>
    /// <param name="asOf">The day on which they are looked at.</param>
    /// <param name="rules">The categories and regimes they can name.</param>
    /// <param name="place">The register; null for none.</param>
    /// <exception cref="FileNotFoundException">There is no register at that place: a misspelt name must not pass for one that knows
    /// nothing.</exception>
    public static IReadOnlyList<CheckedInput> All(IReadOnlyList<string> paths, LocalDate asOf, KnownRules? rules, string? place)
    {
        if (place is null)
            return CheckRecord.All(paths, asOf, rules);
        using var register = DocumentRegister.OpenToRead(place, asOf);
        return DecideRun.Check(ReadVisits.From(paths, rules), register, asOf, rules);
    }
}
