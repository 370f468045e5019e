using ExamDocs.Documents.Signing;
using ExamDocs.Register;
using ExamDocs.Register.Log;
using ExamDocs.UseCases.Issuing;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// Puts beside the documents what the register's log holds by now: kept elsewhere, it shows later whether the log was cut or written anew.
/// </summary>
internal static class CheckpointBeside
{
    public const string FileName = "checkpoint.json";

    /// <exception cref="IOException">It cannot be written.</exception>
    public static void Write(DocumentRegister register, string folder, LocalDate today, DocumentSigner? signer)
    {
        if (register.Checkpoint() is { } checkpoint)
            WholeFile.Write(Path.Combine(folder, FileName), CheckpointFile.Write(checkpoint, today, signer?.Key.Certificate));
    }
}
