using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;
using ExamDocs.Intake.Workbook;
using static ExamDocs.Intake.Tests.Workbook.XlsxFile;

namespace ExamDocs.Intake.Tests.Workbook;

/// <summary>Files made to do harm, or spoilt on the way: each is refused with a sentence, and none costs much.</summary>
public sealed class HostileTests
{
    [Fact]
    public void Nothing_at_all() => Refused([], "The file is empty.");

    [Fact]
    public void No_zip_archive() => Refused("id;serial\nB-1;12\n"u8.ToArray(), "is not a workbook");

    [Fact]
    public void A_password_protected_workbook() => Refused(CompoundFile("EncryptedPackage"), "password");

    [Fact]
    public void An_older_binary_workbook() => Refused(CompoundFile("Workbook"), "older binary format");

    [Fact]
    public void An_OpenDocument_file() =>
        Refused(Zip(("mimetype", "application/vnd.oasis.opendocument.spreadsheet"), ("content.xml", "<x/>")), "OpenDocument");

    [Fact]
    public void Another_zip_archive() => Refused(Zip(("photo.jpg", "x")), "not a workbook");

    [Fact]
    public void A_text_document()
    {
        var parts = new XlsxFile().Sheet("A", "").Part("word/document.xml", "<document/>");
        Refused(Edited(parts, "xl/workbook.xml", "workbook", "document"), "not a workbook");
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(0.6)]
    [InlineData(0.95)]
    [InlineData(0.999)]
    public void A_workbook_cut_short(double kept)
    {
        var whole = Good().Stream().ToArray();
        Refused(whole[..(int)(whole.Length * kept)], "cut short or damaged");
    }

    /// <summary>A workbook spoilt anywhere is read as far as it says the same, or refused; it never breaks the reader.</summary>
    [Fact]
    public void A_workbook_with_a_byte_spoilt()
    {
        var whole = Good().Stream().ToArray();
        var refused = 0;
        for (var at = 0; at < whole.Length; at += 3)
        {
            var spoilt = whole.ToArray();
            spoilt[at] ^= 0x55;
            using var stream = new MemoryStream(spoilt);
            var content = WorkbookReader.Read(stream, "kit.xlsx");
            Assert.NotEqual(content.Root is null, content.Unreadable is null);
            refused += content.Unreadable is null ? 0 : 1;
        }
        Assert.True(refused > 50, $"only {refused} of the spoilt files were refused");
    }

    [Fact]
    public void A_part_packed_too_tightly() =>
        Refused(new XlsxFile().Sheet("Rope bridges", new string(' ', 20 * 1024 * 1024)), "packed more tightly");

    [Fact]
    public void More_than_any_visit_needs()
    {
        var noise = new StringBuilder();
        for (var n = 0; noise.Length < 66 * 1024 * 1024; n++)
            noise.Append("<!--").Append(n * 7919L % 1_000_003).Append("-->");
        Refused(new XlsxFile().Sheet("Rope bridges", noise.ToString()), "unpacks to more");
    }

    [Fact]
    public void A_part_that_declares_two_gigabytes()
    {
        var file = Good().Stream().ToArray();
        var directory = file.AsSpan().LastIndexOf("PK\x01\x02"u8);
        BinaryPrimitives.WriteUInt32LittleEndian(file.AsSpan(directory + 24), 2_000_000_000);
        Refused(file, "unpacks to more");
    }

    [Fact]
    public void A_part_that_declares_less_than_it_holds()
    {
        var file = Good().Stream().ToArray();
        var directory = file.AsSpan().LastIndexOf("PK\x01\x02"u8);
        BinaryPrimitives.WriteUInt32LittleEndian(file.AsSpan(directory + 24), 20);
        Refused(file, "damaged");
    }

    [Fact]
    public void A_document_type_definition() =>
        Refused(
            new XlsxFile().SheetPart("Rope bridges", "<!DOCTYPE w [<!ENTITY a \"aaaa\"><!ENTITY b \"&a;&a;\">]><worksheet>&b;</worksheet>"),
            "damaged"
        );

    [Fact]
    public void An_external_entity() =>
        Refused(new XlsxFile().SheetPart("Rope bridges", "<!DOCTYPE w SYSTEM \"file:///etc/hostname\"><worksheet/>"), "damaged");

    [Fact]
    public void Elements_nested_two_hundred_thousand_deep() =>
        Refused(
            new XlsxFile().Sheet(
                "Rope bridges",
                string.Concat(Enumerable.Repeat("<row>", 200_000)) + string.Concat(Enumerable.Repeat("</row>", 200_000))
            ),
            "nested deeper"
        );

    [Fact]
    public void A_text_of_megabytes() =>
        Refused(new XlsxFile().Sheet("Rope bridges", Row("id") + Row(new string('x', 3 * 1024 * 1024))), "longer than any cell");

    [Fact]
    public void A_text_just_too_long() =>
        Refused(new XlsxFile().Sheet("Rope bridges", Row("id") + Row(new string('x', 32_768))), "longer than any cell");

    [Fact]
    public void An_attribute_of_megabytes() =>
        Refused(new XlsxFile().Sheet("Rope bridges", $"<row spans=\"{new string('1', 3 * 1024 * 1024)}\"/>"), "longer than any cell");

    [Fact]
    public void Ever_new_names() =>
        Refused(new XlsxFile().Sheet("Rope bridges", string.Concat(Enumerable.Range(0, 3_000).Select(n => $"<n{n}/>"))), "different names");

    [Theory]
    [InlineData("<row r=\"0\"/>")]
    [InlineData("<row r=\"-1\"/>")]
    [InlineData("<row r=\"1048577\"/>")]
    [InlineData("<row r=\"2\"/><row r=\"2\"/>")]
    [InlineData("<row r=\"x\"/>")]
    [InlineData("<row><c r=\"XFE1\"/></row>")]
    [InlineData("<row><c r=\"12\"/></row>")]
    [InlineData("<row><c r=\"B1\"/><c r=\"B1\"/></row>")]
    public void Wrong_numbers(string rows) => Refused(new XlsxFile().Sheet("Rope bridges", rows), "numbered wrongly");

    [Fact]
    public void Two_parts_of_one_name() =>
        Refused(Zip([.. Parts(Good()), ("xl/worksheets/SHEET0.xml", "<worksheet/>")]), "two parts of one name");

    [Fact]
    public void A_sheet_that_is_not_there() =>
        Refused(Zip([.. Parts(Good()).Where(p => p.Name is not "xl/worksheets/sheet0.xml")]), "missing");

    [Fact]
    public void More_faults_than_anybody_reads() =>
        Refused(
            new XlsxFile().Sheet("Rope bridges", Row("id") + string.Concat(Enumerable.Repeat(Row("<c t=\"e\"><v>#N/A</v></c>"), 6_000))),
            "more than 5,000 faults"
        );

    [Fact]
    public void Lists_without_end() =>
        Refused(
            new XlsxFile { SharedStrings = [$"<t>{string.Concat(Enumerable.Repeat("a;", 200))}</t>"] }.Sheet(
                "Rope bridges",
                Row("standards") + string.Concat(Enumerable.Repeat(Row("<c t=\"s\"><v>0</v></c>"), 1_501))
            ),
            "lists more things"
        );

    [Fact]
    public void A_million_empty_cells_cost_little()
    {
        var row = "<row>" + string.Concat(Enumerable.Repeat("<c s=\"1\"/>", 1_000)) + "</row>";
        using var stream = new XlsxFile()
            .Sheet("Rope bridges", Row("id") + Row("B-1") + string.Concat(Enumerable.Repeat(row, 1_000)))
            .Stream();
        Assert.Single(((ListNode)WorkbookReader.Read(stream, "kit.xlsx").Root!.Members.Single(m => m.Key is "items").Value).Elements);
    }

    [Fact]
    public void Links_to_elsewhere_are_not_followed()
    {
        var parts = Parts(Good())
            .Select(p =>
                p.Name is "xl/_rels/workbook.xml.rels"
                    ? (
                        p.Name,
                        p.Content.Replace(
                            "Target=\"worksheets/sheet0.xml\"",
                            "TargetMode=\"External\" Target=\"file:///etc/hostname\"",
                            StringComparison.Ordinal
                        )
                    )
                    : p
            );
        Refused(Zip([.. parts]), "missing");
    }

    private static XlsxFile Good() => new XlsxFile().Sheet("Rope bridges", Row("id", "serial") + Row("B-1", "12"));

    private static void Refused(XlsxFile file, string sentence)
    {
        using var stream = file.Stream();
        Refused(stream.ToArray(), sentence);
    }

    private static void Refused(byte[] file, string sentence)
    {
        using var stream = new MemoryStream(file);
        var content = WorkbookReader.Read(stream, "kit.xlsx");
        Assert.Null(content.Root);
        Assert.Contains(sentence, content.Unreadable, StringComparison.Ordinal);
        Assert.EndsWith(".", content.Unreadable, StringComparison.Ordinal);
    }

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

    private static byte[] Zip(params (string Name, string Content)[] parts)
    {
        using var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, content) in parts)
            {
                using var part = zip.CreateEntry(name).Open();
                part.Write(Encoding.UTF8.GetBytes(content));
            }
        }
        return stream.ToArray();
    }
}
