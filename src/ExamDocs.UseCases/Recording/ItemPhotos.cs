using ExamDocs.Core.Findings;
using ExamDocs.Intake.Drafting;
using ExamDocs.Intake.Photos;
using ExamDocs.UseCases.Outputs;

namespace ExamDocs.UseCases.Recording;

/// <summary>
/// The photos of an item that is being recorded: one for each answer, as in a record. Their files lie in a folder beside the draft, each
/// as it came from the camera and named by the SHA-256 of its bytes, and none is ever written over or taken away.
/// </summary>
public static class ItemPhotos
{
    /// <summary>The folder beside the draft.</summary>
    public const string Folder = "photos";

    private const string Observations = "observations";

    /// <summary>Keeps a photo beside a draft; it is not bound to anything yet.</summary>
    /// <param name="draft">File of the draft.</param>
    /// <param name="stream">The photo's file.</param>
    /// <param name="length">Bytes of it.</param>
    /// <param name="name">What it was called where it comes from.</param>
    /// <returns>What to name in the record, or why the photo is not taken.</returns>
    /// <exception cref="IOException">It cannot be written.</exception>
    public static (string? Photo, PhotoFault? Fault) Keep(string draft, Stream stream, long length, string name)
    {
        var (file, kept, fault) = PreparePhoto.TakeIn(stream, length, name);
        if (file is null)
            return (null, fault);
        // Only the same bytes have the same name.
        new OwnFile(Path.Combine(FolderOf(draft), kept), "a photo of this visit", _ => true).Write(file);
        return ($"{Folder}/{kept}", null);
    }

    /// <summary>The photo of an answer as the draft names it; empty for none.</summary>
    public static string Of(RecordDraft draft, int item, string criterion) =>
        DraftExamination.Of(draft, item)?.Row(Observations, "criterion", criterion) is { } row ? draft.Text($"{row}/photo") : "";

    /// <summary>The draft with this photo of an answer; null for none.</summary>
    public static RecordDraft With(RecordDraft draft, int item, string criterion, string? photo) =>
        DraftExamination.WithValue(draft, item, (Observations, "criterion", criterion), "photo", photo ?? "");

    /// <summary>The file of a photo; null where there is none of this name in the folder.</summary>
    /// <param name="draft">File of the draft.</param>
    /// <param name="name">Compared with the names that are there, and never made a path.</param>
    public static string? Find(string draft, string name) =>
        FolderOf(draft) is var folder && Directory.Exists(folder)
            ? Directory
                .EnumerateFiles(folder, "sha256-*")
                .FirstOrDefault(f => string.Equals(Path.GetFileName(f), name, StringComparison.Ordinal))
            : null;

    private static string FolderOf(string draft) => Path.Combine(Path.GetDirectoryName(draft)!, Folder);
}
