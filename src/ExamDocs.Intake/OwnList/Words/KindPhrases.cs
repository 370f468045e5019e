using ExamDocs.Core.Regimes;

namespace ExamDocs.Intake.OwnList.Words;

/// <summary>A category that words mean.</summary>
/// <param name="Category">Its id.</param>
/// <param name="Sure">How sure that is.</param>
internal sealed record KindMeant(string Category, Sureness Sure)
{
    /// <summary>The words that say so, as they are compared.</summary>
    public string Phrase { get; init; } = "";
}

/// <summary>
/// Which category of kit words mean, in English, German and French: what is built in, and the names of the user's own
/// categories. Common practice, no source.
/// </summary>
internal sealed class KindPhrases
{
    private readonly PhraseBook<KindMeant> _book = new();

    public KindPhrases(KnownRules rules)
    {
        foreach (var category in rules.Categories)
            _book.Add(new KindMeant(category.Id, Sureness.Yes), category.Id, category.Name, category.Plural);
        foreach (var (category, phrases) in KindVocabulary.Certain.Where(c => rules.FindCategory(c.Category) is not null))
            _book.Add(new KindMeant(category, Sureness.Yes), phrases.Split(',', StringSplitOptions.TrimEntries));
        foreach (var (category, phrases) in KindVocabulary.Likely.Where(c => rules.FindCategory(c.Category) is not null))
            _book.Add(new KindMeant(category, Sureness.Likely), phrases.Split(',', StringSplitOptions.TrimEntries));
    }

    /// <summary>What a text names; where it names several kinds that is not sure. Null where it names none.</summary>
    public KindMeant? Find(string text)
    {
        var stems = PlainWords.Stems(text);
        // A lanyard with a karabiner is a lanyard, and a bridge for a harness is a bridge.
        var besides = stems.ToList().FindIndex(w => Prepositions.Contains(w));
        return besides > 0 && In([.. stems.Take(besides)]) is { Sure: Sureness.Yes } head ? head : In(stems);
    }

    private KindMeant? In(IReadOnlyList<string> stems)
    {
        var found = _book.In(stems);
        if (found.Count == 0)
            return stems.Select(Compound).FirstOrDefault(k => k is not null);
        // The longer a phrase, the closer it names the thing: "rope bridge" is no rope.
        var best = found.MaxBy(f => (f.Length, f.Meaning.Sure));
        var isOne = found.All(f => string.Equals(f.Meaning.Category, best.Meaning.Category, StringComparison.Ordinal));
        return best.Meaning with
        {
            Sure = isOne ? best.Meaning.Sure : Sureness.Likely,
            Phrase = string.Join(' ', isOne ? stems.Skip(best.At).Take(best.Length) : stems.Where(w => !w.Any(char.IsDigit))),
        };
    }

    private static readonly HashSet<string> Prepositions = new(
        ["with", "w", "for", "incl", "including", "mit", "fur", "fuer", "inkl", "avec", "pour"],
        StringComparer.Ordinal
    );

    /// <summary>German puts words together: the last one names the thing.</summary>
    private static KindMeant? Compound(string word) =>
        Array.Find(KindVocabulary.LastWords, w => word.Length > w.Word.Length + 1 && word.EndsWith(w.Word, StringComparison.Ordinal))
            is { Category: { } category }
            ? new KindMeant(category, Sureness.Likely) { Phrase = word }
            : null;
}
