using ExamDocs.Documents.Signing;
using ExamDocs.Register;
using ExamDocs.Register.Log;
using ExamDocs.UseCases.Outputs;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// Writes a checkpoint of the register's log beside the documents. Kept elsewhere, it shows later whether the log was cut or rewritten.
/// </summary>
internal static class CheckpointBeside
{
    public const string FileName = "checkpoint.json";

    /// <param name="folder">As the user typed it.</param>
    /// <param name="register">Identity of the register; null where it is not made yet.</param>
    public static OwnFile In(string folder, string? register) =>
        new(Path.Combine(folder, FileName), "a checkpoint of this register", b => Read(b, register) is not null);

    /// <summary>One of a longer log stays: another run wrote it, or it shows that the log was cut.</summary>
    /// <exception cref="IOException">It cannot be written.</exception>
    public static void Write(DocumentRegister register, string folder, LocalDate today, DocumentSigner? signer)
    {
        var file = In(folder, register.Identity);
        if (register.Checkpoint() is { } checkpoint && !(Before(file, register.Identity)?.Size > checkpoint.Size))
            file.Write(CheckpointFile.Write(checkpoint, today, signer?.Key.Certificate));
    }

    private static Checkpoint? Before(OwnFile file, string register) =>
        File.Exists(file.Path) ? Read(File.ReadAllBytes(file.Path), register) : null;

    private static Checkpoint? Read(byte[] bytes, string? register) =>
        CheckpointFile.Read(bytes) is { Checkpoint: { } checkpoint, Faults.Count: 0 }
        && register is not null
        && checkpoint.Origin.EndsWith($"/{register}", StringComparison.Ordinal)
            ? checkpoint
            : null;
}
