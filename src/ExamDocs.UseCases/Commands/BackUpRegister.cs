using ExamDocs.Register;
using ExamDocs.UseCases.Outputs;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>Writes a whole, checked copy of a register.</summary>
public static class BackUpRegister
{
    /// <param name="place">The register.</param>
    /// <param name="copy">The file to write, as the user typed it.</param>
    /// <param name="today">The day on which it is opened.</param>
    /// <param name="outputs">What may be written over; left out, nothing.</param>
    /// <exception cref="FileNotFoundException">There is no register at that place.</exception>
    /// <exception cref="IOException">It is on a server, or the copy cannot be written.</exception>
    /// <exception cref="OutputRefusedException">The copy may not be written there.</exception>
    public static void Run(string place, string copy, LocalDate today, OutputGuard? outputs = null)
    {
        var guard = (outputs ?? OutputGuard.NewFilesOnly).For([], place);
        guard.Require(copy);
        using var register = DocumentRegister.OpenExisting(place, today);
        guard.Write(copy, register.BackUp);
    }
}
