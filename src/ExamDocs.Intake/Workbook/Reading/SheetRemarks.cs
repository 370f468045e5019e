using System.Globalization;
using ExamDocs.Core.Findings;
using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>What is said once about a sheet: that it or rows of it are hidden, that formulas stand on it.</summary>
/// <param name="sheet">The sheet as the workbook names it.</param>
/// <param name="notes">Where it is said.</param>
/// <param name="shape">The sheet of the capture workbook that it is read as; null where it is not read.</param>
internal sealed class SheetRemarks(SheetEntry sheet, ReadingNotes notes, SheetShape? shape)
{
    private int _hidden;
    private int _formulas;
    private string? _firstHidden;
    private string? _firstFormula;

    public void Look(SheetRow row)
    {
        if (row.Hidden && _hidden++ == 0)
            _firstHidden = Reference(row.Cells[0], row);
        foreach (var cell in row.Cells)
        {
            if (cell.IsFormula && cell.Kind is not CellKind.FormulaWithoutValue && _formulas++ == 0)
                _firstFormula = Reference(cell, row);
        }
    }

    /// <param name="about">What the file says of the sheet as a whole.</param>
    /// <param name="drawings">What lies over it.</param>
    /// <param name="headings">Null where the sheet holds nothing, or has no headings.</param>
    public void Report(SheetAbout about, SheetDrawings drawings, HeadingMap? headings)
    {
        ReportBeside(about, drawings);
        foreach (var heading in headings?.Missing ?? [])
            Say(SheetFindings.ColumnMissing, "A1", $"the sheet {sheet.Name} has no column '{heading}'");
        if (about.FirstMerge is { } merge)
            Say(
                SheetFindings.MergedCells,
                merge.Split(':')[0],
                $"{about.Merges} groups of cells on the sheet {sheet.Name} are merged; the first is {CellReading.Shown(merge)}"
            );
        if (sheet.Hidden)
            Say(BesideFindings.HiddenRead, "A1", $"the sheet {sheet.Name} is hidden");
        if (about.FirstHiddenColumn is { } column)
            Say(
                BesideFindings.HiddenRead,
                $"{column}1",
                $"{about.HiddenColumns} columns of the sheet {sheet.Name} are hidden; the first is {column}"
            );
        if (_firstHidden is not null)
            Say(BesideFindings.HiddenRead, _firstHidden, $"{_hidden} rows of the sheet {sheet.Name} are hidden; this is the first");
        if (_firstFormula is not null && about.LinksOtherWorkbooks)
            Say(
                BesideFindings.OtherWorkbooks,
                _firstFormula,
                $"the workbook is linked to others, and the sheet {sheet.Name} has {_formulas} formulas; this is the first"
            );
        else if (_firstFormula is not null)
            Say(CellFindings.FormulaResult, _firstFormula, $"the sheet {sheet.Name} has {_formulas} formulas; this is the first");
    }

    /// <summary>What a sheet shows beside its cells, of one that is read as of one that is not.</summary>
    public void ReportBeside(SheetAbout about, SheetDrawings drawings)
    {
        foreach (var (row, at, text) in drawings.Texts)
            Say(BesideFindings.TextInDrawing, CellAddress.Of(row, at), $"a text drawn over the sheet says '{CellReading.Shown(text)}'");
        if (drawings.Others + about.Objects > 0)
            Say(
                BesideFindings.DrawingNotRead,
                "A1",
                $"pictures, charts or controls on the sheet {sheet.Name}: {drawings.Others + about.Objects}"
            );
        if (about.HeadersAndFooters.Find(t => !IsName(t)) is { } printed)
            Say(BesideFindings.HeaderOrFooter, "A1", $"the header or footer of the sheet {sheet.Name} says '{CellReading.Shown(printed)}'");
        if (about.StrikingFormat is { } range)
            Say(
                BesideFindings.StrikingFormat,
                CellAddress.Parse(range.Split(':', ' ')[0]) is { } cell ? CellAddress.Of(cell.Row, cell.Column) : "A1",
                $"a conditional format of the sheet {sheet.Name} strikes out what it applies to"
            );
    }

    /// <summary>Of a sheet that was renamed, the name that it had as well.</summary>
    private bool IsName(string printed) =>
        string.Equals(printed, sheet.Name, StringComparison.Ordinal) || string.Equals(printed, shape?.Name, StringComparison.Ordinal);

    private static string Reference(Cell cell, SheetRow row) =>
        string.Create(CultureInfo.InvariantCulture, $"{CellAddress.Letters(cell.Column)}{row.Number}");

    private void Say(Core.Findings.RuleInfo rule, string cell, Message message) =>
        notes.Report(rule, ReadingNotes.Outside(sheet.Name, cell), $"{sheet.Name}!{cell}", message);
}
