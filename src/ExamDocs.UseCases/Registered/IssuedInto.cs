using ExamDocs.Register;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>The folder that a run issues into: looked at before the work begins, and left as the run says.</summary>
internal static class IssuedInto
{
    /// <param name="folder">As the user typed it.</param>
    /// <param name="place">The register, there or not.</param>
    /// <param name="today">The day on which it is opened.</param>
    /// <exception cref="OutputRefusedException">Something in the folder is in the way, or it cannot be written to.</exception>
    public static void Require(string folder, string place, LocalDate today)
    {
        if (OutputFolder.Objection(Path.GetFullPath(folder), folder) is { } objection)
            throw new OutputRefusedException(objection);
        var replaced = Path.Combine(folder, DocumentFolder.Replaced);
        if (File.Exists(replaced))
            throw new OutputRefusedException($"{replaced} is a file, and a folder is needed there: move it away, or name another folder");
        if (!Directory.Exists(folder))
            return;
        var identity = IdentityOf(place, today);
        DocumentsFile.In(folder, identity).Require();
        CheckpointBeside.In(folder, identity).Require();
    }

    /// <summary>Sets apart what was replaced, and lists what the folder holds.</summary>
    /// <param name="run">Whose documents are out.</param>
    /// <param name="folder">As the user typed it.</param>
    /// <param name="refused">What it refused.</param>
    /// <returns>One sentence for each document that was replaced.</returns>
    public static IReadOnlyList<string> Leave(RegisteredRun run, string folder, IReadOnlyList<Refusal> refused)
    {
        var holds = new DocumentFolder(run.Register, folder);
        IReadOnlyList<string> said =
        [
            .. holds.SetReplacedApart(),
            .. holds.ReplacedElsewhere(run.Prints.Documents.Where(d => d.IssuedNow).Select(d => d.Number)),
        ];
        DocumentsFile.Write(folder, run.Register, refused);
        return said;
    }

    private static string? IdentityOf(string place, LocalDate today)
    {
        if (!DocumentRegister.Exists(place))
            return null;
        using var register = DocumentRegister.OpenToRead(place, today);
        return register.Identity;
    }
}
