using ExamDocs.Intake.Csv;
using ExamDocs.Intake.Workbook;

namespace ExamDocs.UseCases.Reading;

/// <summary>What lies in a folder of separated values, and below it, beside them.</summary>
internal static class UnreadFiles
{
    /// <summary>Files and folders looked at, inclusive; who has more has given the wrong folder.</summary>
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

    /// <summary>Kinds of file that tables and records are kept in, beside those told by their first bytes.</summary>
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
            // A link may lead out of the folder, or in a circle: it is named, not followed.
            if (entry is DirectoryInfo inner && entry.LinkTarget is null && depth < Deepest)
                Look(inner, name + "/", depth + 1, found);
            else if (entry is DirectoryInfo || depth > 0 || !ReadInput.IsCsv(entry.Name))
                found.Add(new(name, entry is DirectoryInfo || MayHoldRecord((FileInfo)entry)));
        }
    }

    /// <summary>What a spreadsheet program lays beside an open file, and what a file browser leaves, is small and hidden.</summary>
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
