using System.Globalization;

namespace ExamDocs.Templates.Label;

/// <summary>
/// A cautious estimate of how much room text takes. Advance widths are upper bounds for the bold face, in ems, so that
/// text which is estimated to fit does fit.
/// </summary>
internal static class TextWidth
{
    /// <summary>Lines that the text takes at most, at least one.</summary>
    /// <param name="text">What is set.</param>
    /// <param name="fontMm">Size of type, millimetres.</param>
    /// <param name="widthMm">Width of the column, millimetres.</param>
    public static int Lines(string text, double fontMm, double widthMm)
    {
        var lines = 1;
        var at = 0.0;
        foreach (var word in text.Split(' '))
        {
            var width = Ems(word) * fontMm;
            if (at > 0 && at + width > widthMm)
            {
                lines++;
                at = 0;
            }
            // A word longer than the line is broken anywhere; one more letter may not fit at each line's end.
            while (width > widthMm)
            {
                lines++;
                width -= widthMm - (1.1 * fontMm);
            }
            at += width + (0.3 * fontMm);
        }
        return lines;
    }

    private static double Ems(string word)
    {
        var ems = 0.0;
        foreach (var rune in word.EnumerateRunes())
            ems += Em(rune.Value);
        return ems;
    }

    private static double Em(int rune) => rune switch
    {
        > 0x2E80 => 1.1,
        'W' or 'M' or 'm' or 'w' or '@' or '%' or > 0x24F => 1.02,
        'i' or 'l' or 'j' or 't' or 'f' or 'I' or '.' or ',' or '-' or ':' or '/' or '(' or ')' => 0.46,
        >= 'A' and <= 'Z' => 0.82,
        _ => 0.66,
    };

    /// <summary>The text, cut at a whole character where it is longer than this, with the words that say so.</summary>
    public static string Shorten(string text, int most, string shortened)
    {
        var starts = StringInfo.ParseCombiningCharacters(text);
        return starts.Length <= most ? text : text[..starts[most]] + shortened;
    }
}
