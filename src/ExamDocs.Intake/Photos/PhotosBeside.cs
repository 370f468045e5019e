using ExamDocs.Core.Records;

namespace ExamDocs.Intake.Photos;

/// <summary>Finds the files of photos without opening them, for whoever takes a record elsewhere together with its photos.</summary>
public static class PhotosBeside
{
    /// <summary>The photos that a record names and that are in its folder, each once.</summary>
    /// <param name="record">The record, as read.</param>
    /// <param name="folder">The folder in which it lies.</param>
    /// <returns>The name of each, steps divided by /, and its file.</returns>
    public static IReadOnlyList<(string Name, string File)> Of(ExaminationRecord record, string folder)
    {
        ArgumentNullException.ThrowIfNull(record);
        return
        [
            .. record
                .Examinations.SelectMany(e => e.Observations)
                .Select(o => o.Photo)
                .Where(name => !string.IsNullOrWhiteSpace(name))
                .Distinct(StringComparer.Ordinal)
                .Select(name => Find(folder, name!))
                .OfType<(string, string)>()
                .DistinctBy(p => p.Item1, StringComparer.Ordinal),
        ];
    }

    /// <summary>One file by its name, relative to a folder; null where it is not there, or not within the folder.</summary>
    public static (string Name, string File)? Find(string folder, string name)
    {
        ArgumentException.ThrowIfNullOrEmpty(name);
        try
        {
            var file = PhotoPath.Find(folder, name);
            return (string.Join('/', name.Split(['/', '\\'], StringSplitOptions.RemoveEmptyEntries)), file);
        }
        catch (PhotoRefusedException)
        {
            return null;
        }
    }
}
