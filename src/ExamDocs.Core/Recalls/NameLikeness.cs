using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Identity;

namespace ExamDocs.Core.Recalls;

/// <summary>
/// Whether a maker or model on record is the one that a notice names. What is spelt much like it, shortened, or written with more words
/// may be it: only another name is not.
/// </summary>
internal static partial class NameLikeness
{
    private const int LeastToMistype = 3;

    private const int LeastToShorten = 4;

    /// <summary>So many consonants alike are one word with its vowels misheard.</summary>
    private const int LeastConsonants = 4;

    private static readonly string[] Units = ["MM", "CM", "KG", "KN", "LB", "LBS"];

    public static RecallVerdict Of(string named, string typed)
    {
        if (Folded.Same(named, typed) || FirmName.Same(named, typed) || FirmName.Same(Latin(named), Latin(typed)))
            return RecallVerdict.Affected;
        var (one, other) = (Words(named), Words(typed));
        if (one.Count == 0 || other.Count == 0 || HasOtherScript(named) || HasOtherScript(typed) || ConfusableIds.Of(named, typed))
            return RecallVerdict.CannotTell;
        (one, other) = (WithoutExtras(one, other), WithoutExtras(other, one));
        // A number may be left out, or written in words or Roman figures.
        if (!one.Exists(IsNumber) || !other.Exists(IsNumber))
            (one, other) = (Letters(one), Letters(other));
        return
            MayBe(one, other)
            || MayBe(other, one)
            || IsOfOneFamily(one, other)
            || IsOfOneFamily(other, one)
            || IsAbbreviation(one, other)
            || IsAbbreviation(other, one)
            ? RecallVerdict.CannotTell
            : RecallVerdict.NotAffected;
    }

    private static bool IsNumber(string word) => char.IsAsciiDigit(word[0]);

    /// <summary>Without measures, and without years where the other has none: they are no part of the name.</summary>
    private static List<string> WithoutExtras(List<string> words, List<string> other) =>
        [
            .. words
                .Index()
                .Where(w =>
                    !IsNumber(w.Item)
                    || other.Contains(w.Item)
                    || !((IsYear(w.Item) && !other.Exists(IsYear)) || Units.Contains(words.ElementAtOrDefault(w.Index + 1)))
                )
                .Select(w => w.Item),
        ];

    private static bool IsYear(string word) => word is ['1', '9', _, _] or ['2', '0', _, _];

    private static List<string> Letters(List<string> words) => words.FindAll(w => !IsNumber(w));

    /// <summary>Every word of one may be a word of the other, or both may be the same without their blanks.</summary>
    private static bool MayBe(List<string> fewer, List<string> more) =>
        fewer.TrueForAll(w => more.Exists(other => MayBeWord(w, other))) || MayBeWord(string.Concat(fewer), string.Concat(more));

    /// <summary>The first word of one is a word of the other, and no number tells them apart.</summary>
    private static bool IsOfOneFamily(List<string> one, List<string> other) =>
        one is [{ Length: >= LeastToShorten } first, ..]
        && other.Exists(w => MayBeWord(first, w))
        && (one.FindAll(IsNumber).TrueForAll(other.Contains) || other.FindAll(IsNumber).TrueForAll(one.Contains));

    private static bool MayBeWord(string one, string other)
    {
        if (string.Equals(one, other, StringComparison.Ordinal))
            return true;
        if (IsNumber(one) || IsNumber(other) || one.Any(char.IsAsciiDigit) || other.Any(char.IsAsciiDigit))
            return false;
        return (Math.Min(one.Length, other.Length) >= LeastToMistype && SpellingSuggestion.IsNear(one, other))
            || (
                Consonants(one) is { Length: >= LeastConsonants } heard && string.Equals(heard, Consonants(other), StringComparison.Ordinal)
            )
            || (one.Length < other.Length ? IsShort(one, other) : IsShort(other, one));
    }

    private static string Consonants(string word) => string.Concat(word.Where(c => c is not ('A' or 'E' or 'I' or 'O' or 'U' or 'Y')));

    /// <summary>The letters of the short one stand in the long one, in their order, from the same first letter on.</summary>
    private static bool IsShort(string brief, string whole)
    {
        if (brief[0] != whole[0])
            return brief.Length >= LeastToShorten && whole.Contains(brief, StringComparison.Ordinal);
        var at = 0;
        foreach (var c in whole)
            at += at < brief.Length && brief[at] == c ? 1 : 0;
        return at == brief.Length;
    }

    private static bool IsAbbreviation(List<string> brief, List<string> whole) =>
        whole.Count > 1 && string.Concat(brief).StartsWith(string.Concat(whole.Select(w => w[0])), StringComparison.Ordinal);

    /// <summary>Runs of letters and of digits, in capitals, without accents and legal form; numbers without leading noughts.</summary>
    private static List<string> Words(string text)
    {
        var words = new List<string>();
        var last = ' ';
        foreach (var c in string.Join(' ', FirmName.Words(Lettered(Latin(text)))))
        {
            if (char.IsAsciiLetterOrDigit(c))
            {
                if (char.IsAsciiLetterOrDigit(last) && char.IsAsciiDigit(last) == char.IsAsciiDigit(c))
                    words[^1] += c;
                else
                    words.Add(c.ToString());
            }
            last = c;
        }
        return words.ConvertAll(w => IsNumber(w) ? w.TrimStart('0').PadLeft(1, '0') : w);
    }

    /// <summary>Without accents; ä, ö, ü as ae, oe, ue and as a, o, u are one spelling of two, so each becomes the shorter.</summary>
    private static string Latin(string text) =>
        string.Concat(
                Folded
                    .Whole(text)
                    .Normalize(NormalizationForm.FormKD)
                    .Where(c => char.GetUnicodeCategory(c) is not UnicodeCategory.NonSpacingMark)
            )
            .ToUpperInvariant()
            .Replace("\u00DF", "SS", StringComparison.Ordinal)
            .Replace("\u00D8", "O", StringComparison.Ordinal)
            .Replace("\u00C6", "AE", StringComparison.Ordinal)
            .Replace("AE", "A", StringComparison.Ordinal)
            .Replace("OE", "O", StringComparison.Ordinal)
            .Replace("UE", "U", StringComparison.Ordinal);

    /// <summary>0 and 1 between letters are rather letters.</summary>
    private static string Lettered(string text) => OneInWord().Replace(NoughtInWord().Replace(text, "O"), "L");

    [GeneratedRegex("(?<=[A-Z])0(?=[A-Z])", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex NoughtInWord();

    [GeneratedRegex("(?<=[A-Z])1(?=[A-Z])", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex OneInWord();

    private static bool HasOtherScript(string text) => Latin(text).Any(c => char.IsLetterOrDigit(c) && !char.IsAscii(c));
}
