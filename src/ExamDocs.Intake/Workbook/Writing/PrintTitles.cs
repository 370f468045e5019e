using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace ExamDocs.Intake.Workbook.Writing;

/// <summary>
/// Rows and columns that are printed on every page, the ids of items among them. Some programs repeat only what is named by its place on
/// the sheet ($A:$B), and the workbook is written with names that are relative.
/// </summary>
internal static partial class PrintTitles
{
    private const string Names = "xl/workbook.xml";

    /// <param name="workbook">A whole workbook, which is changed; its times stay.</param>
    public static void Fix(Stream workbook)
    {
        using var zip = new ZipArchive(workbook, ZipArchiveMode.Update, leaveOpen: true);
        var part = zip.GetEntry(Names)!;
        var made = part.LastWriteTime;
        using (var stream = part.Open())
        {
            using var reader = new StreamReader(stream, Encoding.UTF8, leaveOpen: true);
            var text = Titles().Replace(reader.ReadToEnd(), titles => Place().Replace(titles.Value, "!$$${from}:$$${to}"));
            stream.SetLength(0);
            stream.Write(Encoding.UTF8.GetBytes(text));
        }
        part.LastWriteTime = made;
    }

    [GeneratedRegex(@"(?<=_xlnm\.Print_Titles""[^>]*>)[^<]*", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Titles();

    [GeneratedRegex(@"!(?<from>[A-Z]+|[0-9]+):(?<to>[A-Z]+|[0-9]+)", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Place();
}
