using ExamDocs.Intake.OwnList.Sheets;
using ExamDocs.Intake.OwnList.Words;

namespace ExamDocs.Intake.OwnList.Mapping;

/// <summary>
/// Finds the tables of a list: where headings stand, which rows are items, and which are titles, totals or headings said again.
/// Each filled row ends up in a table or is named as left out.
/// </summary>
internal sealed class TableFinder(KindPhrases kinds)
{
    /// <summary>Headings are looked for in so many of the first rows.</summary>
    private const int FirstRows = 40;

    private readonly List<ListTable> _tables = [];
    private readonly List<RowLeftOut> _leftOut = [];

    public IReadOnlyList<ListTable> Tables => _tables;

    public IReadOnlyList<RowLeftOut> LeftOut => _leftOut;

    public static TableFinder In(ListBook book, KindPhrases kinds)
    {
        var finder = new TableFinder(kinds);
        var ofFile = UseWords.Against(Path.GetFileNameWithoutExtension(book.FileName)) is null ? null : book.FileName;
        foreach (var sheet in book.Sheets.Where(s => s.Rows.Count > 0))
            finder.Add(sheet, UseWords.Against(sheet.Name) is null ? ofFile : sheet.Name);
        return finder;
    }

    private void Add(ListSheet sheet, string? against)
    {
        var first = FirstHeadings(sheet.Rows);
        var above = first is null ? [] : sheet.Rows.TakeWhile(r => r != first).ToList();
        foreach (var row in above)
        {
            LeaveOut(sheet, row, "above the headings");
            against ??= row.Cells.Values.Select(c => c.Text).FirstOrDefault(t => UseWords.Against(t) is not null);
        }
        var table = new TableDraft(sheet, first, against);
        foreach (var row in sheet.Rows.Skip(above.Count + (first is null ? 0 : 1)))
            table = Sort(sheet, row, table);
        Close(table);
        if (first is not null)
            LeaveOut(sheet, first, "the headings");
    }

    private TableDraft Sort(ListSheet sheet, ListRow row, TableDraft table)
    {
        if (HeadingRow.Repeats(row, table.Headings))
        {
            LeaveOut(sheet, row, "the headings again");
            return table;
        }
        if (HeadingRow.IsFurther(row))
        {
            LeaveOut(sheet, row, "headings of a further table");
            Close(table);
            return new TableDraft(sheet, row, table.Against) { Section = table.Section };
        }
        if (IsTotals(row))
            LeaveOut(sheet, row, "a row of totals");
        else if (row.Cells.Count == 1 && table.Headings.Count > 2)
            SortLone(sheet, row, table);
        else
            table.Add(row);
        return table;
    }

    /// <summary>A row with one cell is a title within the table, a remark, or an item of which only the id is known.</summary>
    private void SortLone(ListSheet sheet, ListRow row, TableDraft table)
    {
        var (column, cell) = row.Cells.First();
        var isFirst = column == table.Headings.Keys.Min();
        var isId = isFirst && cell.Text.Any(char.IsAsciiDigit) && !cell.Text.Contains(' ', StringComparison.Ordinal);
        var isKind = kinds.Find(cell.Text) is not null;
        if (UseWords.Against(cell.Text) is not null)
            table.Against = cell.Text;
        else if (UseWords.OfState(cell.Text) is UseMeaning.Remark)
            table.Against = null;
        else if (isId || (isKind && !isFirst))
        {
            table.Add(row);
            return;
        }
        else if (isKind)
            table.Section = cell.Text;
        LeaveOut(sheet, row, $"a title or remark: '{Samples.Short(cell.Text)}'");
    }

    private void Close(TableDraft table)
    {
        if (table.Rows.Count > 0)
            _tables.Add(new ListTable(table.Sheet.Name, table.Headings, table.Rows));
    }

    private void LeaveOut(ListSheet sheet, ListRow row, string why) => _leftOut.Add(new RowLeftOut(sheet.Name, row.Number, why));

    private static ListRow? FirstHeadings(IReadOnlyList<ListRow> rows) =>
        rows.Take(FirstRows).FirstOrDefault(HeadingRow.IsFirst)
        ?? (rows.Take(FirstRows).MaxBy(r => r.Cells.Count) is { } widest && rows.Count > 1 && HeadingRow.CouldBe(widest) ? widest : null);

    /// <summary>It counts the others: few cells, and one of them says so.</summary>
    private static bool IsTotals(ListRow row) =>
        row.Cells.Count <= 3
        && row.Cells.Values.Any(c =>
            PlainWords.Split(c.Text) is [var word, ..]
            && word
                is "total"
                    or "totals"
                    or "subtotal"
                    or "sum"
                    or "summe"
                    or "gesamt"
                    or "gesamtzahl"
                    or "zwischensumme"
                    or "somme"
                    or "totaux"
                    or "count"
        )
        && row.Cells.Values.All(c => c.IsFormula || c.Text.Any(char.IsAsciiDigit) || PlainWords.Split(c.Text).Count <= 4);
}

/// <summary>A table of which the rows are still being sorted.</summary>
internal sealed class TableDraft(ListSheet sheet, ListRow? headings, string? against)
{
    public ListSheet Sheet => sheet;

    public Dictionary<int, string> Headings { get; } =
        HeadingRow.Headings(
            sheet.Name,
            headings,
            sheet.Rows.SkipWhile(r => r != headings && headings is not null).SelectMany(r => r.Cells.Keys)
        );

    public List<TableRow> Rows { get; } = [];

    public string? Section { get; set; }

    public string? Against { get; set; } = against;

    public void Add(ListRow row) => Rows.Add(new TableRow(row, Section, Against));
}
