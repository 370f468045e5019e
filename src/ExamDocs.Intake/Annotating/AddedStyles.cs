using System.Globalization;
using System.Xml;
using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Annotating;

/// <summary>Writes the fonts, fills and cell styles that we add, each list in the order in which the plan numbers it.</summary>
/// <param name="plan">The numbers.</param>
/// <param name="begin">Begins an element in the format's namespace.</param>
/// <param name="target">Where they are written.</param>
internal sealed class AddedStyles(StylePlan plan, Action<string> begin, XmlWriter target)
{
    public void WriteFonts()
    {
        if (plan.Counts.Fonts == 0)
            Font(() => { }, null);
        Font(() => Empty("b"), null);
        Font(() => Empty("u"), "FF0563C1");
    }

    private void Font(Action face, string? colour)
    {
        begin("font");
        face();
        Empty("sz", ("val", "11"));
        if (colour is not null)
            Empty("color", ("rgb", colour));
        Empty("name", ("val", "Calibri"));
        Empty("family", ("val", "2"));
        target.WriteEndElement();
    }

    /// <summary>The first two fills of a workbook are fixed by the format.</summary>
    public void WriteFills()
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
        begin("fill");
        begin("patternFill");
        target.WriteAttributeString("patternType", pattern);
        if (colour is not null)
        {
            Empty("fgColor", ("rgb", colour));
            Empty("bgColor", ("indexed", "64"));
        }
        target.WriteEndElement();
        target.WriteEndElement();
    }

    /// <param name="marked">The styles met on marked cells, by their numbers.</param>
    public void WriteStyles(IReadOnlyDictionary<int, CopiedStyle> marked)
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
            marked.GetValueOrDefault(style, new CopiedStyle()).Write(begin, target, plan.Fill(severity));
    }

    private void Style(int font, int fill, bool wrap)
    {
        begin("xf");
        foreach (var (name, value) in new[] { ("numFmtId", 0), ("fontId", font), ("fillId", fill), ("borderId", 0) })
            target.WriteAttributeString(name, value.ToString(CultureInfo.InvariantCulture));
        if (font > 0)
            target.WriteAttributeString("applyFont", "1");
        if (fill > 0)
            target.WriteAttributeString("applyFill", "1");
        if (wrap)
        {
            target.WriteAttributeString("applyAlignment", "1");
            Empty("alignment", ("vertical", "top"), ("wrapText", "1"));
        }
        target.WriteEndElement();
    }

    private void Empty(string name, params (string Name, string Value)[] attributes)
    {
        begin(name);
        foreach (var (attribute, value) in attributes)
            target.WriteAttributeString(attribute, value);
        target.WriteEndElement();
    }
}
