using ExamDocs.Register;
using ExamDocs.Register.Work;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>
/// Brings a register of an earlier version up to date; opening it to write does that. One on a server gets its list of work where it has
/// none.
/// </summary>
public static class UpdateRegister
{
    /// <returns>Where it is, in words.</returns>
    /// <exception cref="FileNotFoundException">There is none.</exception>
    public static string Run(string place, LocalDate today)
    {
        using var register = DocumentRegister.OpenExisting(place, today);
        if (SharedWork.CanBeAt(place))
            SharedWork.Make(place);
        return register.Place;
    }
}
