using ExamDocs.Intake.Csv;
using ExamDocs.Intake.Workbook;

namespace ExamDocs.UseCases.Reading;

/// <summary>Lists the files in and below a folder of separated values that are not read: one of them may hold a withdrawal.</summary>
internal static class UnreadFiles
{
    /// <summary>Most files listed, inclusive; with more, the user has named the wrong folder.</summary>
    private const int Most = 5_000;

    private const int Deepest = 16;

    private static readonly HashSet<string> Pictures = new(StringComparer.OrdinalIgnoreCase)
    {
        ".jpg",
        ".jpeg",
        ".png",
        ".gif",
        ".bmp",
        ".tif",
        ".tiff",
        ".webp",
        ".heic",
        ".heif",
    };

    /// <summary>Kinds of file that people keep tables and records in; others are recognised by their first bytes.</summary>
    private static readonly HashSet<string> Tables = new(StringComparer.OrdinalIgnoreCase)
    {
        ".csv",
        ".tsv",
        ".tab",
        ".json",
        ".jsonl",
        ".xml",
        ".xls",
        ".xlsx",
        ".xlsm",
        ".xlsb",
        ".xlt",
        ".xltx",
        ".ods",
        ".ots",
        ".fods",
        ".numbers",
        ".gsheet",
        ".pdf",
        ".html",
        ".htm",
        ".db",
        ".sqlite",
        ".doc",
        ".docx",
        ".odt",
        ".rtf",
        ".zip",
        ".gz",
        ".7z",
        ".rar",
        ".eml",
        ".msg",
    };

    /// <exception cref="IOException">A folder cannot be listed.</exception>
    /// <exception cref="UnauthorizedAccessException">A folder may not be listed.</exception>
    public static IReadOnlyList<UnreadFile> Of(string folder)
    {
        var found = new List<UnreadFile>();
        Look(new DirectoryInfo(folder), "", 0, found);
        return found;
    }

    private static void Look(DirectoryInfo folder, string below, int depth, List<UnreadFile> found)
    {
        foreach (var entry in folder.EnumerateFileSystemInfos().OrderBy(e => e.Name, StringComparer.Ordinal))
        {
            var name = below + entry.Name;
            if (found.Count >= Most)
            {
                found.Add(new("more than 5,000 files", MayHoldRecord: true));
                return;
            }
            // A link may lead out of the folder, or in a circle: it is listed and not followed.
            if (entry is DirectoryInfo inner && entry.LinkTarget is null && depth < Deepest)
                Look(inner, name + "/", depth + 1, found);
            else if (entry is DirectoryInfo || depth > 0 || !ReadInput.IsCsv(entry.Name))
                found.Add(new(name, entry is DirectoryInfo || MayHoldRecord((FileInfo)entry)));
        }
    }

    /// <summary>True for what spreadsheet programs put beside an open file, small and hidden, and what file browsers leave.</summary>
    private static bool IsLeftByPrograms(FileInfo file) =>
        file.Name.StartsWith(".~lock.", StringComparison.Ordinal)
        || file.Name is ".DS_Store" or "Thumbs.db" or "desktop.ini"
        || (file.Name.StartsWith("~$", StringComparison.Ordinal) && file.Length < 1024);

    private static bool MayHoldRecord(FileInfo file)
    {
        if (file.LinkTarget is null && (IsLeftByPrograms(file) || file.Length == 0))
            return false;
        if (Tables.Contains(file.Extension))
            return true;
        if (!file.Exists || file.LinkTarget is not null || file.Attributes.HasFlag(FileAttributes.Device))
            return !Pictures.Contains(file.Extension);
        using var stream = file.OpenRead();
        var first = ReadInput.FirstBytes(stream);
        return first.AsSpan().StartsWith("%PDF"u8) || WorkbookRecordReader.IsFor(first);
    }
}
