namespace ExamDocs.Intake.Tests.Annotating;

/// <summary>The comparison on which the other tests rest notices what may go wrong: one fault at a time, planted.</summary>
public sealed class CopyDifferenceTests
{
    private static readonly byte[] Before = OfficeWorkbook.Make();

    private static readonly Annotated Found = new Annotated().At(OfficeWorkbook.Sheet, "D2").At(OfficeWorkbook.Sheet, "H4");

    [Fact]
    public void A_lost_note() => Notices("the note on A2 is lost", p => p.Replace("xl/comments1.xml", "ref=\"A2\"", "ref=\"A3\""));

    [Fact]
    public void Another_word_in_a_note() =>
        Notices("the note on A2 says something else", p => p.Replace("xl/comments1.xml", "photo 4", "photo 5"));

    [Fact]
    public void Another_value() => Notices("sheet1.xml is altered", p => p.Replace("xl/worksheets/sheet1.xml", "44531", "44532"));

    [Fact]
    public void Another_result_of_a_formula() =>
        Notices("sheet1.xml is altered", p => p.Replace("xl/worksheets/sheet1.xml", "BRIDGE, SHORT", "BRIDGE"));

    [Fact]
    public void A_formula_that_is_still_there() =>
        Notices("sheet1.xml is altered", p =>
            p.Replace("xl/worksheets/sheet1.xml", "<v>BRIDGE, SHORT</v>", "<f>UPPER(B2)</f><v>BRIDGE, SHORT</v>")
        );

    [Fact]
    public void A_formula_on_a_sheet_without_marks() =>
        Notices("sheet2.xml is altered", p => p.Replace("xl/worksheets/sheet2.xml", "<v>50</v>", "<f>A1*2</f><v>50</v>"));

    [Fact]
    public void A_lost_condition() =>
        Notices("sheet1.xml is altered", p => p.Replace("xl/worksheets/sheet1.xml", "operator=\"equal\"", "operator=\"notEqual\""));

    [Fact]
    public void A_row_no_longer_hidden() =>
        Notices("sheet1.xml is altered", p => p.Replace("xl/worksheets/sheet1.xml", "hidden=\"1\"", "hidden=\"0\""));

    [Fact]
    public void A_lost_blank() => Notices("sheet1.xml is altered", p => p.Replace("xl/worksheets/sheet1.xml", " BRG-9 ", "BRG-9 "));

    [Fact]
    public void A_number_format() =>
        Notices("D2 has lost its style", p =>
            p.Replace(
                "xl/styles.xml",
                "<xf numFmtId=\"164\" fontId=\"0\" borderId=\"0\" xfId=\"0\"",
                "<xf numFmtId=\"0\" fontId=\"0\" borderId=\"0\" xfId=\"0\""
            )
        );

    [Fact]
    public void A_style_of_another_cell() =>
        Notices("cellXfs: xf 1 is lost or altered", p =>
            p.Replace("xl/styles.xml", "<xf numFmtId=\"0\" fontId=\"1\" fillId=\"2\"", "<xf numFmtId=\"0\" fontId=\"1\" fillId=\"1\"")
        );

    [Fact]
    public void A_lost_link() =>
        Notices("sheet1.xml.rels", p =>
            p.Replace("xl/worksheets/_rels/sheet1.xml.rels", "../drawings/drawing1.xml", "../drawings/drawing2.xml")
        );

    [Fact]
    public void A_lost_name() => Notices("workbook.xml is altered", p => p.Replace("xl/workbook.xml", "name=\"Loads\"", "name=\"Load\""));

    [Fact]
    public void A_lost_part() => Notices("custom/unknown.bin is lost", p => p.Without("custom/unknown.bin"));

    [Fact]
    public void An_altered_part() =>
        Notices("xl/charts/chart1.xml is altered", p => p.Replace("xl/charts/chart1.xml", "clustered", "stacked"));

    [Fact]
    public void A_box_moved() =>
        Notices("vmlDrawing1.vml is altered", p => p.Replace("xl/drawings/vmlDrawing1.vml", "width:100pt", "width:101pt"));

    private static void Notices(string what, Func<ZipParts, ZipParts> spoil)
    {
        var after = Found.Copy(Before);
        Assert.Empty(CopyDifference.Of(Before, after, Found.Cells));
        Assert.Contains(CopyDifference.Of(Before, spoil(new ZipParts(after)).File(), Found.Cells), d =>
            d.Contains(what, StringComparison.Ordinal)
        );
    }
}
