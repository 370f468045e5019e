using System.Xml;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Binding;
using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Reading;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook;

/// <summary>
/// Reads a capture workbook, filled in by whatever program, into the tree that the same record in JSON would give. The
/// file is taken for hostile: it is never calculated, nothing outside it is fetched, and what it may cost is limited.
/// </summary>
public static class WorkbookReader
{
    private const string Macros = "macros";

    /// <param name="stream">The file, from its beginning; it is left open.</param>
    /// <param name="fileName">The name the user knows it by.</param>
    /// <param name="rules">The categories it may have sheets of; left out, those built in.</param>
    /// <returns>Never throws for what the file holds: that is said in <see cref="WorkbookContent.Unreadable"/>.</returns>
    public static WorkbookContent Read(Stream stream, string fileName, KnownRules? rules = null)
    {
        ArgumentNullException.ThrowIfNull(stream);
        return Read(stream, fileName, rules ?? KnownRules.BuiltIn, new ReadingBudget());
    }

    internal static WorkbookContent Read(Stream stream, string fileName, KnownRules rules, ReadingBudget budget)
    {
        try
        {
            using var package = WorkbookPackage.Open(stream, budget);
            return Read(package, rules, budget);
        }
        catch (UnreadableWorkbookException e)
        {
            return Unreadable(e.Message) with { HasNoKnownSheet = e.HasNoKnownSheet };
        }
        catch (Exception e) when (e is XmlException or InvalidDataException or EndOfStreamException or NotSupportedException)
        {
            return Unreadable(
                $"{fileName} is damaged, or no workbook that can be read. Open it in a spreadsheet program and save it again as .xlsx."
            );
        }
    }

    private static WorkbookContent Unreadable(string sentence) =>
        new(null, new Dictionary<string, string>(StringComparer.Ordinal), [], sentence);

    private static WorkbookContent Read(WorkbookPackage package, KnownRules rules, ReadingBudget budget)
    {
        var directory = WorkbookDirectory.Read(package);
        var texts = SharedStrings.Read(package, directory.SharedStrings, budget);
        var rows = new SheetRows(texts, CellFormats.Read(package, directory.Styles), budget);
        var notes = new ReadingNotes();
        if (package.HasMacros)
            notes.Report(
                BesideFindings.MacrosNotRun,
                ReadingNotes.Outside(Macros),
                Macros,
                $"the workbook holds macros; they were not run"
            );
        foreach (var name in directory.WithoutRows)
            notes.Report(
                SheetFindings.UnknownSheet,
                ReadingNotes.Outside(name),
                $"{name}!A1",
                $"the sheet '{CellReading.Shown(name)}' has no cells, and what it shows is not read"
            );
        var reading = new SheetReading(notes, directory.Counts1904, rules);
        var sheets = new WorkbookSheets(package, rows, budget, notes, rules);
        var shapes = directory.Sheets.Select(s => (Sheet: s, Shape: sheets.ShapeOf(s))).ToList();
        if (notes.UnreadRows.Count > 0 && shapes.TrueForAll(s => s.Shape is null))
            throw NoCaptureWorkbook.Refused(directory.Sheets.Select(s => s.Name), notes.UnreadRows);
        foreach (var (sheet, shape) in shapes.Where(s => s.Shape is not null).OrderBy(s => s.Shape!.Role))
        {
            using var part = package.Read(sheet.Part);
            reading.Read(sheet, shape!, rows.Read(part), sheets.Beside(sheet, directory.LinksOthers));
        }
        return new(reading.Finish(), notes.Cells, notes.Findings, null) { UnreadRows = notes.UnreadRows, HeadingOf = notes.HeadingOf };
    }
}
