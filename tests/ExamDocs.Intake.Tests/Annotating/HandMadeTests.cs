using ExamDocs.Core.Findings;
using ExamDocs.Intake.Annotating;
using ExamDocs.Intake.Tests.Workbook;
using ExamDocs.Intake.Workbook;
using static ExamDocs.Intake.Tests.Workbook.XlsxFile;

namespace ExamDocs.Intake.Tests.Annotating;

/// <summary>Workbooks as sparing or odd writers make them.</summary>
public sealed class HandMadeTests
{
    private const string Sheet = "Rope bridges";
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    [Fact]
    public void Rows_and_cells_without_addresses_are_counted()
    {
        var before = new XlsxFile()
            .Sheet(Sheet, Row("id", "description") + Row("B-1", "", "x") + "<row r=\"9\"/>" + Row("B-2"))
            .Stream()
            .ToArray();
        var found = new Annotated()
            .At(Sheet, "B1")
            .At(Sheet, "C2")
            .At(Sheet, "E2")
            .At(Sheet, "A5")
            .At(Sheet, "B9")
            .At(Sheet, "A10")
            .At(Sheet, "B10")
            .At(Sheet, "A12");
        var after = found.Copy(before);
        Assert.Empty(CopyDifference.Of(before, after, found.Cells));
        Same(before, after);
        var styled = new ZipParts(after)
            .Xml("xl/worksheets/sheet0.xml")
            .Descendants()
            .Count(c => c.Name.LocalName is "c" && c.Attribute("s") is not null);
        Assert.Equal(8, styled);
    }

    [Fact]
    public void A_workbook_without_styles_gets_them()
    {
        var before = new ZipParts(new XlsxFile().Sheet(Sheet, Row("id") + Row("B-1")).Stream().ToArray())
            .Without("xl/styles.xml")
            .Replace(
                "xl/_rels/workbook.xml.rels",
                "<Relationship Id=\"f\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/styles\" "
                    + "Target=\"/xl/styles.xml\"/>",
                ""
            )
            .File();
        var found = new Annotated().At(Sheet, "A2").At(Sheet, "B2", Severity.Warning);
        var after = found.Copy(before);
        Assert.Empty(CopyDifference.Of(before, after, found.Cells));
        Same(before, after);
        var styles = new ZipParts(after).Xml("xl/styles1.xml").Root!;
        Assert.Equal(["fonts", "fills", "borders", "cellXfs"], styles.Elements().Select(e => e.Name.LocalName));
        Assert.All(styles.Elements().Where(e => e.Attribute("count") is not null), e =>
            Assert.Equal(e.Elements().Count(), (int)e.Attribute("count")!)
        );
        Assert.Equal("none", (string?)styles.Descendants().First(e => e.Name.LocalName is "patternFill").Attribute("patternType"));
    }

    [Theory]
    [InlineData("<sheetData/>")]
    [InlineData("<sheetData></sheetData>")]
    [InlineData("<dimension ref=\"A1\"/><sheetData><row r=\"7\"/></sheetData>")]
    public void A_sheet_with_next_to_nothing_on_it(string content)
    {
        var before = new XlsxFile().SheetPart("Diary", $"<worksheet xmlns=\"{Main}\">{content}</worksheet>").Stream().ToArray();
        var found = new Annotated().At("Diary", "C3").At("Diary", "B3");
        var after = found.Copy(before);
        Assert.Empty(CopyDifference.Of(before, after, found.Cells));
        Assert.Equal(
            ["B3", "C3"],
            new ZipParts(after)
                .Xml("xl/worksheets/sheet0.xml")
                .Descendants()
                .Where(c => c.Name.LocalName is "c")
                .Select(c => (string)c.Attribute("r")!)
        );
    }

    [Fact]
    public void The_strict_dialect_is_answered_in_strict()
    {
        var before = Strict(new XlsxFile().Sheet(Sheet, Row("id") + Row("B-1")).Stream().ToArray());
        var found = new Annotated().At(Sheet, "A2");
        var after = found.Copy(before);
        Assert.Empty(CopyDifference.Of(before, after, found.Cells));
        Same(before, after);
        var parts = new ZipParts(after);
        Assert.All(
            parts.Names.Where(n => n.EndsWith(".xml", StringComparison.Ordinal) && n.StartsWith("xl/", StringComparison.Ordinal)),
            n => Assert.Equal("http://purl.oclc.org/ooxml/spreadsheetml/main", parts.Xml(n).Root!.Name.NamespaceName)
        );
    }

    [Fact]
    public void Prefixes_of_the_workbook_are_used()
    {
        var xml =
            $"<x:worksheet xmlns:x=\"{Main}\"><x:sheetData><x:row r=\"1\"><x:c r=\"A1\" "
            + "t=\"inlineStr\"><x:is><x:t>id</x:t></x:is></x:c></x:row></x:sheetData></x:worksheet>";
        var before = new XlsxFile().SheetPart(Sheet, xml).Stream().ToArray();
        var found = new Annotated().At(Sheet, "B1").At(Sheet, "A3");
        var after = found.Copy(before);
        Assert.Empty(CopyDifference.Of(before, after, found.Cells));
        Same(before, after);
    }

    [Fact]
    public void The_notes_drawing_is_named_where_the_format_wants_it()
    {
        var xml = $"<worksheet xmlns=\"{Main}\"><sheetData/><pageMargins/><tableParts count=\"0\"/><extLst/></worksheet>";
        var after = new Annotated().At(Sheet, "A1").Copy(new XlsxFile().SheetPart(Sheet, xml).Stream().ToArray());
        Assert.Equal(
            ["sheetData", "pageMargins", "legacyDrawing", "tableParts", "extLst"],
            new ZipParts(after).Xml("xl/worksheets/sheet0.xml").Root!.Elements().Select(e => e.Name.LocalName)
        );
    }

    [Fact]
    public void A_note_is_kept_within_what_a_cell_may_hold()
    {
        var found = new Annotated();
        for (var n = 0; n < 40; n++)
            found.At(Sheet, "A1", message: $"{n} " + string.Concat(Enumerable.Repeat("\U0001F333", 600)));
        var after = found.Copy(new XlsxFile().Sheet(Sheet, Row("id")).Stream().ToArray());
        var text = new ZipParts(after).AllNotes()[Sheet + "!A1"].Text;
        Assert.InRange(text.Length, 31_000, 32_000);
        Assert.Matches("The sheet of findings says the rest\\.\n\\(ExamDocs [0-9A-F]{8}\\)$", text);
        Assert.Equal(42, FindingsList.Of(after, "Findings").Rows.Count);
    }

    [Fact]
    public void No_findings_are_said_to_be_none_with_the_caution()
    {
        var before = OfficeWorkbook.Make();
        var after = new Annotated().Copy(before);
        Assert.Empty(CopyDifference.Of(before, after, []));
        var rows = FindingsList.Of(after, "Findings").Rows;
        Assert.Contains("come first", rows[0][0], StringComparison.Ordinal);
        Assert.Equal(["No findings."], rows[2]);
        Assert.Empty(OpenXmlErrors.Of(after).Except(OpenXmlErrors.Of(before), StringComparer.Ordinal));
    }

    [Fact]
    public void A_long_finding_has_room_for_all_its_lines()
    {
        var after = new Annotated()
            .At(Sheet, "A1")
            .At(Sheet, "A1", message: new string('w', 300))
            .Copy(new XlsxFile().Sheet(Sheet, Row("id")).Stream().ToArray());
        var heights = new ZipParts(after)
            .Xml("xl/worksheets/findings1.xml")
            .Descendants()
            .Where(r => r.Name.LocalName is "row")
            .Skip(2)
            .Select(r => (int)r.Attribute("ht")!)
            .ToList();
        Assert.Equal([16, 91], heights);
    }

    [Fact]
    public void A_sheet_named_so_already_is_not_taken_over()
    {
        var before = new XlsxFile().Sheet("findings", Row("mine")).Sheet("Findings 2", Row("mine too")).Stream().ToArray();
        var found = new Annotated().At("findings", "A1");
        var after = found.Copy(before);
        Assert.Empty(CopyDifference.Of(before, after, found.Cells));
        Assert.Equal(["findings", "Findings 2", "Findings 3"], new ZipParts(after).SheetNames());
    }

    [Theory]
    [InlineData("A0")]
    [InlineData("XFE1")]
    [InlineData("A1048577")]
    [InlineData("12")]
    public void A_place_that_is_no_cell_is_listed_without_a_mark(string cell)
    {
        var before = new XlsxFile().Sheet(Sheet, Row("id")).Stream().ToArray();
        var after = new Annotated().At(Sheet, cell).At("Gone", "A1").Copy(before);
        Assert.Empty(CopyDifference.Of(before, after, []));
        Assert.Empty(FindingsList.Of(after, "Findings").Links);
    }

    [Fact]
    public void Equal_content_gives_equal_bytes()
    {
        var before = OfficeWorkbook.Make();
        Assert.Equal(new Annotated().At(Sheet, "A2").Copy(before), new Annotated().At(Sheet, "A2").Copy(before));
    }

    [Fact]
    public void What_is_no_workbook_is_refused_in_a_sentence()
    {
        using var target = new MemoryStream();
        Assert.Equal("The file is empty.", AnnotatedWorkbook.Write(new MemoryStream(), target, [], SourceMap.ForJson("x")));
        var shared = new XlsxFile().Sheet("A", Row("id")).Sheet("B", Row("id")).Stream().ToArray();
        var one = new ZipParts(shared).Replace("xl/_rels/workbook.xml.rels", "worksheets/sheet1.xml", "worksheets/sheet0.xml").File();
        var found = new Annotated().At("A", "A1").At("B", "A1");
        Assert.Contains(
            "share a part",
            AnnotatedWorkbook.Write(new MemoryStream(one), target, found.Findings, found.Places),
            StringComparison.Ordinal
        );
        var torn = new ZipParts(OfficeWorkbook.Make()).Replace("xl/comments1.xml", "</commentList>", "").File();
        var noted = new Annotated().At(Sheet, "A2");
        Assert.Contains(
            "damaged",
            AnnotatedWorkbook.Write(new MemoryStream(torn), target, noted.Findings, noted.Places),
            StringComparison.Ordinal
        );
    }

    private static void Same(byte[] before, byte[] after)
    {
        var (was, now) = (
            WorkbookReader.Read(new MemoryStream(before), "kit.xlsx"),
            WorkbookReader.Read(new MemoryStream(after), "kit.xlsx")
        );
        Assert.Null(now.Unreadable);
        Assert.Equal(TreeText.Of(was.Root!), TreeText.Of(now.Root!));
        Assert.Equal(Annotated.WithoutFormulas(was.Findings), now.Findings);
    }

    private static byte[] Strict(byte[] workbook)
    {
        var parts = new ZipParts(workbook);
        foreach (var name in parts.Names.Where(n => !n.StartsWith('[')).ToList())
        {
            var text = System
                .Text.Encoding.UTF8.GetString(parts.Bytes(name))
                .Replace(Main, "http://purl.oclc.org/ooxml/spreadsheetml/main", StringComparison.Ordinal)
                .Replace(
                    "http://schemas.openxmlformats.org/officeDocument/2006/relationships",
                    "http://purl.oclc.org/ooxml/officeDocument/relationships",
                    StringComparison.Ordinal
                );
            parts.Set(name, System.Text.Encoding.UTF8.GetBytes(text));
        }
        return parts.File();
    }
}
