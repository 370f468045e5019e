using ExamDocs.Core.Criteria;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Workbook;
using ExamDocs.Intake.Workbook.Writing;
using static ExamDocs.Intake.Tests.Workbook.XlsxFile;

namespace ExamDocs.Intake.Tests.Workbook;

/// <summary>What stands beside the values of a workbook is never passed over without a word.</summary>
public sealed class BesideTests
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Item = "kit.xlsx!Rope bridges!";

    /// <summary>
    /// Style 1 is struck out, 2 named after a struck-out style, 3 crossed by a border, 4 has a font said not to be struck.
    /// </summary>
    private const string Styles =
        $"<styleSheet xmlns=\"{Main}\"><fonts><font/><font><strike/></font><font><strike val=\"0\"/></font></fonts>"
        + "<borders><border/><border diagonalUp=\"1\"><diagonal style=\"thin\"/></border><border "
        + "diagonalUp=\"1\"><diagonal/></border></borders>"
        + "<cellStyleXfs><xf/><xf fontId=\"1\"/></cellStyleXfs><cellXfs><xf/><xf fontId=\"1\"/><xf applyFont=\"0\" "
        + "xfId=\"1\"/><xf borderId=\"1\"/>"
        + "<xf fontId=\"2\" borderId=\"2\" xfId=\"1\"/></cellXfs><dxfs><dxf/><dxf><font><strike/></font></dxf></dxfs></styleSheet>";

    private const string Struck = "<r><t>cle</t></r><r><rPr><strike/></rPr><t>ar</t></r>";

    [Theory]
    [InlineData("<c s=\"1\" t=\"inlineStr\"><is><t>clear</t></is></c>", "")]
    [InlineData("<c s=\"2\" t=\"inlineStr\"><is><t>clear</t></is></c>", "")]
    [InlineData("<c s=\"3\" t=\"inlineStr\"><is><t>clear</t></is></c>", "")]
    [InlineData($"<c t=\"inlineStr\"><is>{Struck}</is></c>", "")]
    [InlineData("<c t=\"s\"><v>0</v></c>", "")]
    [InlineData("<c t=\"inlineStr\"><is><t>clear</t></is></c>", "s=\"1\" customFormat=\"1\"")]
    public void A_struck_out_answer_is_an_error_at_its_cell(string cell, string row)
    {
        var read = new ReadWorkbook(
            new XlsxFile { Styles = Styles, SharedStrings = [Struck] }.Sheet(
                "Rope bridges",
                Row("id", "cover-cut", "serial")
                    + Row("B-1")
                        .Replace("<row>", $"<row {row}>", StringComparison.Ordinal)
                        .Replace("</row>", cell + "</row>", StringComparison.Ordinal)
                    + Row("B-2", "clear")
            )
        );
        var at = row.Length > 0 ? "A2" : "B2";
        Assert.Equal([$"INT064 {Item}{at}"], read.Places);
        Assert.Equal("/items/0/" + at, read.Content.Findings.Single(f => f.Code is "INT064").Path);
    }

    [Theory]
    [InlineData("<c s=\"4\" t=\"inlineStr\"><is><t>clear</t></is></c>")]
    [InlineData("<c s=\"9\" t=\"inlineStr\"><is><t>clear</t></is></c>")]
    [InlineData("<c t=\"inlineStr\"><is><r><rPr><strike val=\"false\"/></rPr><t>clear</t></r></is></c>")]
    [InlineData("<c t=\"inlineStr\"><is><r><t>clear</t></r><r><rPr><strike/></rPr><t> </t></r></is></c>")]
    [InlineData("<c s=\"1\"/>")]
    public void What_no_line_goes_through_is_not_struck_out(string cell)
    {
        var read = new ReadWorkbook(new XlsxFile { Styles = Styles }.Sheet("Rope bridges", Row("id", "cover-cut") + Row("B-1", cell)));
        Assert.Empty(read.Places);
    }

    [Fact]
    public void A_row_struck_out_is_one_error_and_a_column_or_heading_struck_out_one_too()
    {
        static string Cell(string text, int style) => $"<c s=\"{style}\" t=\"inlineStr\"><is><t>{text}</t></is></c>";
        var row = new ReadWorkbook(
            new XlsxFile { Styles = Styles }.Sheet(
                "Rope bridges",
                Row("id", "cover-cut", "serial") + Row(Cell("B-1", 1), Cell("clear", 1), Cell("7", 1))
            )
        );
        Assert.Equal([$"INT064 {Item}A2"], row.Places);
        Assert.EndsWith(
            "so are 2 more cells of the row",
            row.Content.Findings.Single(f => f.Code is "INT064").Message.Text,
            StringComparison.Ordinal
        );
        var heading = new ReadWorkbook(
            new XlsxFile { Styles = Styles }.Sheet("Rope bridges", Row("id", Cell("cover-cut", 1)) + Row("B-1", "clear"))
        );
        Assert.Equal([$"INT064 {Item}B1"], heading.Places);
        var column = new ReadWorkbook(
            new XlsxFile { Styles = Styles }.SheetPart(
                "Rope bridges",
                $"<worksheet xmlns=\"{Main}\"><cols><col min=\"2\" max=\"2\" "
                    + $"style=\"1\"/></cols><sheetData>{Row("id", "cover-cut")}{Row("B-1", "clear")}</sheetData></worksheet>"
            )
        );
        Assert.Equal([$"INT064 {Item}B1", $"INT064 {Item}B2"], column.Places);
        var visit = new ReadWorkbook(
            new XlsxFile { Styles = Styles }.Sheet("Visit", Row("particular", "value") + Row("reference", Cell("V-1", 1)))
        );
        Assert.Equal(["INT064 kit.xlsx!Visit!B2"], visit.Places);
    }

    [Fact]
    public void A_conditional_format_that_strikes_out_is_said()
    {
        static XlsxFile Sheet(string rule) =>
            new XlsxFile { Styles = Styles }.SheetPart(
                "Rope bridges",
                $"<worksheet xmlns=\"{Main}\"><sheetData>{Row("id")}{Row("B-1")}</sheetData><conditionalFormatting "
                    + $"sqref=\"B2:B9\">{rule}</conditionalFormatting></worksheet>"
            );
        Assert.Equal([$"INT074 {Item}B2"], new ReadWorkbook(Sheet("<cfRule dxfId=\"1\"/>")).Places);
        Assert.Equal([$"INT074 {Item}B2"], new ReadWorkbook(Sheet("<cfRule><dxf><font><strike/></font></dxf></cfRule>")).Places);
        Assert.Empty(new ReadWorkbook(Sheet("<cfRule dxfId=\"0\"/>")).Places);
    }

    [Theory]
    [InlineData("B2", "INT065", "/items/0/B2")]
    [InlineData("A2", "INT065", "/items/0/A2")]
    [InlineData("C2", "INT065", "/items/0/C2")]
    [InlineData("D2", "INT065", "/items/0/D2")]
    [InlineData("F2", "INT065", "/items/0/F2")]
    [InlineData("Z2", "INT065", "/items/0/Z2")]
    [InlineData("E2", "INT066", "/Rope bridges/E2")]
    [InlineData("B3", "INT066", "/Rope bridges/B3")]
    [InlineData("B1", "INT066", "/Rope bridges/B1")]
    [InlineData("ZZZZ9", "INT066", "/Rope bridges/A1")]
    [InlineData("", "INT066", "/Rope bridges/A1")]
    public void A_comment_is_an_error_where_an_outcome_hangs_on_the_cell_and_is_said_elsewhere(string cell, string code, string path)
    {
        foreach (var file in new[] { Noted(cell, "CUT 4 mm - WITHDRAW"), Threaded(cell, "CUT 4 mm - WITHDRAW") })
        {
            var finding = Assert.Single(new ReadWorkbook(file).Content.Findings, f => f.Code is "INT065" or "INT066");
            Assert.Equal((code, path), (finding.Code, finding.Path));
            Assert.Contains("'CUT 4 mm - WITHDRAW'", finding.Message.Text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_comment_that_cannot_be_told_from_others_by_its_author_is_one_all_the_same()
    {
        var help = HeadingStyle.NoteOn(
            ExamDocs
                .Intake.Workbook.Shape.WorkbookShape.Items(Catalogue.Find("rope-bridge")!, lastTime: false)
                .Columns.Single(c => c.Heading is "cover-cut")
        );
        Assert.Empty(new ReadWorkbook(Noted("B1", help)).Places);
        Assert.Empty(new ReadWorkbook(Noted("B1", help.Replace(" ", "\r\n", StringComparison.Ordinal))).Places);
        Assert.Equal([$"INT066 {Item}B1"], new ReadWorkbook(Noted("B1", help + " All are cut.")).Places);
        Assert.Equal([$"INT065 {Item}B2"], new ReadWorkbook(Noted("B2", help)).Places);
    }

    /// <summary>A spreadsheet program writes beside a note's text where its box lies: numbers, and nothing that anybody said.</summary>
    [Fact]
    public void Where_a_note_lies_is_no_part_of_it()
    {
        const string Place =
            "</text><AlternateContent><Choice><commentPr><anchor><from><col>1</col><row>-1</row></from><to/></anchor></commentPr>"
            + "</Choice></AlternateContent>";
        var file = Kit()
            .Link(0, ("comments", "../comments1.xml"))
            .Part("xl/comments1.xml", Comments("B2", "no longer so").Replace("</text>", Place, StringComparison.Ordinal));
        Assert.Contains("'no longer so'", Assert.Single(new ReadWorkbook(file).Content.Findings, f => f.Code is "INT065").Message.Text);
    }

    [Fact]
    public void The_visit_s_particulars_bear_no_comment()
    {
        var file = new XlsxFile()
            .Sheet("Visit", Row("particular", "value") + Row("reference", "V-1") + Row("examined on", "2026-05-11"))
            .Link(0, ("comments", "../comments1.xml"))
            .Part("xl/comments1.xml", Comments("B3", "was the 12th"));
        Assert.Equal(["INT065 kit.xlsx!Visit!B3"], new ReadWorkbook(file).Places);
    }

    /// <summary>A text box, a shape without text, a picture behind the cells, a control, a header, a hidden column.</summary>
    [Fact]
    public void What_is_drawn_printed_or_hidden_is_said()
    {
        const string drawing =
            "<wsDr "
            + "xmlns:a=\"a\"><twoCellAnchor><from><col>2</col><row>4</row></from><sp><a:t>CUT</a:t><a:t>withdraw</a:t></sp></twoCellAnchor>"
            + "<oneCellAnchor><from><col>0</col><row>0</row></from><pic/></oneCellAnchor></wsDr>";
        var sheet =
            $"<worksheet xmlns=\"{Main}\"><cols><col min=\"2\" max=\"3\" "
            + $"hidden=\"1\"/></cols><sheetData>{Row("id")}{Row("B-1")}</sheetData>"
            + "<headerFooter><oddHeader>&amp;L&amp;\"Arial,Bold\"&amp;14Rope bridges</oddHeader><oddFooter>&amp;RPage &amp;P: "
            + "all withdrawn</oddFooter></headerFooter><picture/></worksheet>";
        var read = new ReadWorkbook(
            new XlsxFile()
                .SheetPart("Rope bridges", sheet)
                .Link(0, ("drawing", "../drawings/drawing1.xml"), ("vmlDrawing", "../drawings/v.vml"))
                .Part("xl/drawings/drawing1.xml", drawing)
                .Part(
                    "xl/drawings/v.vml",
                    "<xml xmlns:x=\"x\"><x:ClientData ObjectType=\"Note\"/><x:ClientData ObjectType=\"Button\"/></xml>"
                )
        );
        Assert.Equal([$"INT069 {Item}C5", $"INT070 {Item}A1", $"INT071 {Item}A1", $"INT034 {Item}B1"], read.Places);
        Assert.Equal("a text drawn over the sheet says 'CUT withdraw'", read.Content.Findings.Single(f => f.Code is "INT069").Message.Text);
        Assert.EndsWith(": 3", read.Content.Findings.Single(f => f.Code is "INT070").Message.Text, StringComparison.Ordinal);
        Assert.Contains(
            "'Page : all withdrawn'",
            read.Content.Findings.Single(f => f.Code is "INT071").Message.Text,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void An_empty_sheet_with_a_text_over_it_is_said_and_so_is_a_sheet_made_of_a_chart()
    {
        var read = new ReadWorkbook(
            new XlsxFile()
                .Sheet("Notes", "")
                .Link(0, ("drawing", "../drawings/drawing1.xml"), ("comments", "../comments1.xml"))
                .Part("xl/drawings/drawing1.xml", "<wsDr xmlns:a=\"a\"><absoluteAnchor><a:t>B-1 cut</a:t></absoluteAnchor></wsDr>")
                .Part("xl/comments1.xml", Comments("A1", "see the yard book"))
        );
        Assert.Equal(["INT066 kit.xlsx!Notes!A1", "INT069 kit.xlsx!Notes!A1"], read.Places);
        var chart = new Annotating.ZipParts(new XlsxFile().Sheet("Rope bridges", Row("id")).Sheet("Plot", "").Stream().ToArray())
            .Replace(
                "xl/_rels/workbook.xml.rels",
                "relationships/worksheet\" Target=\"worksheets/sheet1.xml",
                "relationships/chartsheet\" Target=\"worksheets/sheet1.xml"
            )
            .File();
        Assert.Equal(
            "INT020",
            Assert.Single(WorkbookReader.Read(new MemoryStream(chart), "kit.xlsx").Findings, f => f.Severity is Severity.Error).Code
        );
    }

    /// <summary>Named as one of ours, hidden or not: its rows are read where its headings are known, and are an error where not.</summary>
    [Theory]
    [InlineData("Words", "state=\"hidden\"")]
    [InlineData("words", "state=\"veryHidden\"")]
    [InlineData("How to fill this in", "")]
    [InlineData("Sheet1", "state=\"veryHidden\"")]
    [InlineData("Rope bridges (2)", "")]
    public void A_sheet_is_known_by_its_headings_where_its_name_is_not_one_to_read(string name, string state)
    {
        var read = new ReadWorkbook(
            new XlsxFile().Sheet(
                name,
                Row("id", "description", "cover-cut", "core-visible", "heat", "end-stitch") + Row("B-1", "bridge", "defect"),
                state
            )
        );
        Assert.Equal(ObservedState.Defect, Assert.Single(Assert.Single(read.Record.Examinations).Observations).State);
        Assert.Equal("rope-bridge", read.Record.Items[0].Category);
        Assert.Contains($"INT068 kit.xlsx!{name}!A1", read.Places);
        Assert.Equal(state.Length > 0, read.Places.Contains($"INT034 kit.xlsx!{name}!A1"));
    }

    [Theory]
    [InlineData("Words", "state=\"hidden\"", "A1")]
    [InlineData("Words", "state=\"veryHidden\"", "A1")]
    [InlineData("How to fill this in", "", "A1")]
    public void Anything_else_on_a_sheet_of_ours_is_an_error_at_its_cell(string name, string state, string cell)
    {
        var read = new ReadWorkbook(new XlsxFile().Sheet(name, Row("B-1", "defect") + Row("B-2", "cut 4 mm"), state));
        Assert.Equal([$"INT067 kit.xlsx!{name}!{cell}"], read.Places);
    }

    [Theory]
    [InlineData("2,1,cut: withdraw RB-1", "A2")]
    [InlineData("9,2,RB-1 defect: cut", "B9")]
    [InlineData("20,2,", "A20")]
    [InlineData("3,3,RB-1 is cut", "C3")]
    [InlineData("60,2,defect", "B60")]
    public void A_line_typed_into_the_guide_is_an_error_at_its_cell(string typed, string cell)
    {
        using var workbook = new ClosedXML.Excel.XLWorkbook(RoundTripTests.Written(null, Catalogue.All, forNextVisit: false));
        var parts = typed.Split(',');
        workbook
            .Worksheet("How to fill this in")
            .Cell(
                int.Parse(parts[0], System.Globalization.CultureInfo.InvariantCulture),
                int.Parse(parts[1], System.Globalization.CultureInfo.InvariantCulture)
            )
            .SetValue<string>(parts[2]);
        using var saved = new MemoryStream();
        workbook.SaveAs(saved);
        saved.Position = 0;
        var content = WorkbookReader.Read(saved, "kit.xlsx");
        Assert.Equal($"How to fill this in!{cell}", content.Cells[Assert.Single(content.Findings).Path]);
        Assert.Equal("INT067", content.Findings[0].Code);
    }

    /// <summary>The answers of last time are repeated in grey from the sheets of earlier examinations, and compared with them.</summary>
    [Theory]
    [InlineData("cut, withdraw")]
    [InlineData("2026-05-11 clear: cut 4 mm at the eye")]
    [InlineData("2026-05-11 defect")]
    public void What_is_typed_into_a_grey_column_is_an_error_at_its_cell(string typed)
    {
        using var workbook = new ClosedXML.Excel.XLWorkbook(
            RoundTripTests.Written(RoundTripTests.Example(), Catalogue.All, forNextVisit: true)
        );
        var sheet = workbook.Worksheet("Rope bridges");
        var column = sheet.Row(1).CellsUsed().Single(c => c.GetString() is "cover-cut last time").Address.ColumnNumber;
        Assert.NotEqual("", sheet.Cell(2, column).GetString());
        sheet.Cell(2, column).SetValue<string>(typed);
        using var saved = new MemoryStream();
        workbook.SaveAs(saved);
        saved.Position = 0;
        var content = WorkbookReader.Read(saved, "kit.xlsx");
        var finding = Assert.Single(content.Findings);
        Assert.Equal(("INT076", $"Rope bridges!{sheet.Cell(2, column).Address}"), (finding.Code, content.Cells[finding.Path]));
        Assert.StartsWith("/items/", finding.Path, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cell_merged_over_items_is_an_error_at_each_that_it_hides()
    {
        var read = new ReadWorkbook(
            new XlsxFile().SheetPart(
                "Rope bridges",
                $"<worksheet xmlns=\"{Main}\"><sheetData>{Row("id", "pinch")}{Row("B-1", "defect")}{Row("B-2")}{Row("B-3")}"
                    + "</sheetData><mergeCells><mergeCell ref=\"B2:B4\"/><mergeCell ref=\"D2:E2\"/></mergeCells></worksheet>"
            )
        );
        Assert.Equal([$"INT075 {Item}B3", $"INT075 {Item}B4", $"INT055 {Item}B2"], read.Places);
        Assert.Equal("/items/2/B4", read.Content.Findings.Last(f => f.Code is "INT075").Path);
    }

    private static XlsxFile Kit() =>
        new XlsxFile().Sheet(
            "Rope bridges",
            Row("id", "cover-cut", "conclusion", "examined on", "description", "maker")
                + Row("B-1", "clear", "fit", "2026-05-11", "bridge", "Tarn")
        );

    private static XlsxFile Noted(string cell, string text) =>
        Kit().Link(0, ("comments", "../comments1.xml")).Part("xl/comments1.xml", Comments(cell, text));

    private static XlsxFile Threaded(string cell, string text) =>
        Kit()
            .Link(0, ("threadedComment", "../threadedComments/t1.xml"))
            .Part(
                "xl/threadedComments/t1.xml",
                $"<ThreadedComments><threadedComment ref=\"{cell}\"><text>{text}</text></threadedComment></ThreadedComments>"
            );

    private static string Comments(string cell, string text) =>
        $"<comments xmlns=\"{Main}\"><authors><author>ExamDocs</author></authors><commentList>"
        + $"<comment ref=\"{cell}\" "
        + $"authorId=\"0\"><text><r><t>{System.Security.SecurityElement.Escape(text)}</t></r></text></comment></commentList></comments>";
}
