using System.IO.Compression;
using System.Text;
using ExamDocs.Intake.Tests.Workbook;
using static ExamDocs.Intake.Tests.Hostile.HostileInput;
using static ExamDocs.Intake.Tests.Workbook.XlsxFile;

namespace ExamDocs.Intake.Tests.Hostile;

/// <summary>Workbooks, and files that call themselves so.</summary>
internal static class HostileWorkbooks
{
    private const string Sheet = "xl/worksheets/sheet0.xml";
    private const string Head = "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>";
    private const string Tail = "</sheetData></worksheet>";
    private const string Damaged = "damaged";

    public static IEnumerable<HostileInput> All =>
        [.. NoWorkbooks, .. CutShort, .. Packages, .. Floods, .. Xml, .. Rows, .. Cells, .. Links, .. Beside];

    /// <summary>What stands beside the cells is looked at too, and can be as much.</summary>
    private static IEnumerable<HostileInput> Beside =>
        [
            Of(
                "Two hundred thousand comments",
                "kit.xlsx",
                () =>
                    Noted(
                        string.Concat(
                            Enumerable
                                .Range(0, 200_000)
                                .Select(n => $"<comment ref=\"A{2 + (n % 1_000)}\"><text><t>cut {n}</t></text></comment>")
                        )
                    ),
                "INT065"
            ),
            Of("Three million comments", "kit.xlsx", () => Noted(Times("<comment ref=\"A2\"/>", 2_500_000)), "more cells"),
            Of(
                "Comments made of closing lines alone",
                "kit.xlsx",
                () => Noted(Times($"<comment ref=\"A2\"><text><t>{Times("(ExamDocs 00000000)\n", 1_600)}</t></text></comment>", 350)),
                "INT065"
            ),
            Of(
                "A thousand links to one part of comments",
                "kit.xlsx",
                () =>
                    new XlsxFile()
                        .Sheet("Rope bridges", Row("id") + Row("B-1"))
                        .Link(0, [.. Enumerable.Repeat(("comments", "../comments1.xml"), 1_000)])
                        .Part("xl/comments1.xml", "<comments>" + Times("<!--" + new string('x', 1_000) + "-->", 12_000) + "</comments>")
                        .Stream()
                        .ToArray(),
                Read
            ),
            Of(
                "Two hundred sheets that are one part",
                "kit.xlsx",
                () =>
                {
                    var file = new XlsxFile();
                    for (var n = 0; n < 200; n++)
                        file.Sheet($"S{n}", n == 0 ? Times("<!--" + new string('x', 1_000) + "-->", 12_000) : "");
                    return new Annotating.ZipParts(file.Stream().ToArray()) is var parts
                        ? parts
                            .Set(
                                "xl/_rels/workbook.xml.rels",
                                Encoding.UTF8.GetBytes(
                                    System.Text.RegularExpressions.Regex.Replace(
                                        Encoding.UTF8.GetString(parts.Bytes("xl/_rels/workbook.xml.rels")),
                                        "sheet[0-9]+\\.xml",
                                        "sheet0.xml"
                                    )
                                )
                            )
                            .File()
                        : [];
                },
                "unpacks to more"
            ),
            Of(
                "A hundred thousand texts drawn over a sheet",
                "kit.xlsx",
                () =>
                    new XlsxFile()
                        .Sheet("Rope bridges", Row("id") + Row("B-1"))
                        .Link(0, ("drawing", "../d.xml"))
                        .Part(
                            "xl/d.xml",
                            "<wsDr>"
                                + Times("<oneCellAnchor><from><col>1</col><row>1</row></from><t>cut</t></oneCellAnchor>", 100_000)
                                + "</wsDr>"
                        )
                        .Stream()
                        .ToArray(),
                "INT069"
            ),
            Of(
                "A drawing without an end",
                "kit.xlsx",
                () =>
                    new XlsxFile()
                        .Sheet("Rope bridges", Row("id"))
                        .Link(0, ("drawing", "../d.xml"))
                        .Part("xl/d.xml", "<wsDr><oneCellAnchor>")
                        .Stream()
                        .ToArray(),
                Damaged
            ),
            Of(
                "A guide of a million lines",
                "kit.xlsx",
                () => new XlsxFile().Sheet("How to fill this in", Times(Row("1", "cut"), 100_000)).Stream().ToArray(),
                "INT067"
            ),
            Of(
                "Ten thousand merged ranges over ten thousand items",
                "kit.xlsx",
                () =>
                    new XlsxFile()
                        .SheetPart(
                            "Rope bridges",
                            Head
                                + Row("id")
                                + string.Concat(Enumerable.Range(0, 10_000).Select(n => Row($"B-{n}")))
                                + "</sheetData><mergeCells>"
                                + Times("<mergeCell ref=\"B2:B10001\"/>", 10_000)
                                + "</mergeCells></worksheet>"
                        )
                        .Stream()
                        .ToArray(),
                "more than 5,000 faults"
            ),
        ];

    private static byte[] Noted(string comments) =>
        new XlsxFile()
            .Sheet("Rope bridges", Row("id") + Row("B-1"))
            .Link(0, ("comments", "../comments1.xml"))
            .Part("xl/comments1.xml", $"<comments><commentList>{comments}</commentList></comments>")
            .Stream()
            .ToArray();

    private static IEnumerable<HostileInput> NoWorkbooks =>
        [
            Book("An empty file", [], "The file is empty"),
            Book("A text file", "id;serial\nB-1;12\n"u8.ToArray(), "is not a workbook"),
            Book("A workbook with a password", CompoundFile("EncryptedPackage"), "password"),
            Book("A binary workbook of older days", CompoundFile("Workbook"), "older binary format"),
            Book("A binary workbook", Zip(("[Content_Types].xml", "<Types/>"), ("xl/workbook.bin", "x")), ".xlsb"),
            Book(
                "An OpenDocument sheet",
                Zip(("mimetype", "application/vnd.oasis.opendocument.spreadsheet"), ("content.xml", "<x/>")),
                "OpenDocument"
            ),
            Book("An archive of photos", Zip(("photo.jpg", "x")), "not a workbook"),
            Book("A workbook in an archive", new RawZip().Add("kit.xlsx", Good().Stream().ToArray()).ToArray(), "not a workbook"),
            Book("A text document", Edited(Good(), "xl/workbook.xml", "workbook", "document"), "not a workbook"),
            Book("Nothing but the mark of an archive", [.. "PK\x03\x04"u8], Damaged),
            Book("An empty archive", [.. "PK\x05\x06"u8, .. new byte[18]], "is not a workbook"),
        ];

    private static IEnumerable<HostileInput> CutShort =>
        new[] { 0.1, 0.3, 0.6, 0.95, 0.999 }.Select(kept =>
            Of(
                $"A workbook cut short at {kept}",
                "kit.xlsx",
                () => Good().Stream().ToArray() is var whole ? whole[..(int)(whole.Length * kept)] : [],
                "cut short or damaged"
            )
        );

    private static IEnumerable<HostileInput> Packages =>
        [
            Book("Two parts of one name", Zip([.. Parts(Good()), ("xl/worksheets/SHEET0.xml", "<worksheet/>")]), "two parts of one name"),
            Book("A part named as a folder above", Zip([.. Parts(Good()), ("../../evil.xml", "<x/>"), ("/etc/evil.xml", "<x/>")]), Read),
            Book("Three thousand parts", Zip([.. Parts(Good()), .. Enumerable.Range(0, 3_000).Select(n => ($"n{n}", ""))]), "more parts"),
            Book(
                "A workbook with macros",
                new XlsxFile().Sheet("Rope bridges", Row("id") + Row("B-1")).Part("xl/vbaProject.bin", "Shell \"rm\"").Stream().ToArray(),
                "INT047"
            ),
            Book("A sheet locked within its archive", Lied("<x/>", 4, flags: 1), "password"),
            Book("A sheet packed in an unknown way", Lied("<x/>", 4, method: 99), Damaged),
            Book("A sheet that declares two gigabytes", Lied(Head + Tail, 2_000_000_000), "unpacks to more"),
            Book("A sheet that declares less than it holds", Lied(Head + Row("id") + Row("B-1") + Tail, 20), Damaged),
            Book(
                "A sheet that declares more than it holds, its check sum right",
                Lied(Head + Row("id") + Row("B-1") + Tail, 1_000_000),
                Read
            ),
            Book(
                "A sheet with a letter changed, the check sum not",
                Lied(Head + Row("id") + Row("B-1") + Tail, (uint)(Head + Row("id") + Row("B-1") + Tail).Length, summed: "other"),
                Damaged
            ),
            Book("A sheet missing", Zip([.. Parts(Good()).Where(p => p.Name is not Sheet)]), "missing"),
            Book("A workbook without its links", Zip([.. Parts(Good()).Where(p => p.Name is not "xl/_rels/workbook.xml.rels")]), "missing"),
            Book("A package without its links", Zip([.. Parts(Good()).Where(p => p.Name is not "_rels/.rels")]), "not a workbook"),
        ];

    /// <summary>Each is some megabytes, or less, of file.</summary>
    private static IEnumerable<HostileInput> Floods =>
        [
            Flood("Two gigabytes of blanks", Head, new string(' ', 1 << 20), 2_048, Tail, 2_147_483_648, "unpacks to more"),
            Flood(
                "Two gigabytes of blanks that declare sixty megabytes",
                Head,
                new string(' ', 1 << 20),
                2_048,
                Tail,
                60_000_000,
                "longer than any cell"
            ),
            Flood(
                "Two gigabytes of blanks that declare ten megabytes",
                Head,
                new string(' ', 1 << 20),
                2_048,
                Tail,
                10_000_000,
                "longer than any cell"
            ),
            Flood(
                "Sixty-five million cells",
                Head + "<row>",
                Times("<c s=\"1\"/>", 6_500),
                10_000,
                "</row>" + Tail,
                650_000_000,
                "unpacks to more"
            ),
            Flood(
                "Sixty-five million cells that declare fifteen megabytes",
                Head + "<row>",
                Times("<c s=\"1\"/>", 6_500),
                10_000,
                "</row>" + Tail,
                15_000_000,
                "numbered wrongly"
            ),
            Flood("Sixty-five million rows of one cell", Head, Times("<row><c/></row>", 6_500), 10_000, Tail, 16_000_000, Damaged),
            Flood(
                "A text of one and a half gigabytes",
                Head + "<row><c t=\"inlineStr\"><is><t>",
                new string('x', 1 << 20),
                1_536,
                "</t></is></c></row>" + Tail,
                16_000_000,
                "longer than any cell"
            ),
            Flood("Two million cells in rows", Head, "<row>" + Times("<c s=\"1\"/>", 1_000) + "</row>", 1_500, Tail, 15_000_000, Damaged),
            Of(
                "A million styled blanks",
                "kit.xlsx",
                () =>
                    new XlsxFile()
                        .Sheet("Rope bridges", Row("id") + Row("B-1") + Times("<row>" + Times("<c s=\"1\"/>", 1_000) + "</row>", 1_000))
                        .Stream()
                        .ToArray(),
                Read
            ),
            Of(
                "Twenty megabytes of blanks",
                "kit.xlsx",
                () => new XlsxFile().Sheet("Rope bridges", new string(' ', 20 << 20)).Stream().ToArray(),
                "packed more tightly"
            ),
            Of(
                "More cells filled than any visit needs",
                "kit.xlsx",
                () =>
                    new XlsxFile()
                        .Sheet("Rope bridges", Times("<row>" + Times("<c><v>1</v></c>", 1_000) + "</row>", 301))
                        .Stream()
                        .ToArray(),
                "more than 5,000 faults"
            ),
            Of(
                "Texts shared without end",
                "kit.xlsx",
                () =>
                    new XlsxFile { SharedStrings = [.. Enumerable.Repeat("<t/>", 500_001)] }
                        .Sheet("Rope bridges", "")
                        .Stream()
                        .ToArray(),
                "more texts"
            ),
            Of(
                "Faults without end",
                "kit.xlsx",
                () => new XlsxFile().Sheet("Rope bridges", Row("id") + Times(Row("<c t=\"e\"><v>#N/A</v></c>"), 6_000)).Stream().ToArray(),
                "more than 5,000 faults"
            ),
            Of(
                "Lists without end",
                "kit.xlsx",
                () =>
                    new XlsxFile { SharedStrings = [$"<t>{Times("a;", 200)}</t>"] }
                        .Sheet("Rope bridges", Row("standards") + Times(Row("<c t=\"s\"><v>0</v></c>"), 1_501))
                        .Stream()
                        .ToArray(),
                "lists more things"
            ),
            Of(
                "Three hundred sheets",
                "kit.xlsx",
                () => Enumerable.Range(0, 300).Aggregate(new XlsxFile(), (f, n) => f.Sheet($"S{n}", "")).Stream().ToArray(),
                "more than 200 sheets"
            ),
        ];

    private static IEnumerable<HostileInput> Xml =>
        [
            Part(
                "Elements nested two hundred thousand deep",
                Head + Times("<row>", 200_000) + Times("</row>", 200_000) + Tail,
                "nested deeper"
            ),
            Part("Entities that multiply", "<!DOCTYPE w [<!ENTITY a \"aaaa\"><!ENTITY b \"&a;&a;\">]><worksheet>&b;</worksheet>", Damaged),
            Part("An entity from a file", "<!DOCTYPE w SYSTEM \"file:///etc/hostname\"><worksheet/>", Damaged),
            Part("Names without end", Head + string.Concat(Enumerable.Range(0, 3_000).Select(n => $"<n{n}/>")) + Tail, "different names"),
            Part("An attribute of three megabytes", Head + $"<row spans=\"{new string('1', 3 << 20)}\"/>" + Tail, "longer than any cell"),
            Part("A sheet that never ends", Head + Row("id"), Damaged),
            Part("A sheet with nought bytes in it", Head + Row("a\0b") + Tail, Damaged),
            Bytes(
                "A sheet in UTF-16 with its mark",
                [0xFF, 0xFE, .. Encoding.Unicode.GetBytes(Head + Row("id") + Row("B-1") + Tail)],
                Read
            ),
            Bytes(
                "A sheet that says UTF-16 and is not",
                Encoding.UTF8.GetBytes("<?xml version=\"1.0\" encoding=\"UTF-16\"?>" + Head + Row("id") + Tail),
                Damaged
            ),
            Bytes(
                "A sheet that says UTF-8 and is not",
                [
                    .. Encoding.UTF8.GetBytes("<?xml version=\"1.0\" encoding=\"UTF-8\"?>" + Head),
                    .. Encoding.Latin1.GetBytes(Row("\u00D6se")),
                    .. Encoding.UTF8.GetBytes(Tail),
                ],
                Damaged
            ),
            Bytes(
                "A sheet in an encoding nobody knows",
                Encoding.UTF8.GetBytes("<?xml version=\"1.0\" encoding=\"x-own\"?>" + Head + Tail),
                Damaged
            ),
            Bytes("A sheet that is a picture", [0xFF, 0xD8, 0xFF, 0xE0, .. new byte[100]], Damaged),
        ];

    private static IEnumerable<HostileInput> Rows =>
        [
            .. new[]
            {
                "<row r=\"0\"/>",
                "<row r=\"-1\"/>",
                "<row r=\"1048577\"/>",
                "<row r=\"99999999999999999999\"/>",
                "<row r=\"2\"/><row r=\"2\"/>",
                "<row r=\"9\"/><row r=\"3\"/>",
                "<row r=\"x\"/>",
                "<row r=\"\"/>",
            }.Select(rows => Part($"Rows numbered {rows}", Head + rows + Tail, "numbered wrongly")),
            .. new[] { "XFE1", "12", "", "ZZZZZZZZZZZZZZZZZZZZ1", "$A$1" }.Select(cell =>
                Part($"A cell called '{cell}'", Head + $"<row><c r=\"{cell}\"/></row>" + Tail, "numbered wrongly")
            ),
            Part("Two cells of one name", Head + "<row><c r=\"B1\"/><c r=\"B1\"/></row>" + Tail, "numbered wrongly"),
            Part("Cells out of order", Head + "<row><c r=\"C1\"/><c r=\"B1\"/></row>" + Tail, "numbered wrongly"),
            Part(
                "Nothing but the first and the last cell",
                Head
                    + "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>id</t></is></c></row><row r=\"1048576\"><c "
                    + "r=\"XFD1048576\" t=\"inlineStr\"><is><t>x</t></is></c></row>"
                    + Tail,
                "INT022"
            ),
        ];

    private static IEnumerable<HostileInput> Cells =>
        [
            Cell("A shared text counted below nought", "<c t=\"s\"><v>-1</v></c>", "INT036"),
            Cell("A shared text that is not there", "<c t=\"s\"><v>999999999999</v></c>", "INT036"),
            Cell("A style that is not there", "<c t=\"inlineStr\" s=\"4294967296\"><is><t>B-1</t></is></c>", Read),
            Cell("A number beyond all numbers", "<c><v>1E+400</v></c>", "INT036"),
            Cell("A number that is none", "<c><v>NaN</v></c>", "INT036"),
            Cell("A number without end", $"<c><v>{new string('9', 20_000)}</v></c>", "INT036"),
            Cell("A kind of cell that nobody knows", "<c t=\"zz\"><v>1</v></c>", "INT036"),
            Cell(
                "A text of forty thousand letters",
                $"<c t=\"inlineStr\"><is><t>{new string('x', 40_000)}</t></is></c>",
                "longer than any cell"
            ),
            Cell("A text of thirty thousand letters", $"<c t=\"inlineStr\"><is><t>{new string('x', 30_000)}</t></is></c>", "INT009"),
            Cell("A formula that calls a program", "<c t=\"str\"><f>cmd|' /C calc'!A0</f><v>B-1</v></c>", Read),
            Cell("A text that turns the reading direction", "<c t=\"inlineStr\"><is><t>B\u202E1</t></is></c>", "INT007"),
            Cell("An escape for a nought", "<c t=\"inlineStr\"><is><t>B_x0000_1</t></is></c>", "INT007"),
            Cell("Half of a character pair", "<c t=\"inlineStr\"><is><t>B_xD83D_1</t></is></c>", "INT007"),
        ];

    private static IEnumerable<HostileInput> Links =>
        [
            Book(
                "A sheet that lies elsewhere",
                Edited(
                    Good(),
                    "xl/_rels/workbook.xml.rels",
                    "Target=\"worksheets/sheet0.xml\"",
                    "TargetMode=\"External\" Target=\"file:///etc/hostname\""
                ),
                "missing"
            ),
            Book(
                "A sheet above the package",
                Edited(Good(), "xl/_rels/workbook.xml.rels", "worksheets/sheet0.xml", "../../../../etc/hostname"),
                "missing"
            ),
            Book(
                "A workbook that is its own sheet",
                Edited(Good(), "xl/_rels/workbook.xml.rels", "worksheets/sheet0.xml", "workbook.xml"),
                Read
            ),
            Book("A package that is its own workbook", Edited(Good(), "_rels/.rels", "xl/workbook.xml", "_rels/.rels"), "not a workbook"),
            Book(
                "Two sheets of one part",
                Edited(
                    new XlsxFile().Sheet("Rope bridges", Row("id") + Row("B-1")).Sheet("People", Row("id") + Row("ex1")),
                    "xl/_rels/workbook.xml.rels",
                    "worksheets/sheet1.xml",
                    "worksheets/sheet0.xml"
                ),
                Read
            ),
            Book(
                "Links without end",
                new RawZip()
                    .Add("[Content_Types].xml", "<Types/>")
                    .Add(
                        "_rels/.rels",
                        "<Relationships>" + Times("<Relationship Id=\"x\" Type=\"y/z\" Target=\"xl/a.xml\"/>", 50_000) + "</Relationships>"
                    )
                    .ToArray(),
                "not a workbook"
            ),
        ];

    private static XlsxFile Good() => new XlsxFile().Sheet("Rope bridges", Row("id", "serial") + Row("B-1", "12"));

    private static string Times(string piece, int times) => new StringBuilder(piece.Length * times).Insert(0, piece, times).ToString();

    private static HostileInput Book(string name, byte[] bytes, string says) => Of(name, "kit.xlsx", bytes, says);

    private static HostileInput Part(string name, string sheet, string says) =>
        Of(name, "kit.xlsx", () => new XlsxFile().SheetPart("Rope bridges", sheet).Stream().ToArray(), says);

    private static HostileInput Cell(string name, string cell, string says) =>
        Part(name, Head + Row("id", "serial") + Row("B-1", cell) + Tail, says);

    private static HostileInput Bytes(string name, byte[] sheet, string says) =>
        Of(
            name,
            "kit.xlsx",
            () =>
                Parts(Good())
                    .Where(p => p.Name is not Sheet)
                    .Aggregate(new RawZip(), (zip, p) => zip.Add(p.Name, p.Content))
                    .Add(Sheet, sheet)
                    .ToArray(),
            says
        );

    private static HostileInput Flood(string name, string head, string piece, int times, string tail, uint declared, string says) =>
        Of(
            name,
            "kit.xlsx",
            () =>
                Parts(Good())
                    .Where(p => p.Name is not Sheet)
                    .Aggregate(new RawZip(), (zip, p) => zip.Add(p.Name, p.Content))
                    .Packed(Sheet, RawZip.Repeated(head, piece, times, tail), declared)
                    .ToArray(),
            says
        );

    private static byte[] Lied(string sheet, uint declared, ushort flags = 0, ushort method = 8, string? summed = null) =>
        Parts(Good())
            .Where(p => p.Name is not Sheet)
            .Aggregate(new RawZip(), (zip, p) => zip.Add(p.Name, p.Content))
            .Packed(Sheet, RawZip.Repeated("", sheet, 1, ""), declared, flags, method, Encoding.UTF8.GetBytes(summed ?? sheet))
            .ToArray();

    private static byte[] CompoundFile(string stream) =>
        [0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1, .. new byte[600], .. Encoding.Unicode.GetBytes(stream), .. new byte[100]];

    private static byte[] Edited(XlsxFile file, string part, string from, string to) =>
        Zip([
            .. Parts(file)
                .Select(p =>
                    string.Equals(p.Name, part, StringComparison.Ordinal)
                        ? (p.Name, p.Content.Replace(from, to, StringComparison.Ordinal))
                        : p
                ),
        ]);

    private static List<(string Name, string Content)> Parts(XlsxFile file)
    {
        using var zip = new ZipArchive(file.Stream());
        return [.. zip.Entries.Select(e => (e.FullName, new StreamReader(e.Open()).ReadToEnd()))];
    }

    private static byte[] Zip(params IEnumerable<(string Name, string Content)> parts) =>
        parts.Aggregate(new RawZip(), (zip, part) => zip.Add(part.Name, part.Content)).ToArray();
}
