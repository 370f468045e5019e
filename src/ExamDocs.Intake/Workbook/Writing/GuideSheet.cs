using ClosedXML.Excel;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Writing;

/// <summary>The guide, which holds nothing of a record.</summary>
internal static class GuideSheet
{
    private const string HeadingFill = "#DDEBF7";

    private static readonly string[] Guide =
    [
        "Fill in Visit first, with the people at its foot; on Models one row for each model; then one row per item on the sheet of its "
            + "kind.",
        "Point at a heading to read what belongs under it. A heading's colour shows its group, and its note says so in "
            + "words: item, examination, criterion, conclusion.",
        "Every item needs an id of its own. Other sheets name the item by that id, and people by theirs.",
        "A star marks what every item needs. Columns that few items need are folded away at the right: the plus sign above them "
            + "opens them. Examiner and basis are typed once on Visit where they are the same for every item.",
        "Each criterion has one column: choose the answer from its list. The answers noted, doubt and defect need a note, typed "
            + "after a colon, for example noted: dried soil. A criterion without an answer leaves the item undetermined.",
        "clear: examined, nothing found. noted: something seen that does not end its service. doubt: not sure it is safe, so "
            + "it is taken out. defect: it fails. no-sign: nobody to ask, and no sign found. not-examined, not-applicable: as they "
            + "say.",
        "Dates are typed year-month-day, for example 2026-05-11. Where only the month or the year is known, type that: "
            + "2024-02 or 2024. Where your dates stand in another order, say so on the Visit sheet.",
        "Numbers have a point or a comma before the decimals, the same everywhere, and no marks between thousands. Units "
            + "stand in the heading or in their own column.",
        "Where a cell takes several things, separate them with semicolons.",
        "Write defects that are, or could become, a danger on the Defects sheet as well, measurements on Diameters, tests on Tests.",
        "On Diameters, Tests, Defects and Photos, the date may be left empty: the row then belongs to the examination in the "
            + "item's own row. Examinations before this visit stand on the two sheets of earlier ones.",
        "Leave the headings as they are; columns may be moved. Sheets may be left empty. Columns and sheets of your own are not "
            + "read, and what stands in them is reported.",
        "In a workbook made from an earlier record, the grey columns show what was seen last time. They are there to compare "
            + "with; nothing in them is read.",
        "What the makers' instructions allow goes on Models, with the document, revision and page. No limit is assumed where "
            + "none is recorded.",
    ];

    /// <summary>What the guide said in earlier versions: still known when such a workbook is read.</summary>
    private static readonly string[] EarlierGuide =
    [
        "Fill in Visit and People first, on Models one row for each model, then one row per item on the sheet of its kind.",
        "Fill in the Visit and People sheets first, then one row per item on the sheet of its kind.",
        "Each criterion has two columns: the answer, chosen from a list, and a note. Leave nothing out: a criterion without "
            + "an answer leaves the item undetermined. The answers noted, doubt and defect need a note.",
        "Headings are locked, without a password: lift the protection of a sheet to move its columns. Sheets may be left "
            + "empty. Columns and sheets of your own are not read, and what stands in them is reported.",
        "What the makers' instructions allow goes on Limits, with the document, revision and page. No limit is assumed where "
            + "none is recorded.",
    ];

    private static readonly (string First, string Second)[] EarlierSheets =
    [
        ("Sheet Visit", "For whom, where, when and under which law."),
        (
            "Sheet Limits",
            "What the makers' instructions allow, with the document that says so. Nothing is assumed where nothing is recorded."
        ),
    ];

    public static void Write(XLWorkbook workbook, IEnumerable<SheetShape> sheets)
    {
        var sheet = workbook.AddWorksheet(WorkbookShape.GuideName);
        sheet.Column(1).Width = 28;
        sheet.Column(2).Width = 90;
        var row = 1;
        Paragraph(sheet, row, WorkbookShape.GuideName, "");
        HeadingStyle.Paint(sheet.Cell(row, 1), HeadingFill);
        HeadingStyle.Paint(sheet.Cell(row, 2), HeadingFill);
        foreach (var (first, second) in GuideLines(sheets))
            Paragraph(sheet, ++row, first, second);
        for (var n = 1; n <= row; n++)
            RowHeight.Set(sheet, n, [28, 90]);
        SheetWriting.SetUpPage(sheet, 118);
    }

    /// <summary>What stands on the guide below its title; the reader knows it again.</summary>
    public static IEnumerable<(string First, string Second)> GuideLines(IEnumerable<SheetShape> sheets) =>
        Guide
            .Select((line, n) => (string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{n + 1}"), line))
            .Concat(sheets.Select(shape => ($"Sheet {shape.Name}", shape.About)));

    /// <summary>What stood on the guide in earlier versions.</summary>
    public static IEnumerable<(string First, string Second)> EarlierGuideLines =>
        EarlierGuide.Select(line => ("0", line)).Concat(EarlierSheets);

    private static void Paragraph(IXLWorksheet sheet, int row, string first, string second)
    {
        CellWriting.WriteText(sheet.Cell(row, 1), first);
        sheet.Cell(row, 1).Style.Font.Bold = true;
        if (second.Length > 0)
            CellWriting.WriteText(sheet.Cell(row, 2), second);
        foreach (var column in new[] { 1, 2 })
        {
            sheet.Cell(row, column).Style.Alignment.WrapText = true;
            sheet.Cell(row, column).Style.Alignment.Vertical = XLAlignmentVerticalValues.Top;
        }
    }
}
