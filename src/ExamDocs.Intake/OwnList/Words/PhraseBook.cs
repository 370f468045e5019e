namespace ExamDocs.Intake.OwnList.Words;

/// <summary>A phrase found in a text.</summary>
/// <param name="Meaning">What it means.</param>
/// <param name="At">The first of its words, counted from 0.</param>
/// <param name="Length">How many words it has.</param>
/// <param name="IsWhole">Nothing else stands in the text.</param>
internal readonly record struct PhraseFound<T>(T Meaning, int At, int Length, bool IsWhole);

/// <summary>Phrases with what they mean, found in a text whole word by whole word; of two that overlap the longer counts.</summary>
internal sealed class PhraseBook<T>
{
    private readonly Dictionary<string, T> _meanings = new(StringComparer.Ordinal);
    private int _longest;

    /// <summary>Every phrase, as it is compared.</summary>
    public IEnumerable<KeyValuePair<string, T>> All => _meanings;

    /// <summary>Adds phrases; where one is there already, the first meaning stays.</summary>
    public PhraseBook<T> Add(T meaning, params IEnumerable<string> phrases)
    {
        foreach (var phrase in phrases.SelectMany(Spellings))
        {
            var stems = PlainWords.Stems(phrase);
            if (stems.Count > 0 && _meanings.TryAdd(string.Join(' ', stems), meaning))
                _longest = Math.Max(_longest, stems.Count);
        }
        return this;
    }

    /// <summary>The phrases of a text, from left to right.</summary>
    public IReadOnlyList<PhraseFound<T>> In(string text) => In(PlainWords.Stems(text));

    public IReadOnlyList<PhraseFound<T>> In(IReadOnlyList<string> stems)
    {
        var found = new List<PhraseFound<T>>();
        var taken = new bool[stems.Count];
        for (var length = Math.Min(_longest, stems.Count); length > 0; length--)
        {
            for (var at = 0; at + length <= stems.Count; at++)
            {
                if (taken[at] || taken[at + length - 1] || !_meanings.TryGetValue(Joined(stems, at, length), out var meaning))
                    continue;
                Array.Fill(taken, value: true, at, length);
                found.Add(new PhraseFound<T>(meaning, at, length, length == stems.Count));
            }
        }
        return [.. found.OrderBy(f => f.At)];
    }

    private static string Joined(IReadOnlyList<string> stems, int at, int length) =>
        length == 1 ? stems[at] : string.Join(' ', Enumerable.Range(at, length).Select(n => stems[n]));

    /// <summary>What the whole text means; null where it is no phrase of the book.</summary>
    public PhraseFound<T>? Whole(string text) => In(text) is [{ IsWhole: true } whole] ? whole : null;

    /// <summary>German is typed with its dots or with an e in their place.</summary>
    private static IEnumerable<string> Spellings(string phrase)
    {
        yield return phrase;
        if (phrase.AsSpan().IndexOfAny('ä', 'ö', 'ü') >= 0)
            yield return phrase
                .Replace("ä", "ae", StringComparison.Ordinal)
                .Replace("ö", "oe", StringComparison.Ordinal)
                .Replace("ü", "ue", StringComparison.Ordinal);
    }
}
