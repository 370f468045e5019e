using System.Reflection;
using System.Text.Json;
using ExamDocs.Core.Criteria;

namespace ExamDocs.Core.Sentences;

/// <summary>
/// Translates the English of the program's own data: names of categories and criteria, rules, the words of regimes and of
/// sources. What the user added stays as it is.
/// </summary>
public sealed class Terms
{
    private readonly Lazy<Dictionary<string, Dictionary<string, string>>> _parts;
    private readonly Lazy<(string English, string Translated)[]> _phrases;

    private Terms(Func<Dictionary<string, Dictionary<string, string>>> parts)
    {
        _parts = new(parts);
        // Longest first: a longer phrase may contain a shorter one.
        _phrases = new(() =>
            [.. (_parts.Value.GetValueOrDefault("phrases") ?? []).OrderByDescending(p => p.Key.Length).Select(p => (p.Key, p.Value))]
        );
    }

    /// <summary>No translation: the data are in English.</summary>
    public static Terms English { get; } = new(() => new(StringComparer.Ordinal));

    public static Terms German { get; } = new(() => Read("de"));

    public static Terms French { get; } = new(() => Read("fr"));

    /// <summary>Name of a category; one that the user added keeps its own.</summary>
    public string Category(Category category) =>
        category.AddedFrom is null ? Find("categories", category.Id) ?? category.Name : category.Name;

    /// <summary>A criterion in words; for one that is not built in, its identifier with blanks.</summary>
    public string Criterion(string id) => Find("criteria", id) ?? id.Replace('-', ' ');

    /// <summary>The rule with this code as a sentence; null where it is not translated.</summary>
    public string? Rule(string code) => Find("rules", code);

    /// <summary>A text of a regime's data.</summary>
    public string Text(string english) => Find("texts", english) ?? english;

    /// <summary>A question of the catalogue; a user's own question stays as it is.</summary>
    public string Question(string english) => Find("questions", english) ?? english;

    /// <summary>A source: our own words in it are translated, the law or publication is cited as it is.</summary>
    public string Source(string english) =>
        _phrases.Value.Aggregate(english, (text, phrase) => text.Replace(phrase.English, phrase.Translated, StringComparison.Ordinal));

    private string? Find(string part, string key) => _parts.Value.GetValueOrDefault(part)?.GetValueOrDefault(key);

    /// <summary>From the file of the language with this tag.</summary>
    private static Dictionary<string, Dictionary<string, string>> Read(string tag)
    {
        using var file = Assembly.GetExecutingAssembly().GetManifestResourceStream($"terms/terms.{tag}.json")
            ?? throw new InvalidOperationException($"there are no terms in {tag}");
        return JsonSerializer.Deserialize<Dictionary<string, Dictionary<string, string>>>(file)!;
    }
}
