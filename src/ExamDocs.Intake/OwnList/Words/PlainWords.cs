using System.Globalization;
using System.Text;

namespace ExamDocs.Intake.OwnList.Words;

/// <summary>
/// The words of a text as they are compared: without case, accents, signs and endings of the plural, letters that only look Latin
/// made Latin, hidden characters left out, and words spelt with blanks between their letters put together.
/// </summary>
internal static class PlainWords
{
    private const string LookAlikes = "аaеeоoсcрpхxуyіiѕsԁdкkмmтtвbнhοoαaεeρpτtνvκkιiυyχx";

    private const int ShortestStem = 5;

    /// <summary>The words with single blanks between them; empty for a text without letters and digits.</summary>
    public static string Of(string text) => string.Join(' ', Split(text));

    /// <summary>The words of a text, without the endings of the plural.</summary>
    public static IReadOnlyList<string> Stems(string text) => [.. Split(text).Select(Stem)];

    public static IReadOnlyList<string> Split(string text)
    {
        var words = Letters(text).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var joined = new List<string>();
        var isSpelt = false;
        foreach (var word in words)
        {
            var isLetter = word.Length == 1 && char.IsLetter(word[0]);
            if (isLetter && isSpelt)
                joined[^1] += word;
            else
                joined.Add(word);
            isSpelt = isLetter;
        }
        return joined;
    }

    /// <summary>A word without the ending that its plural may have; the same for both.</summary>
    public static string Stem(string word)
    {
        foreach (var ending in new[] { "en", "es", "e", "n" })
        {
            if (word.Length >= ShortestStem + ending.Length && word.EndsWith(ending, StringComparison.Ordinal))
                return word[..^ending.Length];
        }
        return word.Length > 3 && word[^1] is 's' or 'x' && word[^2] is not 's' ? word[..^1] : word;
    }

    private static string Letters(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var rune in Whole(text).Normalize(NormalizationForm.FormKD).EnumerateRunes())
        {
            if (Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.Format)
                continue;
            plain.Append(Rune.IsLetterOrDigit(rune) ? Latin(Rune.ToLowerInvariant(rune)) : " ");
        }
        return plain.ToString();
    }

    private static string Latin(Rune rune)
    {
        if (rune.Value is 'ß')
            return "ss";
        if (rune.Value is 'œ')
            return "oe";
        var at = rune.IsAscii ? -1 : LookAlikes.IndexOf(rune.ToString(), StringComparison.Ordinal);
        return at >= 0 && at % 2 == 0 ? LookAlikes[at + 1].ToString() : rune.ToString();
    }

    /// <summary>Half of a character pair cannot be normalised.</summary>
    private static string Whole(string text) => text.Any(char.IsSurrogate) ? string.Concat(text.EnumerateRunes()) : text;
}
