using ExamDocs.Register;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>Brings a register of an earlier version up to date; opening it to write does that.</summary>
public static class UpdateRegister
{
    /// <returns>Where it is, in words.</returns>
    /// <exception cref="FileNotFoundException">There is none.</exception>
    public static string Run(string place, LocalDate today)
    {
        using var register = DocumentRegister.OpenExisting(place, today);
        return register.Place;
    }
}
