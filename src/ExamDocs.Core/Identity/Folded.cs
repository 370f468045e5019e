using System.Globalization;
using System.Text;

namespace ExamDocs.Core.Identity;

/// <summary>
/// Compares ids, serial numbers and other markings as people write them. Letter case, blanks, leading zeros, and marks above, below
/// or around a character make no difference, nor does the script of a digit; separators make one only between digits ("1-2" is not
/// "12").
/// </summary>
/// <remarks>
/// They are compared again with Greek and Cyrillic letters as the Latin ones that they look like, O as 0, I and l as 1 (and each l as
/// L, for small letters typed throughout), without the stroke of a letter, with Ä, Ö, Ø, Ü and Å as AE, OE, OE, UE and AA, and with a
/// blank between digits as a separator ("HB 1 2" for "HB-1-2"). Two texts are the same where they have a key in common.
/// </remarks>
public static class Folded
{
    /// <summary>In a text with no more small l than this, every l is read both as 1 and as L; that gives eight readings at most.</summary>
    private const int MostReadApart = 3;

    private static readonly FoldedLately<IReadOnlyList<string>> Lately = new(KeysOf);

    /// <summary>True where both are given and are the same marking; an empty or missing text is the same as no other.</summary>
    public static bool Same(string? one, string? other)
    {
        if (one is null || other is null)
            return false;
        if (string.Equals(one, other, StringComparison.Ordinal))
            return one.Length > 0;
        var keys = Keys(one);
        return Keys(other).Any(keys.Contains);
    }

    /// <summary>True where both are given and they are not the same marking.</summary>
    public static bool Differ(string? one, string? other) =>
        !string.Equals(one, other, StringComparison.Ordinal) && Keys(one).Count > 0 && Keys(other).Count > 0 && !Same(one, other);

    /// <summary>The keys to look a text up by, seldom more than four; empty for a text without a letter or digit.</summary>
    public static IReadOnlyList<string> Keys(string? text) => string.IsNullOrWhiteSpace(text) ? [] : Lately.Of(text);

    private static IReadOnlyList<string> KeysOf(string text)
    {
        // To normalise ASCII changes nothing, and without a blank both ways to read blanks give the same key.
        var isAscii = Ascii.IsValid(text);
        var normal = isAscii ? text : Apart(text);
        bool[] blanks = isAscii && !text.Any(char.IsWhiteSpace) ? [false] : [false, true];
        string[] readings = LookAlike.Spelt(normal) is { } spelt ? [normal, spelt] : [normal];
        return
        [
            .. readings
                .SelectMany(reading => blanks.SelectMany(separates => KeysOf(reading, separates)))
                .Where(k => k is not ("" or "~"))
                .Distinct(StringComparer.Ordinal),
        ];
    }

    private static IEnumerable<string> KeysOf(string reading, bool blankSeparates)
    {
        var upper = reading.ToUpperInvariant();
        yield return Key(upper, blankSeparates);
        foreach (var typed in WithEachL(reading).Select(r => r.ToUpperInvariant()))
        {
            var drawn = AsDrawn(typed);
            yield return "~" + Key(drawn, blankSeparates);
            // "RO-7" for "R07": what was typed beside the separator was a letter.
            if (!string.Equals(drawn, typed, StringComparison.Ordinal))
                yield return "~" + Key(drawn, blankSeparates, typed);
        }
    }

    /// <summary>Every reading of the small l in a text, as 1 or as L; of many, all as 1 and all as L.</summary>
    private static IEnumerable<string> WithEachL(string text)
    {
        if (!text.Contains('l', StringComparison.Ordinal))
            return [text];
        var at = Enumerable.Range(0, text.Length).Where(i => text[i] == 'l').ToList();
        if (at.Count > MostReadApart)
            return [text, text.Replace('l', '1')];
        return Enumerable.Range(0, 1 << at.Count).Select(ones => string.Concat(text.Select((c, i) => IsOne(ones, i) ? '1' : c)));

        bool IsOne(int ones, int i) => at.IndexOf(i) is >= 0 and var n && ((ones >> n) & 1) == 1;
    }

    private static string AsDrawn(string capitals) => LookAlike.Latin(capitals).Replace('O', '0').Replace('I', '1');

    /// <summary>Each mark apart from the letter that bears it (Unicode form KD), and two letters for those that are two in one.</summary>
    internal static string Apart(string text) => LookAlike.InTwo(Whole(text).Normalize(NormalizationForm.FormKD));

    /// <summary>Replaces unpaired surrogates by U+FFFD: .NET cannot normalise a text that holds one.</summary>
    internal static string Whole(string text) => text.Any(char.IsSurrogate) ? string.Concat(text.EnumerateRunes()) : text;

    /// <param name="text">In capitals.</param>
    /// <param name="blankSeparates">True where a blank between digits counts as a separator; else it does not count.</param>
    /// <param name="typed">What says, sign by sign, which of them are digits; null for the text itself.</param>
    private static string Key(string text, bool blankSeparates, string? typed = null)
    {
        var key = new StringBuilder(text.Length);
        var (separated, wasDigit, at) = (false, false, 0);
        foreach (var rune in text.EnumerateRunes())
        {
            var category = Rune.GetUnicodeCategory(rune);
            at += rune.Utf16SequenceLength;
            if (LookAlike.IsMark(category) && !LookAlike.IsVoiced(rune))
                continue;
            if (Rune.IsWhiteSpace(rune) || category is UnicodeCategory.Format || rune.Value == LookAlike.BlankOfBraille)
            {
                separated |= blankSeparates;
            }
            else if (!Rune.IsLetterOrDigit(rune) && !LookAlike.IsVoiced(rune))
            {
                separated = true;
            }
            else
            {
                var isDigit = category is UnicodeCategory.DecimalDigitNumber;
                var counts = isDigit && (typed is null || char.IsDigit(typed[at - 1]));
                if (separated && counts && wasDigit)
                    key.Append('-');
                (separated, wasDigit) = (false, counts);
                if (isDigit)
                    key.Append((char)('0' + (int)Rune.GetNumericValue(rune)));
                else
                    key.Append(rune);
            }
        }
        return WithoutLeadingZeros(key.ToString());
    }

    /// <summary>Drops the leading zeros of every run of digits; a run of zeros alone keeps one.</summary>
    private static string WithoutLeadingZeros(string key)
    {
        if (!key.Contains('0', StringComparison.Ordinal))
            return key;
        var kept = new StringBuilder(key.Length);
        for (var at = 0; at < key.Length; at++)
        {
            var leads = key[at] == '0' && (at == 0 || !char.IsDigit(key[at - 1]) || IsDroppedBefore(key, at));
            if (!leads || at + 1 == key.Length || !char.IsDigit(key[at + 1]))
                kept.Append(key[at]);
        }
        return kept.ToString();
    }

    private static bool IsDroppedBefore(string key, int at)
    {
        for (var before = at - 1; before >= 0 && char.IsDigit(key[before]); before--)
        {
            if (key[before] != '0')
                return false;
        }
        return true;
    }
}
