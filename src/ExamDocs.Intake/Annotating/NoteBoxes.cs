using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using ExamDocs.Intake.Binding;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Annotating;

/// <summary>
/// The boxes in which notes are shown: a drawing in an old language, VML, that programs still ask for. Some write it as
/// no XML parser reads it, so boxes are put in before its end and every byte of the rest is kept.
/// </summary>
internal static partial class NoteBoxes
{
    private const string Names =
        "xmlns:v=\"urn:schemas-microsoft-com:vml\" xmlns:o=\"urn:schemas-microsoft-com:office:office\" "
        + "xmlns:x=\"urn:schemas-microsoft-com:office:excel\"";

    private const string ShapeType =
        "<v:shapetype "
        + Names
        + " id=\"_x0000_t202\" coordsize=\"21600,21600\" o:spt=\"202\" path=\"m,l,21600r21600,l21600,xe\">"
        + "<v:stroke joinstyle=\"miter\"/><v:path gradientshapeok=\"t\" o:connecttype=\"rect\"/></v:shapetype>";

    /// <summary>Numbers of shapes are dealt out in blocks of this size.</summary>
    private const int Block = 1024;

    /// <param name="target">Where the drawing is written.</param>
    /// <param name="marks">Cells to have a box.</param>
    /// <param name="sheet">Place of the sheet among the sheets, so that no two drawings share a block of numbers.</param>
    public static void WriteNew(Stream target, IReadOnlyList<Mark> marks, int sheet)
    {
        var blocks = (marks.Count / Block) + 1;
        var first = 1 + (sheet * ((WorkbookLimits.Findings / Block) + 2));
        Write(
            target,
            $"<xml {Names}><o:shapelayout v:ext=\"edit\"><o:idmap v:ext=\"edit\" "
                + $"data=\"{string.Join(',', Enumerable.Range(first, blocks).Select(Digits))}\"/></o:shapelayout>{ShapeType}"
        );
        WriteBoxes(target, marks, (first * Block) + 1);
        Write(target, "</xml>");
    }

    /// <exception cref="UnreadableWorkbookException">The drawing has no end that boxes could be put before.</exception>
    public static void Add(Stream source, Stream target, IReadOnlyList<Mark> marks)
    {
        using var copy = new MemoryStream();
        source.CopyTo(copy);
        var bytes = copy.GetBuffer().AsSpan(0, (int)copy.Length);
        var end = bytes.LastIndexOf("</xml"u8);
        if (end < 0)
            throw new UnreadableWorkbookException(
                "The boxes of the workbook's notes are stored in a way that cannot be added to. Save it again in a spreadsheet program."
            );
        var text = Encoding.Latin1.GetString(bytes);
        target.Write(bytes[..end]);
        if (!text.Contains("\"_x0000_t202\"", StringComparison.Ordinal))
            Write(target, ShapeType);
        WriteBoxes(target, marks, 1 + ShapeNumber().EnumerateMatches(text).Max(text));
        target.Write(bytes[end..]);
    }

    private static int Max(this Regex.ValueMatchEnumerator matches, string text)
    {
        var most = Block;
        foreach (var match in matches)
        {
            if (
                int.TryParse(
                    text.AsSpan(match.Index + 8, match.Length - 8),
                    NumberStyles.None,
                    CultureInfo.InvariantCulture,
                    out var number
                )
            )
                most = Math.Max(most, number);
        }
        return most;
    }

    private static void WriteBoxes(Stream target, IReadOnlyList<Mark> marks, int firstNumber)
    {
        for (var n = 0; n < marks.Count; n++)
            Write(target, Box(marks[n], firstNumber + n));
    }

    private static string Box(Mark mark, int number) =>
        $"<v:shape {Names} id=\"_x0000_s{Digits(number)}\" type=\"#_x0000_t202\" "
        + "style=\"position:absolute;margin-left:60pt;margin-top:2pt;width:260pt;height:90pt;z-index:1;visibility:hidden\" "
        + "fillcolor=\"#ffffe1\" o:insetmode=\"auto\">"
        + "<v:fill color2=\"#ffffe1\"/><v:shadow on=\"t\" color=\"black\" obscured=\"t\"/><v:path o:connecttype=\"none\"/>"
        + "<v:textbox style=\"mso-direction-alt:auto\"><div style=\"text-align:left\"></div></v:textbox>"
        + "<x:ClientData "
        + $"ObjectType=\"Note\"><x:MoveWithCells/><x:SizeWithCells/><x:Anchor>{Anchor(mark)}</x:Anchor><x:AutoFill>False</x:AutoFill>"
        + $"<x:Row>{Digits(mark.Row - 1)}</x:Row><x:Column>{Digits(mark.Column - 1)}</x:Column></x:ClientData></v:shape>";

    /// <summary>Column, pixels into it, row, pixels into it, of the upper left corner and of the lower right one.</summary>
    private static string Anchor(Mark mark)
    {
        var (wide, high) = (3, Math.Clamp(mark.Texts.Sum(t => (t.Length / 45) + 3), 5, 16));
        var left = Math.Min(mark.Column, WorkbookLimits.LastColumn - 1 - wide);
        var top = Math.Clamp(mark.Row - 2, 0, WorkbookLimits.LastRow - 1 - high);
        return string.Join(", ", new[] { left, 15, top, 4, left + wide, 15, top + high, 4 }.Select(Digits));
    }

    private static string Digits(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static void Write(Stream target, string text) => target.Write(Encoding.ASCII.GetBytes(text));

    [GeneratedRegex("_x0000_s[0-9]{1,9}", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex ShapeNumber();
}
