using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Templates.AuditPack.Wording;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Templates.AuditPack;

/// <summary>How recorded values are written in a pack.</summary>
internal static class PackText
{
    /// <summary>A row of a table must not be higher than a page.</summary>
    private const int MostNamed = 12;

    /// <summary>The first of them, and how many more there are.</summary>
    public static string Some(IReadOnlyList<string> names) =>
        names.Count <= MostNamed + 1
            ? string.Join(", ", names)
            : $"{string.Join(", ", names.Take(MostNamed))} {PackPhrases.Current.AndMore(names.Count - MostNamed)}";

    public static string Category(Item item) =>
        Phrases.Category(Catalogue.Find(item.Category), item.Category) ?? Phrases.Common.NotRecorded;

    public static string Make(Item item) => Printed.Join(" ", item.Maker, item.Model);

    public static string Rule(KeepUntil rule) => $"{Phrases.Text(rule.Words)} ({Phrases.Source(rule.Source)})";
}
