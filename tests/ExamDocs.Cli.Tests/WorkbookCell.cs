using System.IO.Compression;
using System.Xml.Linq;

namespace ExamDocs.Cli.Tests;

/// <summary>Retypes one cell of a workbook, as somebody at a keyboard would, and leaves every other byte of its data alone.</summary>
internal static class WorkbookCell
{
    private static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static readonly XNamespace Links = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    /// <returns>The cell's place, for example <c>Rope bridges!V4</c>.</returns>
    public static string Retype(string file, string sheet, string item, string heading, string text)
    {
        using var zip = ZipFile.Open(file, ZipArchiveMode.Update);
        var strings = Read(zip, "xl/sharedStrings.xml")
            .Root!.Elements(Main + "si")
            .Select(s => string.Concat(s.Descendants(Main + "t").Select(t => t.Value)))
            .ToList();
        var part = PartOf(zip, sheet);
        var xml = Read(zip, part);
        var rows = xml.Descendants(Main + "row").ToList();
        var column = Letters(rows.SelectMany(r => r.Elements()).First(c => Is(c, strings, heading) || Is(c, strings, heading + " *")));
        var row = rows.Single(r => r.Elements().Any(c => string.Equals(Letters(c), "A", StringComparison.Ordinal) && Is(c, strings, item)));
        var cell = row.Elements().Single(c => string.Equals(Letters(c), column, StringComparison.Ordinal));
        cell.SetAttributeValue("t", "inlineStr");
        cell.ReplaceNodes(new XElement(Main + "is", new XElement(Main + "t", text)));
        Write(zip, part, xml);
        return $"{sheet}!{(string)cell.Attribute("r")!}";
    }

    private static string PartOf(ZipArchive zip, string sheet)
    {
        var link = (string)
            Read(zip, "xl/workbook.xml")
                .Descendants(Main + "sheet")
                .Single(s => string.Equals((string?)s.Attribute("name"), sheet, StringComparison.Ordinal))
                .Attribute(Links + "id")!;
        return (
            (string)
                Read(zip, "xl/_rels/workbook.xml.rels")
                    .Root!.Elements()
                    .Single(r => string.Equals((string?)r.Attribute("Id"), link, StringComparison.Ordinal))
                    .Attribute("Target")!
        ).TrimStart('/');
    }

    private static bool Is(XElement cell, List<string> strings, string text) =>
        string.Equals((string?)cell.Attribute("t"), "s", StringComparison.Ordinal)
        && string.Equals(strings[(int)cell.Element(Main + "v")!].TrimEnd('*', ' '), text, StringComparison.Ordinal);

    private static string Letters(XElement cell) => new([.. ((string)cell.Attribute("r")!).TakeWhile(char.IsLetter)]);

    private static XDocument Read(ZipArchive zip, string part)
    {
        using var stream = zip.GetEntry(part)!.Open();
        return XDocument.Load(stream);
    }

    private static void Write(ZipArchive zip, string part, XDocument xml)
    {
        zip.GetEntry(part)!.Delete();
        using var stream = zip.CreateEntry(part).Open();
        xml.Save(stream);
    }
}
