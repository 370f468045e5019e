using ExamDocs.Intake.Csv;
using ExamDocs.Intake.OwnList.Sheets;

namespace ExamDocs.UseCases.Reading;

/// <summary>Reads a list of the user's own: a workbook or a file of separated values.</summary>
internal static class ReadList
{
    /// <returns>The list; where it cannot be read, that says why.</returns>
    public static ListBook From(string path)
    {
        var name = Path.GetFileName(path);
        try
        {
            var file = new FileInfo(path);
            return Directory.Exists(path) ? ListBook.Refused(name, "it is a folder; give one list at a time")
                : !file.Exists ? ListBook.Refused(name, "there is no such file")
                : file.Length == 0 ? ListBook.Refused(name, "the file is empty")
                : file.Length > CsvRecordReader.MostBytes ? ListBook.Refused(name, "the file is larger than 32 MiB")
                : ListBookReader.Read(File.ReadAllBytes(path), name);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return ListBook.Refused(name, "the file cannot be opened: " + e.Message);
        }
    }
}
