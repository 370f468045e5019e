using ExamDocs.Documents.Signing;
using ExamDocs.Register;
using ExamDocs.Register.Log;
using ExamDocs.UseCases.Issuing;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// Writes a checkpoint of the register's log beside the documents. Kept elsewhere, it shows later whether the log was cut or rewritten.
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
