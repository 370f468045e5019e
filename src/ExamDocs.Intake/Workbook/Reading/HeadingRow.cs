using System.Globalization;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Vocabulary;
using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>Finds the row of headings among the first rows of a sheet, and says what stands above it.</summary>
internal static class HeadingRow
{
    /// <summary>Filled rows that are looked through.</summary>
    public const int Most = 20;

    /// <summary>So many known headings are no accident.</summary>
    private const int Enough = 3;

    /// <summary>Whether a row needs no comparing with those below it.</summary>
    public static bool IsPlain(SheetRow row, SheetShape shape, HeadingWords words) =>
        Known(row, shape, words) is >= 2 and var known && (known >= Enough || row.Cells.Count <= Enough);

    /// <summary>Which row holds the headings: the first that plainly does, else the first that has any; null where none has.</summary>
    public static int? Of(IReadOnlyList<SheetRow> rows, SheetShape shape, HeadingWords words)
    {
        int? first = null;
        for (var n = 0; n < rows.Count; n++)
        {
            if (IsPlain(rows[n], shape, words))
                return n;
            if (first is null && Known(rows[n], shape, words) > 0)
                first = n;
        }
        return first;
    }

    /// <summary>The sheet that the headings of one of the first rows belong to; null where there is none.</summary>
    public static SheetShape? ShapeOf(IEnumerable<SheetRow> rows, KnownRules rules) =>
        rows.Take(Most).Select(row => ShapeByHeadings.Find(row with { Number = 1 }, rules)).FirstOrDefault(shape => shape is not null);

    /// <summary>Says that rows were passed over; a word by which one may say how an item is, is an error at its cell.</summary>
    /// <param name="sheet">The sheet's name.</param>
    /// <param name="above">The filled rows above the headings.</param>
    /// <param name="row">The row of the headings, counted from 1.</param>
    /// <param name="notes">Where it is said.</param>
    public static void ReportAbove(string sheet, IReadOnlyList<SheetRow> above, int row, ReadingNotes notes)
    {
        foreach (var (cell, at) in above.SelectMany(r => r.Cells.Select(c => (Cell: c, At: CellAddress.Of(r.Number, c.Column)))))
        {
            if (AnswerWords.IsIn(cell.Raw))
                notes.Report(
                    SheetFindings.NoHeading,
                    ReadingNotes.Outside(sheet, at),
                    $"{sheet}!{at}",
                    $"'{CellReading.Shown(cell.Raw)}' is above the headings and is not read"
                );
        }
        notes.Report(
            ReadAsFindings.RowsAboveHeadings,
            ReadingNotes.Outside(sheet, $"A{row.ToString(CultureInfo.InvariantCulture)}/above"),
            $"{sheet}!A{row.ToString(CultureInfo.InvariantCulture)}",
            above.Count > 0
                ? (Message)(
                    $"the headings of the sheet {sheet} are in row {row}; {above.Count} rows above them are not read, the first "
                    + $"begins with '{CellReading.Shown(above[0].Cells[0].Raw)}'"
                )
                : $"the headings of the sheet {sheet} are in row {row}"
        );
    }

    private static int Known(SheetRow row, SheetShape shape, HeadingWords words)
    {
        var known = 0;
        foreach (var cell in row.Cells)
        {
            if (cell.Kind is CellKind.Text && words.Find(shape, cell.Raw) is not null)
                known++;
        }
        return known;
    }
}
