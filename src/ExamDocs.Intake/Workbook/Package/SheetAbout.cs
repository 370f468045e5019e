using System.Globalization;
using System.Text.RegularExpressions;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>What a file says of a sheet beside its rows, gathered while they are read.</summary>
internal sealed partial class SheetAbout
{
    /// <summary>Far more than anybody merges or writes; the rest is only counted.</summary>
    private const int MostKept = 1_000;

    private readonly List<(int From, int To)> _struckColumns = [];

    /// <summary>How many ranges of cells are merged.</summary>
    public int Merges { get; private set; }

    /// <summary>The first of them, for example B2:B5; null where there is none.</summary>
    public string? FirstMerge { get; private set; }

    /// <summary>Those that span rows: the first and the last row, and where the value stands.</summary>
    public List<(int From, int To, int Column)> MergedRows { get; } = [];

    public int HiddenColumns { get; private set; }

    /// <summary>Letters of the first hidden column; null where there is none.</summary>
    public string? FirstHiddenColumn { get; private set; }

    /// <summary>Where a conditional format strikes out first; null where none does.</summary>
    public string? StrikingFormat { get; private set; }

    /// <summary>Texts of headers and footers, without their codes.</summary>
    public List<string> HeadersAndFooters { get; } = [];

    /// <summary>Pictures behind the sheet, embedded objects and controls.</summary>
    public int Objects { get; private set; }

    /// <summary>Whether the workbook takes values from others.</summary>
    public bool LinksOtherWorkbooks { get; set; }

    private string? _conditional;

    public bool IsStruck(int column)
    {
        foreach (var (from, to) in _struckColumns)
        {
            if (column >= from && column <= to)
                return true;
        }
        return false;
    }

    /// <param name="reader">At the start of an element of the sheet that is no row.</param>
    /// <param name="formats">The styles of the workbook.</param>
    public void Look(PartReader reader, CellFormats formats)
    {
        switch (reader.Name)
        {
            case "col":
                AddColumn(reader, formats);
                break;
            case "mergeCell":
                AddMerge(reader.Attribute("ref") ?? "");
                break;
            case "conditionalFormatting":
                _conditional = reader.Attribute("sqref");
                break;
            case "cfRule" when reader.Attribute("dxfId") is { } format && formats.Strikes(format):
            case "strike" when StruckStyles.IsStrike(reader):
                StrikingFormat ??= _conditional ?? "";
                break;
            case "oddHeader" or "evenHeader" or "firstHeader" or "oddFooter" or "evenFooter" or "firstFooter":
                AddHeader(reader);
                break;
            case "picture" or "oleObject" or "control":
                Objects++;
                break;
        }
    }

    private void AddColumn(PartReader reader, CellFormats formats)
    {
        if (
            !int.TryParse(reader.Attribute("min"), NumberStyles.None, CultureInfo.InvariantCulture, out var from)
            || !int.TryParse(reader.Attribute("max"), NumberStyles.None, CultureInfo.InvariantCulture, out var to)
            || from < 1
            || to > WorkbookLimits.LastColumn
        )
            return;
        if (formats.IsStruck(reader.Attribute("style")) && _struckColumns.Count < MostKept)
            _struckColumns.Add((from, to));
        if (!WorkbookDirectory.IsTrue(reader.Attribute("hidden")) && reader.Attribute("width") is not ("0" or "0.0"))
            return;
        // Folded away as a group: the sheet shows a sign that unfolds it.
        if (reader.Attribute("outlineLevel") is not (null or "" or "0"))
            return;
        HiddenColumns += Math.Max(0, to - from + 1);
        FirstHiddenColumn ??= CellAddress.Letters(from);
    }

    private void AddMerge(string range)
    {
        Merges++;
        FirstMerge ??= range;
        var ends = range.Split(':');
        if (
            ends.Length == 2
            && CellAddress.Parse(ends[0]) is { } first
            && CellAddress.Parse(ends[1]) is { } last
            && last.Row > first.Row
            && MergedRows.Count < MostKept
        )
            MergedRows.Add((first.Row, last.Row, first.Column));
    }

    private void AddHeader(PartReader reader)
    {
        var text = Codes().Replace(RichText.Whole(reader), "").Replace("&&", "&", StringComparison.Ordinal).Trim();
        if (text.Length > 0)
            HeadersAndFooters.Add(text);
    }

    /// <summary>ECMA-376 1st ed. Part 4, 3.3.1.46: what stands for the page, the date, a font and the like.</summary>
    [GeneratedRegex(
        "&(\"[^\"]*\"|K[0-9A-Fa-f]{6}|K[0-9]{2}[+-][0-9]{3}|[0-9]{1,3}|[A-JL-Z])",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Codes();
}
