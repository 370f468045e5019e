using ExamDocs.Core.Criteria;

namespace ExamDocs.Core.Regimes;

/// <summary>The categories and regimes that a record can name: the built-in ones and those that the user added.</summary>
public sealed class KnownRules
{
    private readonly Dictionary<string, Category> _categories;

    private readonly Dictionary<string, Regime> _regimes;

    private KnownRules(
        IReadOnlyList<Category> categories,
        IReadOnlyList<Regime> regimes,
        IReadOnlyDictionary<string, IReadOnlyList<string>> headings
    )
    {
        (Categories, Regimes, Headings) = (categories, regimes, headings);
        _categories = categories.ToDictionary(c => c.Id, StringComparer.Ordinal);
        _regimes = regimes.ToDictionary(r => r.Id, StringComparer.Ordinal);
    }

    /// <summary>Only the built-in ones.</summary>
    public static KnownRules BuiltIn { get; } =
        new(Catalogue.All, RegimeIndex.All, new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal));

    public IReadOnlyList<Category> Categories { get; }

    public IReadOnlyList<Regime> Regimes { get; }

    /// <summary>The user's own words for headings of sheets, by the built-in heading.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<string>> Headings { get; }

    /// <summary>These rules with one more category.</summary>
    /// <exception cref="ArgumentException">A category has that id already.</exception>
    public KnownRules With(Category category) => new([.. Categories, category], Regimes, Headings);

    /// <summary>These rules with one more regime.</summary>
    /// <exception cref="ArgumentException">A regime has that id already.</exception>
    public KnownRules With(Regime regime) => new(Categories, [.. Regimes, regime], Headings);

    /// <summary>These rules with the user's own words for headings.</summary>
    public KnownRules With(IReadOnlyDictionary<string, IReadOnlyList<string>> headings) => new(Categories, Regimes, headings);

    /// <summary>Null where there is no such category.</summary>
    public Category? FindCategory(string? id) => id is not null && _categories.TryGetValue(id, out var found) ? found : null;

    /// <summary>Null where there is no such regime.</summary>
    public Regime? FindRegime(string? id) => id is not null && _regimes.TryGetValue(id, out var found) ? found : null;
}
