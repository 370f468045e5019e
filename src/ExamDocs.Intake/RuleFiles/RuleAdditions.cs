using ExamDocs.Core.Criteria;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.RuleFiles;

/// <summary>Whether a category or regime of the user can stand beside those that are known: it adds, and never replaces.</summary>
public static class RuleAdditions
{
    /// <returns>Why it cannot be added, a sentence each; empty where it can.</returns>
    public static IReadOnlyList<string> Against(Regime regime, KnownRules known) =>
        [.. Against(regime.Id, known.Regimes.Select(r => r.Id), "regime")];

    /// <returns>Why it cannot be added, a sentence each; empty where it can.</returns>
    public static IReadOnlyList<string> Against(Category category, KnownRules known) =>
        [
            .. Against(category.Id, known.Categories.Select(c => c.Id), "category"),
            .. WorkbookShape
                .For(known)
                .Where(s => string.Equals(Heading.Key(s.Name), Heading.Key(category.Plural), StringComparison.Ordinal))
                .Select(s => $"/plural: the workbook has a sheet '{s.Name}'; type another name"),
            .. WorkbookShape
                .Items(category, lastTime: true)
                .Columns.GroupBy(c => Heading.Key(c.Heading), StringComparer.Ordinal)
                .Where(g => g.Count() > 1)
                .Select(g => $"/criteria: the workbook has a column '{g.Key}' already; give the criterion another id"),
        ];

    /// <summary>A heading of the user's adds a name to one that is known, and takes none away from another.</summary>
    /// <returns>Why they cannot be added, a sentence each; empty where they can.</returns>
    public static IReadOnlyList<string> Against(IReadOnlyDictionary<string, IReadOnlyList<string>> headings, KnownRules known)
    {
        ArgumentNullException.ThrowIfNull(headings);
        var columns = WorkbookShape
            .For(known)
            .SelectMany(s => s.Columns)
            .Select(c => Heading.Key(c.Heading))
            .ToHashSet(StringComparer.Ordinal);
        var common = HeadingWords.ByOther(HeadingWords.InCommonUse);
        var taken = new Dictionary<string, string>(StringComparer.Ordinal);
        var faults = new List<string>();
        foreach (var (heading, others) in headings)
        {
            if (!columns.Contains(Heading.Key(heading)))
                faults.Add($"/{heading}: no sheet of the capture workbook has this heading; type one that it has");
            foreach (var other in others)
            {
                var (key, name) = (Heading.Key(other), Heading.Key(heading));
                if (columns.Contains(key))
                    faults.Add($"/{heading}: '{other}' is a heading of the capture workbook itself; take it out");
                else if (common.TryGetValue(key, out var meant) && !string.Equals(meant, name, StringComparison.Ordinal))
                    faults.Add($"/{heading}: '{other}' means '{meant}' already; take it out");
                else if (!taken.TryAdd(key, name) && !string.Equals(taken[key], name, StringComparison.Ordinal))
                    faults.Add($"/{heading}: '{other}' stands under '{taken[key]}' too; keep one of the two");
            }
        }
        return faults;
    }

    private static IEnumerable<string> Against(string id, IEnumerable<string> known, string kind) =>
        known
            .Where(k => ConfusableIds.Of(id, k))
            .Take(1)
            .Select(k => $"/id: there is a {kind} '{k}', and '{id}' would replace it or be taken for it; type another id");
}
