using ExamDocs.Core.Regimes;
using ExamDocs.Intake;
using ExamDocs.Intake.Csv;
using ExamDocs.Intake.Json;
using ExamDocs.Intake.Workbook;

namespace ExamDocs.UseCases.Reading;

/// <summary>Reads a record from a file of any kind that can hold one.</summary>
public static class ReadInput
{
    /// <summary>Most files in a folder, inclusive: as many as a workbook may have sheets.</summary>
    private const int MostFiles = 200;

    /// <param name="path">A JSON file, a workbook, a file of separated values, a folder of such files, or a document of ours.</param>
    /// <param name="rules">The categories that it may have sheets for; if left out, the built-in ones.</param>
    public static ReadResult From(string path, KnownRules? rules = null)
    {
        try
        {
            if (Directory.Exists(path))
                return FromFolder(path, rules);
            // A pipe has length 0 too: opening one would wait for ever.
            if (new FileInfo(path) is { Exists: true, Length: 0 })
                return Refuse(path, "the file is empty");
            using var stream = File.OpenRead(path);
            if (IsCsv(path))
                return stream.Length > CsvRecordReader.MostBytes
                    ? Refuse(path, "the file is larger than 32 MiB")
                    : CsvRecordReader.Read([new CsvFile(Path.GetFileName(path), Whole(stream))], Path.GetDirectoryName(path) ?? "", rules);
            var first = FirstBytes(stream);
            if (first.AsSpan().StartsWith("%PDF"u8))
                return FromDocument(stream, path);
            return string.Equals(Path.GetExtension(path), ".xlsx", StringComparison.OrdinalIgnoreCase) || WorkbookRecordReader.IsFor(first)
                ? WorkbookRecordReader.Read(stream, path, rules)
                : FromJson(stream, path, first);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Refuse(
                path,
                e is FileNotFoundException or DirectoryNotFoundException
                    ? "there is no such file"
                    : "the file cannot be opened: " + e.Message
            );
        }
    }

    private static ReadResult FromJson(FileStream stream, string path, byte[] first)
    {
        if (!Path.GetExtension(path).Equals(".json", StringComparison.OrdinalIgnoreCase) && OtherFile.WhyNot(first) is { } why)
            return Refuse(path, why);
        if (stream.Length > JsonRecordReader.MaxBytes)
            return Refuse(path, "the file is larger than 64 MiB");
        return JsonRecordReader.Read(Whole(stream), path);
    }

    private static ReadResult FromDocument(FileStream stream, string path) =>
        stream.Length > ReadDocument.MostBytes ? Refuse(path, "the file is larger than 256 MiB") : ReadDocument.From(Whole(stream), path);

    /// <summary>
    /// The first bytes show what a file is, whatever its name: a document of ours, or an archive or older Office file. The reader of
    /// workbooks looks further into the latter two.
    /// </summary>
    internal static byte[] FirstBytes(FileStream stream)
    {
        var first = new byte[4];
        var read = stream.ReadAtLeast(first, first.Length, throwOnEndOfStream: false);
        stream.Position = 0;
        return first[..read];
    }

    private static ReadResult FromFolder(string folder, KnownRules? rules)
    {
        var files = Directory
            .EnumerateFiles(folder)
            .Where(IsCsv)
            .Order(StringComparer.Ordinal)
            .Take(MostFiles + 1)
            .Select(f => new FileInfo(f))
            .ToList();
        if (files.Count == 0)
            return Refuse(folder, FolderOfWorkbooks.WhyNot(folder) ?? "it is a folder of workbooks; give one of them");
        return files.Count > MostFiles ? Refuse(folder, "there are more than 200 .csv files in the folder")
            : files.Sum(f => f.Length) > CsvRecordReader.MostBytes ? Refuse(folder, "the files are larger than 32 MiB together")
            : CsvRecordReader.Read(
                [.. files.Select(f => new CsvFile(f.Name, f.Length == 0 ? [] : File.ReadAllBytes(f.FullName)))],
                folder,
                rules,
                UnreadFiles.Of(folder)
            );
    }

    internal static bool IsCsv(string path) => Path.GetExtension(path).ToLowerInvariant() is ".csv" or ".tsv";

    private static byte[] Whole(FileStream stream)
    {
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    internal static ReadResult Refuse(string path, string why) => new(null, [], Core.Findings.SourceMap.ForJson(path), why);
}
