using System.Globalization;
using System.Xml;
using ExamDocs.Core.Findings;
using ExamDocs.Intake.Workbook;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Annotating;

/// <summary>A finding, and the cell it is about where that is in the workbook.</summary>
internal sealed record PlacedFinding(Finding Finding, string? Sheet, (int Row, int Column)? Cell)
{
    public string Place => Cell is { } cell ? $"{Sheet}!{CellAddress.Of(cell.Row, cell.Column)}" : "";

    /// <summary>Where a link leads, its sheet in quotes, of which one within the name is doubled.</summary>
    public string Location =>
        Cell is { } cell ? $"'{Sheet!.Replace("'", "''", StringComparison.Ordinal)}'!{CellAddress.Of(cell.Row, cell.Column)}" : "";
}

/// <summary>Writes the list of findings. Every cell is a text of its own, never a formula.</summary>
internal sealed class FindingsSheetWriter(FormatNames names, StylePlan styles, MessageLanguage language)
{
    /// <summary>Spreadsheet programs take no more links than this on a sheet (from memory: 65,530).</summary>
    private const int MostLinks = 65_000;

    /// <summary>Rows below the headings that a sheet has room for.</summary>
    private const int MostRows = WorkbookLimits.LastRow - FindingsSheet.HeadingRow;

    private const int LineHeight = 15;

    private static readonly int[] Widths = [10, 10, 28, 18, 64, 64, 10];

    public void Write(Stream target, IReadOnlyList<PlacedFinding> findings)
    {
        using var xml = PartWriter.Open(target);
        xml.WriteStartDocument(standalone: true);
        xml.WriteStartElement("worksheet", names.Main);
        WriteHead(xml);
        xml.WriteStartElement("sheetData");
        WriteRow(xml, 1, [(FindingsSheet.Caution.In(language), styles.Caution)]);
        WriteRow(xml, FindingsSheet.HeadingRow, [.. FindingsSheet.Headings.Select(h => (h.In(language), styles.Heading))]);
        if (findings.Count == 0)
            WriteRow(xml, FindingsSheet.HeadingRow + 1, [(FindingsSheet.None.In(language), styles.Caution)]);
        for (var n = 0; n < Math.Min(findings.Count, MostRows); n++)
            WriteRow(xml, RowOf(n), Cells(findings[n]), wraps: true);
        xml.WriteEndElement();
        WriteLinks(xml, findings);
        xml.WriteStartElement("pageSetup");
        Attributes(xml, ("paperSize", "9"), ("fitToHeight", "0"), ("orientation", "landscape"));
        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    private static int RowOf(int finding) => FindingsSheet.HeadingRow + 1 + finding;

    private static void WriteHead(XmlWriter xml)
    {
        xml.WriteStartElement("sheetPr");
        Element(xml, "pageSetUpPr", ("fitToPage", "1"));
        xml.WriteEndElement();
        xml.WriteStartElement("sheetViews");
        xml.WriteStartElement("sheetView");
        Attributes(xml, ("workbookViewId", "0"));
        Element(
            xml,
            "pane",
            ("ySplit", Digits(FindingsSheet.HeadingRow)),
            ("topLeftCell", CellAddress.Of(FindingsSheet.HeadingRow + 1, 1)),
            ("activePane", "bottomLeft"),
            ("state", "frozen")
        );
        xml.WriteEndElement();
        xml.WriteEndElement();
        xml.WriteStartElement("cols");
        for (var n = 0; n < Widths.Length; n++)
            Element(xml, "col", ("min", Digits(n + 1)), ("max", Digits(n + 1)), ("width", Digits(Widths[n])), ("customWidth", "1"));
        xml.WriteEndElement();
    }

    private (string Text, int Style)[] Cells(PlacedFinding placed)
    {
        var finding = placed.Finding;
        (string Text, int Style)[] cells =
        [
            (finding.Code, styles.Plain),
            (finding.Severity.Said().In(language), styles.Word(finding.Severity)),
            (placed.Place, placed.Cell is null ? styles.Plain : styles.Link),
            (finding.Item ?? "", styles.Plain),
            (finding.Message.In(language), styles.Plain),
            (finding.Hint.In(language), styles.Plain),
        ];
        return [.. cells, (FindingsSheet.Check(cells.Select(c => CellText.Clean(Stored(c.Text)))), styles.Plain)];
    }

    private static void WriteRow(XmlWriter xml, int row, (string Text, int Style)[] cells, bool wraps = false)
    {
        xml.WriteStartElement("row");
        Attributes(xml, ("r", Digits(row)));
        if (wraps)
            Attributes(xml, ("ht", Digits(Height(cells))), ("customHeight", "1"));
        for (var n = 0; n < cells.Length; n++)
        {
            xml.WriteStartElement("c");
            Attributes(xml, ("r", CellAddress.Of(row, n + 1)), ("s", Digits(cells[n].Style)));
            if (cells[n].Text.Length > 0)
                WriteText(xml, cells[n].Text);
            xml.WriteEndElement();
        }
        xml.WriteEndElement();
    }

    /// <summary>
    /// Points for the most lines that any cell needs. Not every program makes room for them by itself, and a hidden line
    /// is a finding half told. 409 points is the most that programs give a row (from memory).
    /// </summary>
    private static int Height((string Text, int Style)[] cells)
    {
        var most = cells.Select((c, n) => c.Text.Split('\n').Sum(line => 1 + (line.Length / (Widths[n] * 9 / 10)))).Max();
        return Math.Min(409, (LineHeight * most) + 1);
    }

    private static void WriteText(XmlWriter xml, string text)
    {
        Attributes(xml, ("t", "inlineStr"));
        xml.WriteStartElement("is");
        xml.WriteStartElement("t");
        xml.WriteAttributeString("xml", "space", null, "preserve");
        xml.WriteString(Stored(text));
        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    private static string Stored(string text) => NoteText.Shorten(StoredText.Of(text), NoteText.Longest);

    private static void WriteLinks(XmlWriter xml, IReadOnlyList<PlacedFinding> findings)
    {
        var linked = Enumerable
            .Range(0, Math.Min(findings.Count, MostRows))
            .Where(n => findings[n].Cell is not null)
            .Take(MostLinks)
            .ToList();
        if (linked.Count == 0)
            return;
        xml.WriteStartElement("hyperlinks");
        foreach (var n in linked)
            Element(xml, "hyperlink", ("ref", CellAddress.Of(RowOf(n), 3)), ("location", findings[n].Location));
        xml.WriteEndElement();
    }

    private static void Element(XmlWriter xml, string name, params (string Name, string Value)[] attributes)
    {
        xml.WriteStartElement(name);
        Attributes(xml, attributes);
        xml.WriteEndElement();
    }

    private static void Attributes(XmlWriter xml, params (string Name, string Value)[] attributes)
    {
        foreach (var (name, value) in attributes)
            xml.WriteAttributeString(name, value);
    }

    private static string Digits(int number) => number.ToString(CultureInfo.InvariantCulture);
}
