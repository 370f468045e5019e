using System.IO.Compression;
using System.Text;

namespace ExamDocs.Intake.Tests.Annotating;

/// <summary>
/// A workbook put together by hand as the most used spreadsheet program writes them: shared texts, two notes of which
/// one stands for a threaded comment, a chart, an image, a table, lists and colours by condition, a chain of
/// calculation, names, the 1904 calendar, printer settings, and a part nobody knows.
/// </summary>
internal static class OfficeWorkbook
{
    public const string Sheet = "Rope bridges";

    /// <summary>The sheet's name has a quote in it, which a link must double.</summary>
    public const string OtherSheet = "Bob's list";

    public const string FirstNote = "Checked on the bench.\nSee photo 4.";

    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Links = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private const string Office = "application/vnd.openxmlformats-officedocument.";
    private const string Head = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\r\n";

    private static readonly string[] Texts =
    [
        "id",
        "description",
        "serial",
        "manufactured",
        "cover-cut",
        "conclusion",
        "BRG-1",
        "bridge, short",
        "claer",
        "fit",
        "load",
        "kN",
    ];

    private static readonly byte[] Png = Convert.FromBase64String(
        "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg=="
    );

    public static byte[] Make()
    {
        var file = new MemoryStream();
        using (var zip = new ZipArchive(file, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, content) in Parts())
                Write(zip, name, Encoding.UTF8.GetBytes(content));
            Write(zip, "xl/media/image1.png", Png);
            Write(zip, "xl/printerSettings/printerSettings1.bin", [0, 1, 2, 0xFF, 0xFE]);
            Write(zip, "custom/unknown.bin", [9, 8, 7]);
        }
        return file.ToArray();
    }

    private static void Write(ZipArchive zip, string name, byte[] content)
    {
        using var part = zip.CreateEntry(name).Open();
        part.Write(content);
    }

    private static IEnumerable<(string Name, string Content)> Parts() =>
        [
            ("[Content_Types].xml", Types()),
            (
                "_rels/.rels",
                Relations(
                    ("officeDocument", "xl/workbook.xml"),
                    ("metadata/core-properties", "docProps/core.xml"),
                    ("extended-properties", "docProps/app.xml")
                )
            ),
            (
                "docProps/core.xml",
                Head
                    + "<cp:coreProperties xmlns:cp=\"http://schemas.openxmlformats.org/package/2006/metadata/core-properties\" "
                    + "xmlns:dc=\"http://purl.org/dc/elements/1.1/\"><dc:creator>A. Elm</dc:creator></cp:coreProperties>"
            ),
            (
                "docProps/app.xml",
                Head
                    + "<Properties xmlns=\"http://schemas.openxmlformats.org/officeDocument/2006/extended-properties\">"
                    + "<Application>Spreadsheet</Application></Properties>"
            ),
            (
                "xl/workbook.xml",
                Head
                    + $"<workbook xmlns=\"{Main}\" xmlns:r=\"{Links}\"><workbookPr date1904=\"1\" "
                    + "defaultThemeVersion=\"124226\"/><bookViews><workbookView xWindow=\"0\" yWindow=\"0\" "
                    + "windowWidth=\"16000\" windowHeight=\"9000\"/></bookViews>"
                    + $"<sheets><sheet name=\"{Sheet}\" sheetId=\"3\" r:id=\"rId1\"/><sheet name=\"{OtherSheet}\" sheetId=\"7\" "
                    + "r:id=\"rId2\"/></sheets>"
                    + "<definedNames><definedName name=\"_xlnm.Print_Titles\" localSheetId=\"0\">'Rope "
                    + "bridges'!$1:$1</definedName><definedName name=\"Loads\">'Bob''s "
                    + "list'!$A$1:$A$3</definedName></definedNames><calcPr calcId=\"125725\"/></workbook>"
            ),
            (
                "xl/_rels/workbook.xml.rels",
                Relations(
                    ("worksheet", "worksheets/sheet1.xml"),
                    ("worksheet", "worksheets/sheet2.xml"),
                    ("styles", "styles.xml"),
                    ("sharedStrings", "sharedStrings.xml"),
                    ("calcChain", "calcChain.xml"),
                    ("http://schemas.microsoft.com/office/2017/10/relationships/person", "persons/person.xml")
                )
            ),
            (
                "xl/sharedStrings.xml",
                Head
                    + $"<sst xmlns=\"{Main}\" count=\"{Texts.Length}\" "
                    + $"uniqueCount=\"{Texts.Length}\">{string.Concat(Texts.Select(t => $"<si><t>{t}</t></si>"))}</sst>"
            ),
            ("xl/calcChain.xml", Head + $"<calcChain xmlns=\"{Main}\"><c r=\"A3\" i=\"7\"/><c r=\"B3\" i=\"7\"/></calcChain>"),
            (
                "xl/persons/person.xml",
                Head
                    + "<personList xmlns=\"http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments\"><person "
                    + "displayName=\"A. Elm\" id=\"{11111111-1111-1111-1111-111111111111}\" userId=\"a\" "
                    + "providerId=\"None\"/></personList>"
            ),
            ("xl/styles.xml", OfficeParts.Styles(Head, Main)),
            ("xl/worksheets/sheet1.xml", OfficeParts.FirstSheet(Head, Main, Links)),
            (
                "xl/worksheets/_rels/sheet1.xml.rels",
                Relations(
                    ("printerSettings", "../printerSettings/printerSettings1.bin"),
                    ("drawing", "../drawings/drawing1.xml"),
                    ("vmlDrawing", "../drawings/vmlDrawing1.vml"),
                    ("table", "../tables/table1.xml"),
                    ("comments", "../comments1.xml"),
                    (
                        "http://schemas.microsoft.com/office/2017/10/relationships/threadedComment",
                        "../threadedComments/threadedComment1.xml"
                    )
                )
            ),
            ("xl/worksheets/sheet2.xml", OfficeParts.SecondSheet(Head, Main)),
            ("xl/comments1.xml", OfficeParts.Notes(Head, Main)),
            (
                "xl/threadedComments/threadedComment1.xml",
                Head
                    + "<ThreadedComments "
                    + "xmlns=\"http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments\"><threadedComment "
                    + "ref=\"B2\" dT=\"2026-05-11T09:00:00.00\" personId=\"{11111111-1111-1111-1111-111111111111}\" "
                    + "id=\"{22222222-2222-2222-2222-222222222222}\"><text>Is this the right "
                    + "one?</text></threadedComment></ThreadedComments>"
            ),
            (
                "xl/tables/table1.xml",
                Head
                    + $"<table xmlns=\"{Main}\" id=\"1\" name=\"Bridges\" displayName=\"Bridges\" ref=\"A1:F3\" "
                    + "totalsRowShown=\"0\"><autoFilter ref=\"A1:F3\"/><tableColumns count=\"6\">"
                    + string.Concat(Texts.Take(6).Select((t, n) => $"<tableColumn id=\"{n + 1}\" name=\"{t}\"/>"))
                    + "</tableColumns></table>"
            ),
            ("xl/drawings/drawing1.xml", OfficeParts.Drawing(Head, Links)),
            ("xl/drawings/_rels/drawing1.xml.rels", Relations(("chart", "../charts/chart1.xml"), ("image", "../media/image1.png"))),
            ("xl/charts/chart1.xml", OfficeParts.Chart(Head)),
            ("xl/drawings/vmlDrawing1.vml", OfficeParts.Boxes()),
        ];

    private static string Types() =>
        Head
        + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
        + "<Default Extension=\"bin\" ContentType=\""
        + Office
        + "spreadsheetml.printerSettings\"/><Default Extension=\"png\" ContentType=\"image/png\"/>"
        + "<Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/><Default "
        + "Extension=\"xml\" ContentType=\"application/xml\"/><Default Extension=\"vml\" ContentType=\""
        + Office
        + "vmlDrawing\"/>"
        + string.Concat(
            new (string Part, string Type)[]
            {
                ("xl/workbook.xml", Office + "spreadsheetml.sheet.main+xml"),
                ("xl/worksheets/sheet1.xml", Office + "spreadsheetml.worksheet+xml"),
                ("xl/worksheets/sheet2.xml", Office + "spreadsheetml.worksheet+xml"),
                ("xl/styles.xml", Office + "spreadsheetml.styles+xml"),
                ("xl/sharedStrings.xml", Office + "spreadsheetml.sharedStrings+xml"),
                ("xl/calcChain.xml", Office + "spreadsheetml.calcChain+xml"),
                ("xl/comments1.xml", Office + "spreadsheetml.comments+xml"),
                ("xl/tables/table1.xml", Office + "spreadsheetml.table+xml"),
                ("xl/drawings/drawing1.xml", Office + "drawing+xml"),
                ("xl/charts/chart1.xml", Office + "drawingml.chart+xml"),
                ("xl/threadedComments/threadedComment1.xml", "application/vnd.ms-excel.threadedcomments+xml"),
                ("xl/persons/person.xml", "application/vnd.ms-excel.person+xml"),
                ("docProps/core.xml", "application/vnd.openxmlformats-package.core-properties+xml"),
                ("docProps/app.xml", Office + "extended-properties+xml"),
            }.Select(o => $"<Override PartName=\"/{o.Part}\" ContentType=\"{o.Type}\"/>")
        )
        + "</Types>";

    private static string Relations(params (string Type, string Target)[] links) =>
        Head
        + "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
        + string.Concat(links.Select((l, n) => $"<Relationship Id=\"rId{n + 1}\" Type=\"{TypeOf(l.Type)}\" Target=\"{l.Target}\"/>"))
        + "</Relationships>";

    private static string TypeOf(string kind) =>
        kind.StartsWith("http", StringComparison.Ordinal) ? kind
        : kind.Contains('/', StringComparison.Ordinal) ? "http://schemas.openxmlformats.org/package/2006/relationships/" + kind
        : $"{Links}/{kind}";
}
