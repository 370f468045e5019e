using System.Globalization;
using System.Text;

namespace ExamDocs.Core.Identity;

/// <summary>
/// Characters that a reader takes for others in print (Unicode Technical Standard 39, confusables; the letters of the two alphabets
/// that keyboards in Europe have beside the Latin one).
/// </summary>
internal static class LookAlike
{
    /// <summary>A blank in print, and no white space to Unicode: U+2800.</summary>
    public const int BlankOfBraille = 0x2800;

    /// <summary>Greek and Cyrillic capitals that look like Latin ones in print.</summary>
    public const string Capitals = "ΑΒΕΖΗΙΚΜΝΟΡΤΥΧϹͿϺАВЕЅІЈКМНОРСТУХӀԌԚԜҮѴҺԀ";

    /// <summary>A pair of points above, in a text whose marks stand apart: U+0308.</summary>
    private const char Diaeresis = '\u0308';

    /// <summary>A ring above, in a text whose marks stand apart: U+030A.</summary>
    private const char Ring = '\u030A';

    private const string Alike = "ABEZHIKMNOPTYXCJMABESIJKMHOPCTYXIGQWYVHD";

    /// <summary>Latin capitals with a stroke, which is no mark to Unicode, and is left out where a keyboard has none.</summary>
    private const string Struck = "ØĐÐŁĦŦ";

    private const string Unstruck = "ODDLHT";

    /// <summary>Small letters that look like Latin ones, though their capitals do not.</summary>
    private const string Small = "γω";

    private static readonly Dictionary<char, char> ToLatin = (Capitals + Struck)
        .Zip(Alike + Unstruck)
        .ToDictionary(p => p.First, p => p.Second);

    /// <summary>Whether a Greek or Cyrillic letter looks like a Latin one in print.</summary>
    public static bool LooksLatin(char letter) => Capitals.Contains(char.ToUpperInvariant(letter)) || Small.Contains(letter);

    /// <summary>Greek and Cyrillic capitals as the Latin ones that they look like, Latin ones without their stroke.</summary>
    public static string Latin(string capitals) =>
        Ascii.IsValid(capitals) ? capitals : string.Concat(capitals.Select(c => ToLatin.GetValueOrDefault(c, c)));

    /// <summary>Letters that are two in one, and those of which a keyboard makes another in capitals.</summary>
    public static string InTwo(string text) =>
        text.Replace("ß", "ss", StringComparison.Ordinal)
            .Replace("ẞ", "SS", StringComparison.Ordinal)
            .Replace("æ", "ae", StringComparison.Ordinal)
            .Replace("Æ", "AE", StringComparison.Ordinal)
            .Replace("œ", "oe", StringComparison.Ordinal)
            .Replace("Œ", "OE", StringComparison.Ordinal)
            .Replace("þ", "th", StringComparison.Ordinal)
            .Replace("Þ", "TH", StringComparison.Ordinal)
            .Replace('ı', 'i');

    /// <summary>
    /// A text whose marks stand apart, with Ä, Ö, Ø, Ü and Å in the letters that they are spelt with where a keyboard lacks them; null
    /// where it has none of them.
    /// </summary>
    public static string? Spelt(string text)
    {
        var spelt = text.Replace(Diaeresis, 'E')
            .Replace(Ring, 'A')
            .Replace("ø", "oe", StringComparison.Ordinal)
            .Replace("Ø", "OE", StringComparison.Ordinal);
        return string.Equals(spelt, text, StringComparison.Ordinal) ? null : spelt;
    }

    /// <summary>Signs that make another letter of a Japanese one, and are no mark that may be left out.</summary>
    public static bool IsVoiced(Rune sign) => sign.Value is 0x3099 or 0x309A;

    /// <summary>Signs that are printed with the character before them, or choose a form of it.</summary>
    public static bool IsMark(UnicodeCategory category) =>
        category is UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark or UnicodeCategory.EnclosingMark;

    /// <summary>
    /// Letters of alphabets in which none is taken for a Latin one: Chinese, Japanese and Korean. Some of any other are.
    /// </summary>
    public static bool IsUnlikeLatin(Rune letter) =>
        letter.Value is (>= 0x3040 and < 0xA000) or (>= 0xAC00 and < 0xD7B0) or (>= 0xF900 and < 0xFB00) or (>= 0x20000 and < 0x40000);
}
