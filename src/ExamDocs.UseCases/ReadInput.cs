using ExamDocs.Core;
using ExamDocs.Intake;
using ExamDocs.Intake.Json;
using ExamDocs.Intake.Workbook;

namespace ExamDocs.UseCases;

/// <summary>Reads a record from a file, whatever kind of file it is.</summary>
public static class ReadInput
{
    /// <param name="path">A JSON file or a workbook.</param>
    /// <param name="rules">The categories it may have sheets of; left out, those built in.</param>
    public static ReadResult From(string path, KnownRules? rules = null)
    {
        try
        {
            using var stream = File.OpenRead(path);
            return string.Equals(Path.GetExtension(path), ".xlsx", StringComparison.OrdinalIgnoreCase)
                ? WorkbookRecordReader.Read(stream, path, rules)
                : FromJson(stream, path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Refuse(path, e is FileNotFoundException or DirectoryNotFoundException ? "there is no such file"
                : Directory.Exists(path) ? "it is a folder, not a file" : "the file cannot be opened: " + e.Message);
        }
    }

    private static ReadResult FromJson(FileStream stream, string path)
    {
        if (stream.Length > JsonRecordReader.MaxBytes)
            return Refuse(path, "the file is larger than 64 MiB");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes is [(byte)'P', (byte)'K', ..]
            ? Refuse(path, "the file is a workbook or an archive; give a workbook the ending .xlsx")
            : JsonRecordReader.Read(bytes, path);
    }

    private static ReadResult Refuse(string path, string why) =>
        new(null, [], Core.Findings.SourceMap.ForJson(path), why);
}
