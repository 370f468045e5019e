namespace ExamDocs.Intake.Workbook.Package;

/// <summary>Which fonts and borders of a workbook draw a line through a cell, and which conditional formats do.</summary>
internal sealed class StruckStyles
{
    private readonly HashSet<int> _fonts = [];
    private readonly HashSet<int> _borders = [];
    private readonly HashSet<int> _conditional = [];
    private int _font = -1;
    private int _border = -1;
    private int _format = -1;
    private bool _crosses;

    public bool Has(int font, int border) => _fonts.Contains(font) || _borders.Contains(border);

    public bool Strikes(int conditional) => _conditional.Contains(conditional);

    /// <param name="reader">At the start of an element of the part of styles.</param>
    /// <param name="section">The list it lies in.</param>
    public void Look(PartReader reader, string section)
    {
        switch (section)
        {
            case "fonts":
                _font += reader.Is("font") ? 1 : 0;
                if (IsStrike(reader))
                    _fonts.Add(_font);
                break;
            case "borders":
                LookAtBorder(reader);
                break;
            case "dxfs":
                _format += reader.Is("dxf") ? 1 : 0;
                if (IsStrike(reader))
                    _conditional.Add(_format);
                break;
        }
    }

    /// <summary>Whether the reader stands at an element that strikes text out.</summary>
    public static bool IsStrike(PartReader reader) => reader.Is("strike") && reader.Attribute("val") is not ("0" or "false" or "off");

    private void LookAtBorder(PartReader reader)
    {
        if (reader.Is("border"))
        {
            _border++;
            _crosses =
                WorkbookDirectory.IsTrue(reader.Attribute("diagonalUp")) || WorkbookDirectory.IsTrue(reader.Attribute("diagonalDown"));
        }
        else if (_crosses && reader.Is("diagonal") && reader.Attribute("style") is { } style && style is not "none")
        {
            _borders.Add(_border);
        }
    }
}
