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
    public const string Capitals = "ΑΒΕΖΗΙΚΜΝΟΡΤΥΧАВЕЅІЈКМНОРСТУХ";

    private const string Alike = "ABEZHIKMNOPTYXABESIJKMHOPCTYX";

    private static readonly Dictionary<char, char> ToLatin = Capitals.Zip(Alike).ToDictionary(p => p.First, p => p.Second);

    /// <summary>Greek and Cyrillic capitals as the Latin ones that they look like.</summary>
    public static string Latin(string capitals) =>
        Ascii.IsValid(capitals) ? capitals : string.Concat(capitals.Select(c => ToLatin.GetValueOrDefault(c, c)));

    /// <summary>Signs that are printed with the character before them, or choose a form of it.</summary>
    public static bool IsMark(UnicodeCategory category) =>
        category is UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark or UnicodeCategory.EnclosingMark;

    /// <summary>
    /// Letters of alphabets in which none is taken for a Latin one: Chinese, Japanese and Korean. Some of any other are.
    /// </summary>
    public static bool IsUnlikeLatin(Rune letter) =>
        letter.Value is (>= 0x3040 and < 0xA000) or (>= 0xAC00 and < 0xD7B0) or (>= 0xF900 and < 0xFB00) or (>= 0x20000 and < 0x40000);
}
