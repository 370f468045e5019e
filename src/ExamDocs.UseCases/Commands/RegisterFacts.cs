using ExamDocs.Register;
using ExamDocs.Register.Work;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>Which register it is.</summary>
/// <param name="Place">Where it is, in words; without any password.</param>
/// <param name="Identity">Drawn once, when it was made.</param>
/// <param name="KeptSince">The day from which on it has been kept.</param>
public sealed record RegisterFacts(string Place, string Identity, LocalDate KeptSince)
{
    /// <summary>Opens a register that is there and changes nothing in it.</summary>
    /// <exception cref="FileNotFoundException">There is none.</exception>
    public static RegisterFacts Read(string place, LocalDate today)
    {
        using var register = DocumentRegister.OpenToRead(place, today);
        return Of(register);
    }

    /// <summary>Makes a register where there is none; on a server with its list of work.</summary>
    /// <exception cref="IOException">There is one already, or none can be made.</exception>
    public static RegisterFacts Create(string place, LocalDate today)
    {
        using var register = DocumentRegister.Create(place, today);
        if (SharedWork.CanBeAt(place))
            SharedWork.Make(place);
        return Of(register);
    }

    private static RegisterFacts Of(DocumentRegister register) => new(register.Place, register.Identity, register.KeptSince);
}
