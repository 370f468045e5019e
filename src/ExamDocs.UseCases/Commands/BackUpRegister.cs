using ExamDocs.Register;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>Writes a whole, checked copy of a register.</summary>
public static class BackUpRegister
{
    /// <param name="place">The register.</param>
    /// <param name="copy">The file to write, where none is yet.</param>
    /// <param name="today">The day on which it is opened.</param>
    /// <exception cref="FileNotFoundException">There is no register at that place.</exception>
    /// <exception cref="IOException">It is on a server, or the copy cannot be written.</exception>
    public static void Run(string place, string copy, LocalDate today)
    {
        using var register = DocumentRegister.OpenExisting(place, today);
        register.BackUp(copy);
    }
}
