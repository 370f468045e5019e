using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Text.RegularExpressions;

namespace ExamDocs.Intake.Vocabulary;

/// <summary>
/// The one table of words that are read as a word of the record format. A word that is not listed is not read, however near it
/// is: it is refused with the word that it resembles.
/// </summary>
internal static partial class Synonyms
{
    private static readonly ConditionalWeakTable<IReadOnlyList<string>, Dictionary<string, string>> Made = [];

    public static IReadOnlyList<Synonym> All { get; } = [.. AnswerSynonyms.All, .. ParticularSynonyms.All, .. MeasureSynonyms.All];

    /// <summary>What is left when letter case, blanks and hyphens make no difference.</summary>
    public static string Key(string typed) => Blanks().Replace(typed, " ").Trim().Replace('’', '\'').ToLowerInvariant();

    /// <summary>The word that was meant; null where it is none of them, nor listed for one.</summary>
    /// <param name="typed">As it stands in the cell.</param>
    /// <param name="words">The words that the column may hold; the same list each time, for what is made of it is kept.</param>
    public static ReadWord? Find(string typed, IReadOnlyList<string> words)
    {
        for (var n = 0; n < words.Count; n++)
        {
            if (string.Equals(words[n], typed, StringComparison.Ordinal))
                return new(words[n], IsListed: false);
        }
        var key = Key(typed);
        return Made.GetValue(words, ByKey).TryGetValue(key, out var word)
            ? new(word, IsListed: !string.Equals(Key(word), key, StringComparison.Ordinal))
            : null;
    }

    /// <summary>Every word that a column may hold and every other way to write it, as it is matched; of two the first.</summary>
    private static Dictionary<string, string> ByKey(IReadOnlyList<string> words)
    {
        var known = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var word in words)
            known.TryAdd(Key(word), word);
        foreach (var row in All)
        {
            if (words.FirstOrDefault(w => string.Equals(w, row.Word, StringComparison.Ordinal)) is not { } word)
                continue;
            foreach (var other in row.Others)
                known.TryAdd(Key(other), word);
        }
        return known;
    }

    /// <summary>Within the text: a dash before a word may mean that it does not hold.</summary>
    [GeneratedRegex(@"(?<=[^\s-])[\s-]+(?=[^\s-])", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Blanks();
}

/// <summary>A word that was read.</summary>
/// <param name="Word">As the record format has it.</param>
/// <param name="IsListed">Another word was typed, which is listed for it; false where letter case or blanks alone differ.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct ReadWord(string Word, bool IsListed);
