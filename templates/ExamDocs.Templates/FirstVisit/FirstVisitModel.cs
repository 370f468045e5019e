using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Templates.CheckSheet;

namespace ExamDocs.Templates.FirstVisit;

/// <summary>A kind of item, and how many sheets of it are wanted.</summary>
/// <param name="Category">What kind of item it is.</param>
/// <param name="Count">Items, at least one.</param>
public sealed record BlankItems(Category Category, int Count);

/// <summary>
/// Sheets to record a first visit on by hand, of which nothing is known yet. They are forms and no documents: they have no number, and
/// no register knows them.
/// </summary>
public sealed class FirstVisitModel
{
    /// <summary>Lists of criteria with no more lines, and no more words, leave room for a second item on the page.</summary>
    private const int ShortLines = 8;

    /// <inheritdoc cref="ShortLines"/>
    private const int ShortLetters = 640;

    /// <param name="items">What is expected, in the order printed.</param>
    /// <param name="letterhead">The issuer's; null for none.</param>
    /// <param name="softwareVersion">Version of the software that printed it.</param>
    public FirstVisitModel(IReadOnlyList<BlankItems> items, Letterhead? letterhead, string softwareVersion)
    {
        (Letterhead, SoftwareVersion) = (letterhead, softwareVersion);
        Pages = [.. items.SelectMany(i => Enumerable.Repeat(i.Category, i.Count).Chunk(IsShort(i.Category) ? 2 : 1))];
    }

    public Letterhead? Letterhead { get; }

    public string SoftwareVersion { get; }

    /// <summary>The items of each page, one or two.</summary>
    public IReadOnlyList<IReadOnlyList<Category>> Pages { get; }

    /// <summary>Whether two items of the kind fit on a page.</summary>
    public static bool IsShort(Category category) =>
        category.Criteria.Count <= ShortLines
        && category.Criteria.Sum(c => c.Question.Length) <= ShortLetters
        && !SheetDiameters.IsAskedOf(category);

    /// <summary>The lines to answer: decisive first, then judged, then advisory.</summary>
    public static IEnumerable<IGrouping<CriterionClass, Criterion>> Lines(Category category) =>
        category.Criteria.OrderBy(c => c.Class).GroupBy(c => c.Class);

    /// <summary>The places of the boxes that the category's criteria allow at all.</summary>
    public static IReadOnlyList<ObservedState> Places(Category category) =>
        [.. SheetCriterion.Places.Where(state => category.Criteria.Any(c => c.Allows(state)))];
}
