using System.Globalization;
using System.Text;

namespace ExamDocs.UseCases.Company.Packing;

/// <summary>The words of a name, in small letters, and what stands between them.</summary>
internal sealed class NameWords
{
    private readonly List<string> _words = [];

    /// <summary>What follows each word.</summary>
    private readonly List<string> _gaps = [];

    public NameWords(string? text)
    {
        var (word, gap) = (new StringBuilder(), new StringBuilder());
        // An accent may be a sign of its own, and marks that nobody sees would part what looks like one word.
        foreach (var rune in (text ?? "").Normalize(NormalizationForm.FormKC).ToLowerInvariant().EnumerateRunes().Where(IsSeen))
        {
            if (IsOfWord(rune) && gap.Length > 0 && word.Length > 0)
                Add(word, gap);
            (IsOfWord(rune) ? word : gap).Append(rune);
        }
        if (word.Length > 0)
            Add(word, gap);
    }

    /// <summary>All of them with one blank between two.</summary>
    public string Of => string.Join(' ', _words);

    /// <summary>The first words and how many they are, all of them first.</summary>
    public IEnumerable<(string Words, int Count)> Beginnings =>
        Enumerable.Range(1, _words.Count).Reverse().Select(count => (string.Join(' ', _words.Take(count)), count));

    /// <summary>
    /// Whether an id or a name ends after so many words. "H-1-A" goes on, and so does "Ada Fenn-Holt": joined by a sign, a figure or a
    /// letter or two belong to an id, and anything to a name.
    /// </summary>
    public bool EndsAt(int count, bool isName)
    {
        if (count == _words.Count || _gaps[count - 1] is not [var sign] || sign is '_' || char.IsWhiteSpace(sign))
            return true;
        return sign is ',' or ';' or '(' or '[' || !(isName || _words[count].Length <= 2 || _words[count].Any(char.IsDigit));
    }

    private void Add(StringBuilder word, StringBuilder gap)
    {
        _words.Add(word.ToString());
        _gaps.Add(gap.ToString());
        word.Clear();
        gap.Clear();
    }

    private static bool IsOfWord(Rune rune) =>
        Rune.IsLetterOrDigit(rune)
        || Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark;

    private static bool IsSeen(Rune rune) => rune != Rune.ReplacementChar && Rune.GetUnicodeCategory(rune) is not UnicodeCategory.Format;
}
