using System.Globalization;
using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Annotating;

/// <summary>
/// Numbers the styles we add after those that are there: a few of our own for the list of findings, then for each style
/// met on a marked cell the same style with a fill.
/// </summary>
internal sealed class StylePlan(StyleCounts counts)
{
    private readonly Dictionary<(int Style, Severity Severity), int> _numbers = [];
    private readonly List<(int Style, Severity Severity)> _marked = [];

    public StyleCounts Counts => counts;

    /// <summary>Where the file has no fonts, fills or styles, the ones every workbook begins with are put in first.</summary>
    public int BoldFont => Math.Max(1, counts.Fonts);

    public int LinkFont => BoldFont + 1;

    public int FirstFill => Math.Max(2, counts.Fills);

    public int Plain => Math.Max(1, counts.CellStyles);

    public int Heading => Plain + 1;

    public int Link => Plain + 2;

    public int Caution => Plain + 3;

    /// <summary>Styles that the list of findings uses, after which those of marked cells are numbered.</summary>
    public int FirstMarked => Plain + 7;

    /// <summary>What to copy, in the order of the numbers given.</summary>
    public IReadOnlyList<(int Style, Severity Severity)> Marked => _marked;

    public int Fill(Severity severity) => FirstFill + (int)severity;

    /// <summary>The list's style for a severity.</summary>
    public int Word(Severity severity) => Plain + 4 + (int)severity;

    /// <param name="style">The cell's style attribute; null or out of range counts as plain.</param>
    /// <param name="severity">What to mark it as.</param>
    /// <returns>The attribute of the same style, filled.</returns>
    public string Of(string? style, Severity severity)
    {
        var number =
            int.TryParse(style, NumberStyles.None, CultureInfo.InvariantCulture, out var typed) && typed < counts.CellStyles ? typed : 0;
        if (!_numbers.TryGetValue((number, severity), out var ours))
        {
            ours = FirstMarked + _marked.Count;
            _marked.Add((number, severity));
            _numbers.Add((number, severity), ours);
        }
        return ours.ToString(CultureInfo.InvariantCulture);
    }
}
