using System.Globalization;
using System.Text;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>
/// Text as it is compared: without blanks, letters that are drawn by the same sign as one letter. A font has one sign for
/// a hyphen that breaks and one that does not, and the file may name either.
/// </summary>
internal static class FoldedText
{
    public static string Of(string text)
    {
        // Nearly all of a page, letter by letter.
        if (text.Length == 1 && char.IsAscii(text[0]))
            return char.IsWhiteSpace(text[0]) ? "" : text;
        var folded = new StringBuilder(text.Length);
        foreach (var rune in Decomposed(text).EnumerateRunes())
            folded.Append(Letter(rune));
        return folded.ToString();
    }

    /// <summary>Whether the text is written from right to left, wholly or in part.</summary>
    public static bool RunsLeft(string text) => text.EnumerateRunes().Any(IsRightToLeft);

    /// <summary>Hebrew, Arabic and their neighbours (Unicode Standard Annex 9, table of default classes R and AL).</summary>
    public static bool IsRightToLeft(Rune rune) =>
        rune.Value
            is (>= 0x0590 and <= 0x08FF)
                or (>= 0xFB1D and <= 0xFDFF)
                or (>= 0xFE70 and <= 0xFEFC)
                or (>= 0x10800 and <= 0x10FFF)
                or (>= 0x1E800 and <= 0x1EFFF)
        && !Rune.IsDigit(rune);

    private static string Decomposed(string text)
    {
        try
        {
            return text.Normalize(NormalizationForm.FormD);
        }
        catch (ArgumentException)
        {
            // Half of a pair cannot be normalised; it is compared as it is.
            return text;
        }
    }

    private static string Letter(Rune rune)
    {
        if (Rune.IsWhiteSpace(rune) || rune.Value is 0x00AD or (>= 0x200B and <= 0x200F) or (>= 0xFE00 and <= 0xFE0F))
            return "";
        if (rune.Value is 0x2010 or 0x2011)
            return "-";
        if (rune.Value is 0x2206)
            return "Δ";
        var category = Rune.GetUnicodeCategory(rune);
        return
            category
                is UnicodeCategory.OtherSymbol
                    or UnicodeCategory.UppercaseLetter
                    or UnicodeCategory.LowercaseLetter
                    or UnicodeCategory.OtherLetter
            ? rune.ToString().Normalize(NormalizationForm.FormKD)
            : rune.ToString();
    }
}
