using ExamDocs.Core;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.RuleFiles;

/// <summary>Whether a category or regime of the user can stand beside those that are known: it adds, and never replaces.</summary>
public static class RuleAdditions
{
    /// <returns>Why it cannot be added, a sentence each; empty where it can.</returns>
    public static IReadOnlyList<string> Against(Regime regime, KnownRules known) => [.. Against(regime.Id, known.Regimes.Select(r => r.Id), "regime")];

    /// <returns>Why it cannot be added, a sentence each; empty where it can.</returns>
    public static IReadOnlyList<string> Against(Category category, KnownRules known) =>
    [
        .. Against(category.Id, known.Categories.Select(c => c.Id), "category"),
        .. WorkbookShape.For(known).Where(s => string.Equals(Heading.Normal(s.Name), Heading.Normal(category.Plural), StringComparison.Ordinal))
            .Select(s => $"/plural: the workbook has a sheet '{s.Name}'; type another name"),
        .. WorkbookShape.Items(category).Columns.GroupBy(c => Heading.Normal(c.Heading), StringComparer.Ordinal).Where(g => g.Count() > 1)
            .Select(g => $"/criteria: the workbook has a column '{g.Key}' already; give the criterion another id"),
    ];

    private static IEnumerable<string> Against(string id, IEnumerable<string> known, string kind) => known.Where(k => LookAlike.Of(id, k)).Take(1)
        .Select(k => $"/id: there is a {kind} '{k}', and '{id}' would replace it or be taken for it; type another id");
}
