using ExamDocs.Core.Records;
using ExamDocs.Intake.Drafting;
using ExamDocs.UseCases.Outputs;

namespace ExamDocs.UseCases.Recording;

/// <summary>The file of a visit that is being recorded: a record like any other, read and written whole.</summary>
public static class DraftFile
{
    /// <exception cref="InvalidDataException">The file holds no record.</exception>
    /// <exception cref="IOException">It cannot be read.</exception>
    public static RecordDraft Read(string path)
    {
        var (draft, unreadable) = RecordDraft.Read(File.ReadAllBytes(path));
        return draft ?? throw new InvalidDataException($"{path} cannot be read: {unreadable}");
    }

    /// <exception cref="OutputRefusedException">Something else has its name.</exception>
    /// <exception cref="IOException">It cannot be written; what was there before still is.</exception>
    public static void Write(string path, RecordDraft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        new OwnFile(path, "a visit that is being recorded", bytes => OwnJson.Is(bytes, ExaminationRecord.FormatName, null)).Write(
            draft.Write()
        );
    }
}
