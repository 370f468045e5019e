using System.Text;
using System.Xml.Linq;
using ExamDocs.Core.Findings;
using ExamDocs.Intake.Tests.Workbook;
using ExamDocs.Intake.Workbook;

namespace ExamDocs.Intake.Tests.Annotating;

/// <summary>The annotated copy of a workbook with everything in it: marked where something was found, else as it was.</summary>
public sealed class OfficeCopyTests
{
    private static readonly byte[] Before = OfficeWorkbook.Make();

    /// <summary>
    /// A cell with a note, one with a thread, one with a date style, one missing in its row, a missing row, a hidden row.
    /// </summary>
    private static readonly Annotated Found = Finding();

    private static readonly byte[] After = Found.Copy(Before);

    private static Annotated Finding() =>
        new Annotated()
            .At(OfficeWorkbook.Sheet, "A2")
            .At(OfficeWorkbook.Sheet, "A2", Severity.Note, "something else")
            .At(OfficeWorkbook.Sheet, "B2", Severity.Warning)
            .At(OfficeWorkbook.Sheet, "D2", Severity.Note)
            .At(OfficeWorkbook.Sheet, "C2")
            .At(OfficeWorkbook.Sheet, "H4")
            .At(OfficeWorkbook.Sheet, "A5")
            .At(OfficeWorkbook.Sheet, "B3")
            .At(OfficeWorkbook.OtherSheet, "A1", Severity.Error, "=cmd|'/c calc'!A1 <b> & \u0001 _x0041_ \uD83D")
            .Nowhere("the visit has no reference");

    [Fact]
    public void Nothing_changes_but_the_marks() => Assert.Empty(CopyDifference.Of(Before, After, Found.Cells));

    [Fact]
    public void The_format_s_own_validator_finds_nothing_new() =>
        Assert.Empty(OpenXmlErrors.Of(After).Except(OpenXmlErrors.Of(Before), StringComparer.Ordinal));

    [Fact]
    public void Existing_notes_stand_above_ours()
    {
        var notes = new ZipParts(After).AllNotes();
        var (author, text) = notes[OfficeWorkbook.Sheet + "!A2"];
        Assert.Equal("A. Elm", author);
        Assert.StartsWith(
            OfficeWorkbook.FirstNote + "\n\nERROR TST001 (BRG-1): something is wrong.\nWhat to do: put A2 right.\n\nNOTE TST001",
            text,
            StringComparison.Ordinal
        );
        Assert.StartsWith(
            "[Threaded comment] Is this the right one?\n\nWARNING TST001",
            notes[OfficeWorkbook.Sheet + "!B2"].Text,
            StringComparison.Ordinal
        );
        Assert.Equal(8, notes.Count);
        Assert.All(notes.Where(n => n.Key is not ("Rope bridges!A2" or "Rope bridges!B2")), n => Assert.Equal("ExamDocs", n.Value.Author));
    }

    [Fact]
    public void Every_note_has_its_box_and_no_two_share_a_number()
    {
        var parts = new ZipParts(After);
        var boxes = parts.Names.Where(n => n.EndsWith(".vml", StringComparison.Ordinal)).Select(n => parts.Xml(n)).ToList();
        Assert.Equal(2, boxes.Count);
        var shapes = boxes.SelectMany(b => b.Descendants().Where(e => e.Name.LocalName is "shape")).ToList();
        Assert.Equal(8, shapes.Select(s => (string)s.Attribute("id")!).Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(
            ["0,0", "1,0", "1,1", "1,2", "1,3", "2,1", "3,7", "4,0"],
            shapes.Select(s => $"{Of(s, "Row")},{Of(s, "Column")}").Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void Each_severity_has_its_fill_and_the_cell_keeps_the_rest_of_its_style()
    {
        var parts = new ZipParts(After);
        var styles = parts.Xml("xl/styles.xml").Root!;
        var (fills, formats) = (Children(styles, "fills"), Children(styles, "cellXfs"));
        string Colour(string cell) =>
            fills[(int)formats[StyleOf(parts, cell)].Attribute("fillId")!]
                .Descendants()
                .First(e => e.Name.LocalName is "fgColor")
                .Attribute("rgb")!
                .Value;
        Assert.Equal(3, new[] { Colour("A2"), Colour("B2"), Colour("D2") }.Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(Colour("A2"), Colour("H4"));
        Assert.Equal("164", (string?)formats[StyleOf(parts, "D2")].Attribute("numFmtId"));
        Assert.Equal("49", (string?)formats[StyleOf(parts, "C2")].Attribute("numFmtId"));
        Assert.All(new[] { "fonts", "fills", "cellXfs" }, c =>
            Assert.Equal(Children(styles, c).Count, (int)styles.Elements().Single(e => e.Name.LocalName == c).Attribute("count")!)
        );
    }

    [Fact]
    public void Missing_cells_and_rows_are_made_in_order()
    {
        var sheet = new ZipParts(After).Xml("xl/worksheets/sheet1.xml").Root!;
        var rows = sheet.Descendants().Where(e => e.Name.LocalName is "row").ToList();
        Assert.Equal(["1", "2", "3", "4", "5"], rows.Select(r => (string)r.Attribute("r")!));
        Assert.Equal(["A2", "B2", "C2", "D2", "E2", "F2"], rows[1].Elements().Select(c => (string)c.Attribute("r")!));
        Assert.Equal("A1:H5", (string?)sheet.Elements().Single(e => e.Name.LocalName is "dimension").Attribute("ref"));
        Assert.Equal("1:6", (string?)rows[1].Attribute("spans"));
    }

    [Fact]
    public void The_list_is_the_last_sheet_and_leads_to_the_cells()
    {
        var parts = new ZipParts(After);
        Assert.Equal([OfficeWorkbook.Sheet, OfficeWorkbook.OtherSheet, "Findings"], parts.SheetNames());
        var list = FindingsList.Of(After, "Findings");
        Assert.Contains("competent person's judgement come first", list.Rows[0][0], StringComparison.Ordinal);
        Assert.Equal(["Code", "Severity", "Sheet and cell", "Item", "What is wrong", "What to type or do", "Check"], list.Rows[1]);
        Assert.Equal(["TST001", "error", "Rope bridges!A2", "BRG-1", "something is wrong", "put A2 right."], list.Rows[2][..6]);
        Assert.Equal(["TST002", "warning", "", "", "the visit has no reference", "put it right."], list.Rows[^1][..6]);
        Assert.Equal("'Rope bridges'!A2", list.Links["C3"]);
        Assert.Equal("'Bob''s list'!A1", list.Links["C11"]);
        Assert.Equal(Found.Findings.Count - 1, list.Links.Count);
    }

    [Fact]
    public void What_was_typed_never_becomes_a_formula_or_an_escape()
    {
        var parts = new ZipParts(After);
        Assert.Empty(
            parts
                .Xml(parts.Names.Single(n => n.Contains("findings", StringComparison.Ordinal)))
                .Descendants()
                .Where(e => e.Name.LocalName is "f")
        );
        Assert.Equal("=cmd|'/c calc'!A1 <b> & _x0001_ _x005F_x0041_ \uFFFD", FindingsList.Of(After, "Findings").Rows[10][4]);
        Assert.Contains(
            "=cmd|'/c calc'!A1 <b> & _x0001_ _x005F_x0041_ \uFFFD.",
            parts.AllNotes()["Bob's list!A1"].Text,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void It_reads_as_the_same_record()
    {
        var (before, after) = (
            WorkbookReader.Read(new MemoryStream(Before), "kit.xlsx"),
            WorkbookReader.Read(new MemoryStream(After), "kit.xlsx")
        );
        Assert.Equal(TreeText.Of(before.Root!), TreeText.Of(after.Root!));
        Assert.Equal(Annotated.WithoutFormulas(before.Findings), after.Findings);
        Assert.Contains("manufactured:\"2025-12-02\"", TreeText.Of(after.Root!), StringComparison.Ordinal);
    }

    [Fact]
    public void A_second_time_there_is_a_second_list_and_no_note_says_a_thing_twice()
    {
        var again = Finding().At(OfficeWorkbook.Sheet, "A2", Severity.Note, "something else").Copy(After);
        Assert.Empty(CopyDifference.Of(After, again, Found.Cells));
        Assert.Equal([OfficeWorkbook.Sheet, OfficeWorkbook.OtherSheet, "Findings", "Findings 2"], new ZipParts(again).SheetNames());
        Assert.Equal(new ZipParts(After).AllNotes(), new ZipParts(again).AllNotes());
        Assert.Empty(OpenXmlErrors.Of(again).Except(OpenXmlErrors.Of(Before), StringComparer.Ordinal));
        Assert.Equal(
            Annotated.WithoutFormulas(WorkbookReader.Read(new MemoryStream(Before), "kit.xlsx").Findings),
            WorkbookReader.Read(new MemoryStream(again), "kit.xlsx").Findings
        );
    }

    [Fact]
    public void Boxes_that_no_parser_reads_are_added_to_all_the_same()
    {
        var before = new ZipParts(Before)
            .Replace("xl/drawings/vmlDrawing1.vml", "<div style='text-align:left'></div>", "<div style='text-align:left'>a<br>b</div>")
            .File();
        var after = Found.Copy(before);
        Assert.Empty(CopyDifference.Of(before, after, Found.Cells));
        Assert.Contains(
            "_x0000_s1027",
            Encoding.UTF8.GetString(new ZipParts(after).Bytes("xl/drawings/vmlDrawing1.vml")),
            StringComparison.Ordinal
        );
    }

    private static string Of(XElement shape, string name) => shape.Descendants().Single(e => e.Name.LocalName == name).Value;

    private static List<XElement> Children(XElement styles, string collection) =>
        [.. styles.Elements().Single(e => e.Name.LocalName == collection).Elements()];

    private static int StyleOf(ZipParts parts, string cell) =>
        (int)
            parts
                .Xml("xl/worksheets/sheet1.xml")
                .Descendants()
                .Single(c => c.Name.LocalName is "c" && string.Equals((string?)c.Attribute("r"), cell, StringComparison.Ordinal))
                .Attribute("s")!;
}
