using System.Buffers;
using ExamDocs.Core.Findings;
using ExamDocs.Intake.Vocabulary;

namespace ExamDocs.Intake.OwnList.Words;

/// <summary>Tells what a text says of an item's use. In doubt the worse meaning counts: it takes an examination to undo it.</summary>
internal static class UseWords
{
    /// <summary>A word of fewer letters is too close to too many others.</summary>
    private const int ShortestMisspelt = 7;

    private static readonly HashSet<string> Blank = new(["na", "n a", "none", "nil", "keine", "aucun"], StringComparer.Ordinal);

    private static readonly HashSet<string> No = new(["no", "n", "nein", "non", "0", "false", "falsch", "faux"], StringComparer.Ordinal);

    private static readonly HashSet<string> Yes = new(
        ["yes", "y", "ja", "j", "oui", "o", "1", "true", "wahr", "vrai", "x", "done"],
        StringComparer.Ordinal
    );

    /// <summary>One letter away from a word against an item, and a word for kit all the same.</summary>
    private static readonly HashSet<string> OtherWords = new(
        ["strapped", "detective", "deflective", "rewired", "angelegt"],
        StringComparer.Ordinal
    );

    private static readonly string[] LongWords =
    [
        .. UsePhrases
            .Anywhere.All.Select(p => p.Key)
            .Where(p => p.Length >= ShortestMisspelt && !p.Contains(' ', StringComparison.Ordinal)),
    ];

    private static readonly SearchValues<char> Dashes = SearchValues.Create(" \u00A0-–—_.");

    /// <summary>Whether it says no more than that a marking or a date is not known.</summary>
    public static bool IsUnknown(string text) =>
        IsBlank(text) || text.Trim() is "?" or "??" || PlainWords.Of(text) is "unknown" or "not known" or "unbekannt" or "inconnu" or "tbc";

    /// <summary>Whether it only says that there is nothing: "-", "n/a". A cross says something.</summary>
    public static bool IsBlank(string text) => text.AsSpan().IndexOfAnyExcept(Dashes) < 0 || Blank.Contains(PlainWords.Of(text));

    public static bool IsNo(string text) => No.Contains(PlainWords.Of(text));

    public static bool IsYes(string text) => Yes.Contains(PlainWords.Of(text)) || text.Trim() is "✓" or "✔" or "☑";

    /// <summary>What a cell about an item's use means; null where its words are not known.</summary>
    public static UseMeaning? OfState(string text)
    {
        var stems = WithoutHarmless(text, out var took);
        if ((took && stems.Count == 0) || text.Trim() is "✓" or "✔" or "☑")
            return UseMeaning.Remark;
        if (UsePhrases.Alone.In(stems) is [{ IsWhole: true } whole])
            return whole.Meaning;
        if (Worst(UsePhrases.InState.In(stems)) is { } against)
            return against;
        return IsMisspelt(stems) || IsNearAlone(stems) ? UseMeaning.Withdrawn : KnownInAll(stems);
    }

    /// <summary>What any other text says against an item; null where it says nothing.</summary>
    public static UseMeaning? Against(string text)
    {
        var stems = WithoutHarmless(text, out _);
        return Worst(UsePhrases.Anywhere.In(stems)) ?? (IsMisspelt(stems) ? UseMeaning.Withdrawn : null);
    }

    /// <summary>What a cell of a row says against its item, whatever column it stands in; null where it says nothing.</summary>
    public static UseMeaning? AgainstInCell(string text)
    {
        if (Against(text) is { } against)
            return against;
        var stems = WithoutHarmless(text, out var took);
        if (UsePhrases.Alone.In(stems) is [{ IsWhole: true, Meaning: >= UseMeaning.Lost } whole])
            return whole.Meaning;
        return !took && AnswerWords.IsAdverse(text) ? UseMeaning.Withdrawn : null;
    }

    private static UseMeaning? Worst(IReadOnlyList<PhraseFound<UseMeaning>> found) => found.Count == 0 ? null : found.Max(f => f.Meaning);

    private static List<string> WithoutHarmless(string text, out bool took)
    {
        var stems = PlainWords.Stems(text).ToList();
        var found = UsePhrases.Harmless.In(stems);
        took = found.Count > 0;
        foreach (var harmless in found.Reverse())
            stems.RemoveRange(harmless.At, harmless.Length);
        return stems;
    }

    /// <summary>A text that is made of harmless words alone, for example "OK, in use".</summary>
    private static UseMeaning? KnownInAll(IReadOnlyList<string> stems)
    {
        var found = UsePhrases.Alone.In(stems);
        return stems.Count > 0 && found.Sum(f => f.Length) == stems.Count ? found.Max(f => f.Meaning) : null;
    }

    private static bool IsMisspelt(IReadOnlyList<string> stems) =>
        stems.Any(s => s.Length >= ShortestMisspelt - 1 && !OtherWords.Contains(s) && Array.Exists(LongWords, w => IsOneEditApart(s, w)));

    /// <summary>"faild" in a cell that says nothing else.</summary>
    private static bool IsNearAlone(IReadOnlyList<string> stems) =>
        stems.Count == 1
        && stems[0].Length >= 4
        && SpellingSuggestion.Of(stems[0], UsePhrases.Alone.All.Select(p => p.Key)) is { } near
        && UsePhrases.Alone.Whole(near) is { Meaning: >= UseMeaning.Lost };

    private static bool IsOneEditApart(string one, string other)
    {
        if (Math.Abs(one.Length - other.Length) > 1)
            return false;
        var start = 0;
        while (start < one.Length && start < other.Length && one[start] == other[start])
            start++;
        var (endOfOne, endOfOther) = (one.Length, other.Length);
        while (endOfOne > start && endOfOther > start && one[endOfOne - 1] == other[endOfOther - 1])
            (endOfOne, endOfOther) = (endOfOne - 1, endOfOther - 1);
        return (endOfOne - start <= 1 && endOfOther - start <= 1)
            || (endOfOne - start == 2 && endOfOther - start == 2 && one[start] == other[start + 1] && one[start + 1] == other[start]);
    }
}
