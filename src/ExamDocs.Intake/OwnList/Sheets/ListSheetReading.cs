using System.Globalization;
using ExamDocs.Intake.Workbook.Package;
using ExamDocs.Intake.Workbook.Reading;

namespace ExamDocs.Intake.OwnList.Sheets;

/// <summary>Reads the sheets of one workbook, with what is hidden, merged, coloured, written beside or drawn over them.</summary>
internal sealed class ListSheetReading(WorkbookPackage package, WorkbookDirectory directory, ReadingBudget budget)
{
    private readonly SheetRows _rows = new(
        SharedStrings.Read(package, directory.SharedStrings, budget),
        CellFormats.Read(package, directory.Styles),
        budget
    );

    private readonly CellColours _colours = CellColours.Read(package, directory.Styles);

    /// <summary>Colours of the sheet read last that mark no row.</summary>
    private IReadOnlyList<string> _decoration = [];

    public ListSheet Read(SheetEntry sheet)
    {
        List<ListRow> rows;
        using (var part = package.Read(sheet.Part))
            rows = [.. _rows.Read(part).Select(r => ListBookReader.Row(r, directory.Counts1904)).Where(r => r.Cells.Count > 0)];
        var about = _rows.About;
        FillMerged(about, rows);
        using (var part = package.Read(sheet.Part))
            _decoration = RowColours.Mark(part, _colours, rows);
        var elsewhere = TakeComments(sheet, rows);
        return new ListSheet(sheet.Name, rows) { Remarks = [.. Remarks(sheet, rows, about, elsewhere)] };
    }

    /// <summary>A value merged over several rows is to be seen in each of them.</summary>
    private void FillMerged(SheetAbout about, List<ListRow> rows)
    {
        var byNumber = rows.ToDictionary(r => r.Number);
        foreach (var (from, to, column) in about.MergedRows)
        {
            if (!byNumber.TryGetValue(from, out var first) || !first.Cells.TryGetValue(column, out var value))
                continue;
            foreach (var row in rows.Where(r => r.Number > from && r.Number <= to))
            {
                if (row.Cells.TryAdd(column, value))
                    budget.FilledCell();
            }
        }
    }

    /// <summary>Gives each row its comments.</summary>
    /// <returns>Those beside no filled row.</returns>
    private List<string> TakeComments(SheetEntry sheet, List<ListRow> rows)
    {
        var byNumber = rows.ToDictionary(r => r.Number);
        var elsewhere = new List<string>();
        foreach (var ((row, _), texts) in SheetComments.Of(package, sheet.Part, budget))
        {
            if (byNumber.TryGetValue(row, out var filled))
                filled.Comments.AddRange(texts);
            else
                elsewhere.AddRange(texts);
        }
        return elsewhere;
    }

    private IEnumerable<string> Remarks(SheetEntry sheet, List<ListRow> rows, SheetAbout about, List<string> elsewhere)
    {
        var drawings = SheetDrawings.Of(package, sheet.Part, budget);
        if (sheet.Hidden)
            yield return $"the sheet {sheet.Name} is hidden; it was read like the others";
        if (about.FirstHiddenColumn is { } hidden)
            yield return $"{sheet.Name}: hidden columns from {hidden} on were read like the others";
        if (rows.Where(r => r.IsHidden).Select(r => r.Number).ToList() is { Count: > 0 } hiddenRows)
            yield return $"{sheet.Name}: hidden rows were read like the others: {RowNumbers.Of(hiddenRows)}";
        if (about.MergedRows.Count > 0)
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"{sheet.Name}: cells merged over several rows, their value taken for each of the rows: {about.MergedRows.Count}"
            );
        if (_decoration.Count > 0)
            yield return $"{sheet.Name}: colours of many rows were taken for decoration: {string.Join(", ", _decoration)}";
        if (about.StrikingFormat is { } range)
            yield return $"{sheet.Name}: a conditional format strikes rows out at {range}; which ones could not be read: look there";
        foreach (var text in drawings.Texts.Select(t => t.Text).Concat(elsewhere))
            yield return $"{sheet.Name}: not taken, written beside the rows: '{CellReading.Shown(text)}'";
        foreach (
            var text in about
                .HeadersAndFooters.Where(t => !string.Equals(t, sheet.Name, StringComparison.Ordinal))
                .Distinct(StringComparer.Ordinal)
        )
            yield return $"{sheet.Name}: not taken, printed above or below the sheet: '{CellReading.Shown(text)}'";
        if (drawings.Others + about.Objects > 0)
            yield return $"{sheet.Name}: pictures, charts or controls were not read";
    }
}
