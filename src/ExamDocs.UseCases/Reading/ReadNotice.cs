using ExamDocs.Core.Recalls;
using ExamDocs.Intake.RuleFiles;

namespace ExamDocs.UseCases.Reading;

/// <summary>A maker's safety notice, or why it cannot be read.</summary>
/// <param name="Notice">Null where it has a fault.</param>
/// <param name="Faults">A sentence each: the file, the place, what is wrong, what to type.</param>
public sealed record NoticeRead(SafetyNotice? Notice, IReadOnlyList<string> Faults);

/// <summary>Reads a maker's safety notice.</summary>
public static class ReadNotice
{
    /// <param name="path">A JSON file: docs/recall.schema.json.</param>
    public static NoticeRead From(string path)
    {
        try
        {
            if (new FileInfo(path) is { Exists: true, Length: > RuleFile.MaxBytes })
                return new(null, [$"{path}: the file is larger than 256 KiB; name serial numbers by ranges or patterns"]);
            var (notice, faults) = RuleFile.Recall(File.ReadAllBytes(path));
            return new(notice, [.. faults.Select(f => $"{path}#{f}")]);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new(
                null,
                [
                    e is FileNotFoundException or DirectoryNotFoundException
                        ? $"{path}: there is no such file"
                        : $"{path}: the file cannot be opened: {e.Message}",
                ]
            );
        }
    }
}
