using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Csv;

/// <summary>Tells which sheet of the capture workbook a file of separated values stands for.</summary>
internal static class CsvSheetName
{
    /// <summary>
    /// By the file's name, whole or behind its last hyphen: spreadsheet programs export a sheet as book-sheet.csv. Null
    /// where that is no sheet's.
    /// </summary>
    public static SheetShape? Find(string fileName, KnownRules rules)
    {
        var name = Path.GetFileNameWithoutExtension(fileName);
        return WorkbookShape.Find(name, rules) ?? WorkbookShape.Find(name[(name.LastIndexOf('-') + 1)..], rules);
    }
}
