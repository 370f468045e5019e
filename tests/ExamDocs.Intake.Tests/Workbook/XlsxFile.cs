using System.IO.Compression;
using System.Text;

namespace ExamDocs.Intake.Tests.Workbook;

/// <summary>A workbook put together by hand, part by part, as other programs or an attacker might.</summary>
internal sealed class XlsxFile
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Links = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    private readonly List<(string Name, string SheetXml, string Attributes)> _sheets = [];
    private readonly Dictionary<string, string> _others = new(StringComparer.Ordinal);

    public string Properties { get; init; } = "";

    /// <summary>Whether it says that it takes values from another workbook.</summary>
    public bool LinksOthers { get; init; }

    /// <summary>Number format codes; the n-th, counted from 1, is style n.</summary>
    public string[] Formats { get; init; } = [];

    /// <summary>The whole part of styles; null where it is made of <see cref="Formats"/>.</summary>
    public string? Styles { get; init; }

    /// <summary>Contents of the si elements.</summary>
    public string[] SharedStrings { get; init; } = [];

    /// <param name="rows">Row elements.</param>
    public XlsxFile Sheet(string name, string rows, string attributes = "") =>
        SheetPart(name, $"<worksheet xmlns=\"{Main}\"><sheetData>{rows}</sheetData></worksheet>", attributes);

    public XlsxFile SheetPart(string name, string xml, string attributes = "")
    {
        _sheets.Add((name, xml, attributes));
        return this;
    }

    /// <summary>Links a sheet, counted from 0, to parts by the last word of the kind of link.</summary>
    public XlsxFile Link(int sheet, params (string Kind, string Target)[] links) =>
        Part($"xl/worksheets/_rels/sheet{sheet}.xml.rels", Relationships(links.Select((l, n) => ($"l{n}", l.Kind, l.Target))));

    public XlsxFile Part(string name, string content)
    {
        _others[name] = content;
        return this;
    }

    /// <summary>A row of inline texts; an element starting with &lt; is put in as it is.</summary>
    public static string Row(params string[] cells) =>
        "<row>"
        + string.Concat(
            cells.Select(c =>
                c.Length == 0 ? "<c/>"
                : c[0] == '<' ? c
                : $"<c t=\"inlineStr\"><is><t>{c}</t></is></c>"
            )
        )
        + "</row>";

    public MemoryStream Stream()
    {
        var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, content) in Parts())
            {
                using var part = zip.CreateEntry(name).Open();
                part.Write(Encoding.UTF8.GetBytes(content));
            }
        }
        stream.Position = 0;
        return stream;
    }

    private IEnumerable<(string Name, string Content)> Parts()
    {
        yield return ("[Content_Types].xml", "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"/>");
        yield return ("_rels/.rels", Relationships([("r1", "officeDocument", "xl/workbook.xml")]));
        yield return (
            "xl/workbook.xml",
            $"<workbook xmlns=\"{Main}\" xmlns:r=\"{Links}\"><workbookPr {Properties}/><sheets>"
                + string.Concat(_sheets.Select((s, n) => $"<sheet name=\"{s.Name}\" sheetId=\"{n + 1}\" r:id=\"s{n}\" {s.Attributes}/>"))
                + "</sheets></workbook>"
        );
        yield return (
            "xl/_rels/workbook.xml.rels",
            Relationships([
                .. _sheets.Select((_, n) => ($"s{n}", "worksheet", $"worksheets/sheet{n}.xml")),
                ("t", "sharedStrings", "sharedStrings.xml"),
                ("f", "styles", "/xl/styles.xml"),
                .. LinksOthers ? [("x", "externalLink", "externalLinks/externalLink1.xml")] : Array.Empty<(string, string, string)>(),
            ])
        );
        yield return ("xl/sharedStrings.xml", $"<sst xmlns=\"{Main}\">{string.Concat(SharedStrings.Select(s => $"<si>{s}</si>"))}</sst>");
        yield return (
            "xl/styles.xml",
            Styles
                ?? $"<styleSheet xmlns=\"{Main}\"><numFmts>"
                    + string.Concat(
                        Formats.Select(
                            (f, n) => $"<numFmt numFmtId=\"{200 + n}\" formatCode=\"{System.Security.SecurityElement.Escape(f)}\"/>"
                        )
                    )
                    + "</numFmts><cellStyleXfs><xf numFmtId=\"14\"/></cellStyleXfs><cellXfs><xf numFmtId=\"0\"/>"
                    + string.Concat(Formats.Select((_, n) => $"<xf numFmtId=\"{200 + n}\"/>"))
                    + "</cellXfs></styleSheet>"
        );
        for (var n = 0; n < _sheets.Count; n++)
            yield return ($"xl/worksheets/sheet{n}.xml", _sheets[n].SheetXml);
        foreach (var other in _others)
            yield return (other.Key, other.Value);
    }

    private static string Relationships(IEnumerable<(string Id, string Type, string Target)> links) =>
        "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
        + string.Concat(links.Select(l => $"<Relationship Id=\"{l.Id}\" Type=\"{Links}/{l.Type}\" Target=\"{l.Target}\"/>"))
        + "</Relationships>";
}
