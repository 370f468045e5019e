using System.Runtime.CompilerServices;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Regimes;
using ExamDocs.Core.Sentences;
using ExamDocs.Intake.Vocabulary;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>
/// Which word of a column a text means: one of the words of its drop-down list, or the id of a category, a criterion or a regime.
/// A text that means none is left as it was typed.
/// </summary>
internal sealed class ColumnWords
{
    private static readonly ConditionalWeakTable<KnownRules, ColumnWords> Made = [];

    /// <summary>Words by which the intervals of some regimes tell how kit is used; any other text may stand there too.</summary>
    private static readonly string[] Uses = ["arduous", "hand-powered", "power-driven"];

    private readonly Dictionary<string, ReadWord> _categories;
    private readonly string[] _criteria;
    private readonly string[] _regimes;

    private ColumnWords(KnownRules rules)
    {
        _categories = ByName(rules.Categories);
        _criteria = [.. rules.Categories.SelectMany(c => c.Criteria).Select(c => c.Id).Distinct(StringComparer.Ordinal)];
        _regimes = [.. rules.Regimes.Select(r => r.Id)];
    }

    public static ColumnWords Of(KnownRules rules) => Made.GetValue(rules, r => new ColumnWords(r));

    public ReadWord? Find(Column column, string typed) =>
        column.Words.Count > 0
            ? Synonyms.Find(typed, column.Words)
            : column.Path switch
            {
                "category" => _categories.TryGetValue(Synonyms.Key(typed), out var category) ? category : null,
                "criterion" => Synonyms.Find(typed, _criteria),
                "regime" => Synonyms.Find(typed, _regimes),
                "exposure/use" => Synonyms.Find(typed, Uses),
                _ => null,
            };

    /// <summary>By id, name and plural, in every language; a name of two categories is that of neither.</summary>
    private static Dictionary<string, ReadWord> ByName(IReadOnlyList<Category> categories)
    {
        var names = categories
            .SelectMany(c =>
                new[] { c.Name, c.Plural, Terms.German.Category(c), Terms.French.Category(c) }
                    .Select(name =>
                        (
                            Key: Synonyms.Key(name),
                            c.Id,
                            IsListed: !string.Equals(Synonyms.Key(name), Synonyms.Key(c.Id), StringComparison.Ordinal)
                        )
                    )
                    .Append((Key: Synonyms.Key(c.Id), c.Id, IsListed: false))
            )
            .GroupBy(n => n.Key, StringComparer.Ordinal)
            .Where(g => g.Select(n => n.Id).Distinct(StringComparer.Ordinal).Count() == 1);
        return names.ToDictionary(g => g.Key, g => new ReadWord(g.First().Id, g.All(n => n.IsListed)), StringComparer.Ordinal);
    }
}
