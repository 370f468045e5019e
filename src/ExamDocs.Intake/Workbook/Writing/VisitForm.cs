using ClosedXML.Excel;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Writing;

/// <summary>Writes the sheet about the visit: a form with its labels at the left, and the people below, side by side.</summary>
/// <param name="workbook">Where it is written.</param>
/// <param name="dropDowns">What its answers are chosen from.</param>
internal sealed class VisitForm(XLWorkbook workbook, DropDowns dropDowns)
{
    /// <summary>So many people can be seen side by side; more stand on a sheet of their own.</summary>
    public const int MostPeople = 6;

    /// <summary>The examiner, and somebody else who signs or supervises.</summary>
    private const int PeopleWithoutRecord = 2;

    private const string Title = "#DDEBF7";
    private const string Section = "#BDD7EE";
    private const int FirstPerson = 2;

    /// <summary>Height of a row, points: enough to write on by hand.</summary>
    private const double Least = 21;
    private static readonly double[] Widths = [28, 44, 48];

    private readonly Dictionary<string, int> _rows = new(StringComparer.Ordinal);
    private IXLWorksheet _sheet = null!;
    private int _row;

    /// <summary>Where the ids of the people stand; null where they have a sheet of their own.</summary>
    public IXLRange? PeopleIds { get; private set; }

    /// <summary>The cell for the value of a particular.</summary>
    public IXLRange ValueOf(Column column) => _sheet.Range(_rows[column.Heading], 2, _rows[column.Heading], 2);

    /// <param name="visit">What is filled in of the visit.</param>
    /// <param name="people">The people; null where they have a sheet of their own.</param>
    public void Write(CaptureRow visit, IReadOnlyList<CaptureRow>? people)
    {
        _sheet = workbook.AddWorksheet(VisitSheet.Shape.Name);
        foreach (var (n, heading) in new[] { VisitSheet.ParticularHeading, VisitSheet.ValueHeading, VisitSheet.HelpHeading }.Index())
            Head(1, n + 1, heading, Title);
        for (var n = 0; n < Widths.Length; n++)
            _sheet.Column(n + 1).Width = Widths[n];
        _row = 1;
        foreach (var (n, (title, columns)) in VisitSheet.Sections.Index())
        {
            // Who is named as the examiner stands right below.
            if (people is not null && n == VisitSheet.Sections.Count - 1)
                WritePeople(people);
            WriteSection(title, columns, visit);
        }
        SheetWriting.Protect(_sheet);
        _sheet.SheetView.Freeze(1, 1);
        SheetWriting.SetUpPage(_sheet, Widths.Sum());
        _sheet.PageSetup.PageOrientation = XLPageOrientation.Portrait;
        _sheet.PageSetup.FitToPages(1, 1);
    }

    private void WriteSection(string title, IReadOnlyList<Column> columns, CaptureRow visit)
    {
        _row++;
        for (var n = 1; n <= Widths.Length; n++)
            Head(_row, n, n == 1 ? title : "", Section);
        _sheet.Cell(_row, 1).Style.Alignment.WrapText = false;
        foreach (var column in columns)
        {
            _rows[column.Heading] = ++_row;
            Label(column);
            Answer(_sheet.Cell(_row, 2), column, visit);
            CellWriting.WriteText(_sheet.Cell(_row, 3), column.Help);
            _sheet.Cell(_row, 3).Style.Alignment.WrapText = true;
            _sheet.Cell(_row, 3).Style.Alignment.Vertical = XLAlignmentVerticalValues.Top;
            _sheet.Cell(_row, 3).Style.Font.FontColor = XLColor.FromHtml("#595959");
            SetHeight(Widths);
        }
    }

    private void WritePeople(IReadOnlyList<CaptureRow> people)
    {
        var places = Math.Max(PeopleWithoutRecord, people.Count);
        _row++;
        Head(_row, 1, VisitSheet.PeopleHeading, Section);
        for (var n = 0; n < places; n++)
        {
            Head(_row, FirstPerson + n, VisitSheet.Person(n + 1), Section);
            if (FirstPerson + n > Widths.Length)
                _sheet.Column(FirstPerson + n).Width = Widths[1];
        }
        foreach (var column in VisitSheet.OfPerson)
        {
            _row++;
            Label(column);
            for (var n = 0; n < places; n++)
            {
                Answer(_sheet.Cell(_row, FirstPerson + n), column, n < people.Count ? people[n] : []);
                Prompt(_sheet.Cell(_row, FirstPerson + n), column.Help);
            }
            SetHeight([Widths[0], .. Enumerable.Repeat(Widths[1], places)]);
            if (column.Path is "id")
                PeopleIds = _sheet.Range(_row, FirstPerson, _row, FirstPerson + places - 1);
        }
    }

    private void SetHeight(IEnumerable<double> widths)
    {
        RowHeight.Set(_sheet, _row, widths);
        _sheet.Row(_row).Height = Math.Max(Least, _sheet.Row(_row).Height);
    }

    /// <summary>Shown while the cell is chosen: beside people there is no column for what to type.</summary>
    private static void Prompt(IXLCell cell, string help)
    {
        var validation = cell.AsRange().SetDataValidation();
        validation.ShowInputMessage = true;
        validation.InputMessage = help;
    }

    private void Label(Column column)
    {
        CellWriting.WriteText(_sheet.Cell(_row, 1), HeadingStyle.Shown(column));
        _sheet.Cell(_row, 1).Style.Font.Bold = column.IsStarred;
        _sheet.Cell(_row, 1).Style.Alignment.WrapText = true;
        _sheet.Cell(_row, 1).Style.Alignment.Vertical = XLAlignmentVerticalValues.Top;
    }

    private void Answer(IXLCell cell, Column column, CaptureRow values)
    {
        cell.Style.NumberFormat.Format = "@";
        cell.Style.Alignment.WrapText = true;
        cell.Style.Alignment.Vertical = XLAlignmentVerticalValues.Top;
        cell.Style.Border.OutsideBorder = XLBorderStyleValues.Thin;
        cell.Style.Border.OutsideBorderColor = XLColor.FromHtml("#8EA9C1");
        cell.Style.Protection.SetLocked(false);
        if (values.TryGetValue(column.Heading, out var node))
            CellWriting.Write(cell, node);
        if (column.Words.Count > 0)
            dropDowns.Offer(cell.AsRange(), column.Words);
    }

    private void Head(int row, int column, string text, string fill)
    {
        if (text.Length > 0)
            CellWriting.WriteText(_sheet.Cell(row, column), text);
        HeadingStyle.Paint(_sheet.Cell(row, column), fill);
    }
}
