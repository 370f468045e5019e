using ExamDocs.Core;
using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Csv;

/// <summary>Tells which sheet of the capture workbook a file of separated values stands for.</summary>
internal static class CsvSheetName
{
    /// <summary>
    /// By the file's name, whole or behind its last hyphen (spreadsheet programs export a sheet as book-sheet.csv); else by
    /// the headings of its first row. Null where neither tells it from all others.
    /// </summary>
    public static SheetShape? Find(string fileName, SheetRow first, KnownRules rules)
    {
        var name = Path.GetFileNameWithoutExtension(fileName);
        return WorkbookShape.Find(name, rules) ?? WorkbookShape.Find(name[(name.LastIndexOf('-') + 1)..], rules) ?? ByHeadings(first, rules);
    }

    private static SheetShape? ByHeadings(SheetRow first, KnownRules rules)
    {
        var typed = first.Cells.Select(c => Heading.Key(c.Raw)).ToHashSet(StringComparer.Ordinal);
        var scored = WorkbookShape.For(rules).Where(s => s.Role is not SheetRole.Guide)
            .Select(s => (Shape: s, Matched: typed.Count(heading => Matches(s, heading, rules)))).OrderByDescending(s => s.Matched).ToList();
        return scored[0].Matched * 2 > typed.Count && scored[0].Matched > scored[1].Matched ? scored[0].Shape : null;
    }

    private static bool Matches(SheetShape shape, string heading, KnownRules rules) => shape.Role is SheetRole.Visit
        ? heading is VisitSheet.ParticularHeading or VisitSheet.ValueHeading
        : HeadingWords.Of(rules).Find(shape, heading) is not null;
}
