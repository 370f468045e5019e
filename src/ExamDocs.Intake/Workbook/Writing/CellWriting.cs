using System.Globalization;
using System.Text;
using ClosedXML.Excel;

namespace ExamDocs.Intake.Workbook.Writing;

/// <summary>Writes one value so that no program makes something else of it: text stays text, whatever it begins with.</summary>
internal static class CellWriting
{
    private const string TextFormat = "@";

    /// <summary>Most characters a cell can hold.</summary>
    private const int Longest = 32_767;

    private const string CutOff = " [cut off: longer than a cell can hold]";

    public static void Write(IXLCell cell, SourceNode node)
    {
        if (node is NumberNode number && decimal.TryParse(number.Raw, NumberStyles.Float, CultureInfo.InvariantCulture, out var value))
            cell.SetValue(value);
        else
            WriteText(cell, Text(node));
    }

    public static void WriteText(IXLCell cell, string text)
    {
        cell.Style.NumberFormat.Format = TextFormat;
        cell.SetValue<string>(Storable(text));
    }

    private static string Text(SourceNode node) =>
        node switch
        {
            TextNode text => text.Text,
            NumberNode number => number.Raw,
            BooleanNode flag => flag.Value ? "yes" : "no",
            ListNode list => string.Join("; ", list.Elements.Select(Text)),
            _ => "",
        };

    /// <summary>Half of a character pair cannot be stored; the mark put in its place is refused when read again.</summary>
    private static string Storable(string text)
    {
        var whole = new StringBuilder();
        foreach (var rune in text.EnumerateRunes())
            whole.Append(rune.ToString());
        return whole.Length <= Longest ? whole.ToString() : string.Concat(whole.ToString().AsSpan(0, Longest - CutOff.Length), CutOff);
    }
}
