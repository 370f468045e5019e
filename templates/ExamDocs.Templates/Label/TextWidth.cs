using System.Globalization;

namespace ExamDocs.Templates.Label;

/// <summary>
/// How much room text takes in Noto Sans Bold, never too little: the regular face is narrower, and characters
/// that are not measured count as the widest.
/// </summary>
internal static class TextWidth
{
    // Advance widths of the characters from space to tilde, in thousandths of an em, read from the font itself.
    private static readonly short[] Bold =
    [
        260,
        286,
        472,
        646,
        572,
        901,
        750,
        266,
        339,
        339,
        545,
        572,
        285,
        322,
        285,
        413,
        572,
        572,
        572,
        572,
        572,
        572,
        572,
        572,
        572,
        572,
        285,
        285,
        572,
        572,
        572,
        477,
        897,
        690,
        672,
        637,
        740,
        560,
        549,
        724,
        765,
        389,
        331,
        664,
        565,
        943,
        813,
        796,
        628,
        796,
        660,
        551,
        579,
        756,
        650,
        967,
        667,
        624,
        579,
        331,
        413,
        331,
        572,
        411,
        362,
        604,
        633,
        514,
        633,
        591,
        387,
        633,
        657,
        305,
        305,
        620,
        305,
        982,
        657,
        619,
        633,
        633,
        454,
        497,
        434,
        657,
        569,
        856,
        578,
        569,
        488,
        394,
        551,
        394,
        572,
    ];

    /// <summary>Length of the text on one line at most, in the unit of the size of type.</summary>
    public static double Of(string text, double font) => Ems(text) * font;

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
            foreach (var piece in Ems(word) * fontMm > widthMm ? Pieces(word) : [word])
            {
                var width = Ems(piece) * fontMm;
                if (at > 0 && at + width > widthMm)
                {
                    lines++;
                    at = 0;
                }
                // What is longer than the line is broken anywhere; the widest letter may not fit at each line's end.
                while (width > widthMm)
                {
                    lines++;
                    width -= widthMm - (1.1 * fontMm);
                }
                at += width;
            }
            at += 0.27 * fontMm;
        }
        return lines;
    }

    // A word longer than the line is first broken after its hyphens and the like, which leaves lines half empty.
    private static IEnumerable<string> Pieces(string word)
    {
        var start = 0;
        for (var at = 0; at < word.Length; at++)
        {
            if (char.IsLetterOrDigit(word[at]) || char.IsSurrogate(word[at]))
                continue;
            yield return word[start..(at + 1)];
            start = at + 1;
        }
        if (start < word.Length)
            yield return word[start..];
    }

    /// <summary>The text, cut at a whole character where it is longer than this, with the words that say so.</summary>
    public static string Shorten(string text, int most, string shortened)
    {
        var starts = StringInfo.ParseCombiningCharacters(text);
        return starts.Length <= most ? text : text[..starts[most]] + shortened;
    }

    private static double Ems(string word) => word.EnumerateRunes().Sum(rune => Em(rune.Value)) * 1.01;

    // A letter with an accent is as wide as the letter.
    private static double Em(int rune) => Plain(rune) is >= ' ' and <= '~' and var plain ? Bold[plain - ' '] / 1000.0 : 1.1;

    private static int Plain(int rune) =>
        rune switch
        {
            '\u00A0' => ' ',
            '\u2019' => '\'',
            >= 0xC0 and < 0x180 => new System.Text.Rune(rune).ToString().Normalize(System.Text.NormalizationForm.FormD)[0],
            _ => rune,
        };
}
