using System.Globalization;
using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Annotating;

/// <summary>Adds our fonts, fills and cell styles after those that are there. Nothing that is there gets another number.</summary>
internal sealed class StylesPatch(StylePlan plan) : PartPatch
{
    /// <summary>The collections of the part in the order the format asks for.</summary>
    private static readonly string[] Order = ["numFmts", "fonts", "fills", "borders", "cellStyleXfs", "cellXfs", "cellStyles"];

    private static readonly string[] Needed = ["fonts", "fills", "borders", "cellXfs"];

    private readonly HashSet<string> _seen = new(StringComparer.Ordinal);

    /// <summary>Asked for only once the part is read: by then the sheets have said what they need.</summary>
    private readonly Lazy<HashSet<int>> _wanted = new(() => [.. plan.Marked.Select(m => m.Style)]);
    private readonly Dictionary<int, CopiedStyle> _styles = [];
    private CopiedStyle? _current;
    private int _style = -1;

    protected override void BeforeStart(string name)
    {
        if (Depth == 1)
        {
            var rank = Array.IndexOf(Order, name);
            WriteMissing(rank < 0 ? Order.Length : rank);
            _seen.Add(name);
        }
        else if (Depth == 2 && Parent is "cellXfs")
            BeginStyle();
        else if (Depth == 3 && Parent is "xf" && name is "alignment" or "protection")
            _current?.TakeChild(Source);
    }

    protected override IReadOnlyList<KeyValuePair<string, string>> Attributes(string name)
    {
        if (Depth != 1)
            return [];
        return name switch
        {
            "fonts" => Count(plan.LinkFont + 1),
            "fills" => Count(plan.Fill(Severity.Error) + 1),
            "cellXfs" => Count(plan.FirstMarked + plan.Marked.Count),
            _ => [],
        };
    }

    protected override void BeforeEnd(string name)
    {
        if (Depth == 2)
        {
            _current = null;
            WriteOurs(name);
        }
        else if (Depth == 1)
            WriteMissing(Order.Length);
    }

    private static KeyValuePair<string, string>[] Count(int count) => [new("count", count.ToString(CultureInfo.InvariantCulture))];

    private void BeginStyle()
    {
        _current = _wanted.Value.Contains(++_style) ? new CopiedStyle() : null;
        if (_current is null)
            return;
        _styles[_style] = _current;
        _current.TakeAttributes(Source);
    }

    private void WriteMissing(int beforeRank)
    {
        foreach (var name in Needed.Where(n => Array.IndexOf(Order, n) < beforeRank && _seen.Add(n)))
        {
            Begin(name);
            foreach (var (attribute, value) in Attributes(name))
                Target.WriteAttributeString(attribute, value);
            WriteOurs(name);
            if (name is "borders")
                Empty("border");
            End();
        }
    }

    private void WriteOurs(string name)
    {
        switch (name)
        {
            case "fonts":
                WriteFonts();
                break;
            case "fills":
                WriteFills();
                break;
            case "cellXfs":
                WriteStyles();
                break;
        }
    }

    private void WriteFonts()
    {
        if (plan.Counts.Fonts == 0)
            Font(() => { }, null);
        Font(() => Empty("b"), null);
        Font(() => Empty("u"), "FF0563C1");
    }

    private void Font(Action face, string? colour)
    {
        Begin("font");
        face();
        Empty("sz", ("val", "11"));
        if (colour is not null)
            Empty("color", ("rgb", colour));
        Empty("name", ("val", "Calibri"));
        Empty("family", ("val", "2"));
        End();
    }

    /// <summary>The first two fills of a workbook are fixed by the format.</summary>
    private void WriteFills()
    {
        if (plan.Counts.Fills == 0)
            Fill("none", null);
        if (plan.Counts.Fills < 2)
            Fill("gray125", null);
        foreach (var severity in new[] { Severity.Note, Severity.Warning, Severity.Error })
            Fill("solid", MarkColour.Of(severity));
    }

    private void Fill(string pattern, string? colour)
    {
        Begin("fill");
        Begin("patternFill");
        Target.WriteAttributeString("patternType", pattern);
        if (colour is not null)
        {
            Empty("fgColor", ("rgb", colour));
            Empty("bgColor", ("indexed", "64"));
        }
        End();
        End();
    }

    private void WriteStyles()
    {
        if (plan.Counts.CellStyles == 0)
            Style(0, 0, wrap: false);
        Style(0, 0, wrap: true);
        Style(plan.BoldFont, 0, wrap: true);
        Style(plan.LinkFont, 0, wrap: true);
        Style(plan.BoldFont, 0, wrap: false);
        foreach (var severity in new[] { Severity.Note, Severity.Warning, Severity.Error })
            Style(0, plan.Fill(severity), wrap: true);
        foreach (var (style, severity) in plan.Marked)
            _styles.GetValueOrDefault(style, new CopiedStyle()).Write(Begin, Target, plan.Fill(severity));
    }

    private void Style(int font, int fill, bool wrap)
    {
        Begin("xf");
        foreach (var (name, value) in new[] { ("numFmtId", 0), ("fontId", font), ("fillId", fill), ("borderId", 0) })
            Target.WriteAttributeString(name, value.ToString(CultureInfo.InvariantCulture));
        if (font > 0)
            Target.WriteAttributeString("applyFont", "1");
        if (fill > 0)
            Target.WriteAttributeString("applyFill", "1");
        if (wrap)
        {
            Target.WriteAttributeString("applyAlignment", "1");
            Empty("alignment", ("vertical", "top"), ("wrapText", "1"));
        }
        End();
    }

    private void Empty(string name, params (string Name, string Value)[] attributes)
    {
        Begin(name);
        foreach (var (attribute, value) in attributes)
            Target.WriteAttributeString(attribute, value);
        End();
    }
}
