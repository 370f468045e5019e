namespace ExamDocs.Core.Criteria;

/// <summary>
/// Checks what every category must have and its schema cannot say, whoever wrote it. No category may leave out or soften the questions
/// that are asked about all kit.
/// </summary>
public static class SoundCategory
{
    private static readonly string[] OnceForAll = ["saw-contact", "severe-load"];

    /// <returns>A sentence for every fault, with its place; empty where it is sound.</returns>
    public static IReadOnlyList<string> Faults(Category category) =>
        [
            .. Whole(category),
            .. category.Criteria.SelectMany(
                (c, n) =>
                    Single(c)
                        .Select(fault => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"/criteria/{n}: {c.Id} {fault}"))
            ),
        ];

    private static IEnumerable<string> Whole(Category category)
    {
        var criteria = category.Criteria;
        if (criteria.GroupBy(c => c.Id, StringComparer.Ordinal).FirstOrDefault(g => g.Count() > 1) is { } twice)
            yield return $"/criteria: {twice.Key} stands there twice; give each criterion an id of its own";
        if (!criteria.Select(c => c.Class).Order().SequenceEqual(criteria.Select(c => c.Class)))
            yield return "/criteria: the order is wrong; put decisive criteria first, then judged, then advisory ones";
        foreach (
            var (id, kind) in new[]
            {
                ("identity", CriterionClass.Decisive),
                ("marking", CriterionClass.Judged),
                ("severe-load", CriterionClass.Decisive),
            }
        )
        {
            if (category.Find(id)?.Class != kind)
                yield return $"/criteria: every category asks for {id}; add it, {kind.ToString().ToLowerInvariant()}";
        }
        if (criteria.Any(c => c.Material is MaterialFamily.Textile) && category.Find("saw-contact") is null)
            yield return "/criteria: what is textile is asked for saw-contact; add it, decisive";
        if (!category.Ages && TextileOf(category) is { } textile)
            yield return $"/material: {textile}, so it is not of metal alone; type textile, plastic or mixed";
    }

    /// <summary>What shows that a category is of textile, in words; null where nothing does.</summary>
    private static string? TextileOf(Category category) =>
        category.Criteria.FirstOrDefault(c => c.Material is MaterialFamily.Textile) is { } textile ? $"{textile.Id} is about a textile part"
        : new[] { category.Id, category.Name, category.Plural }.Select(TextileTerms.InName).FirstOrDefault(w => w is not null) is { } named
            ? $"its name says '{named}'"
        : category.Criteria.FirstOrDefault(c => WordOf(c) is not null) is { } asked ? $"{asked.Id} asks for '{WordOf(asked)}'"
        : null;

    private static string? WordOf(Criterion criterion) => TextileTerms.InName(criterion.Id) ?? TextileTerms.InQuestion(criterion.Question);

    private static IEnumerable<string> Single(Criterion criterion)
    {
        if (criterion.Class is not CriterionClass.Advisory && !criterion.Required)
            yield return "is decisive or judged and must be required; take required out";
        if (criterion.Class is not CriterionClass.Decisive && !criterion.AllowsNoted)
            yield return "is judged or advisory and must allow noted; type \"allowsNoted\": true";
        if (criterion.AllowsNoSign && !criterion.Means.Contains(Means.Ask))
            yield return "cannot be asked, so no-sign is no answer; take allowsNoSign out";
        if (criterion.Material is MaterialFamily.Metal && WordOf(criterion) is { } word)
            yield return $"asks for '{word}', which is no metal; type textile or mixed as its material";
        var isOnceForAll = OnceForAll.Contains(criterion.Id, StringComparer.Ordinal);
        if (
            isOnceForAll
            && (
                criterion.Class is not CriterionClass.Decisive
                || !criterion.Means.Contains(Means.Ask)
                || !criterion.NeverReleasable
                || criterion.AllowsNoted
                || criterion.AllowsNotApplicable
            )
        )
            yield return "must be decisive, asked, never releasable, and allow neither noted nor not-applicable";
        if (!isOnceForAll && criterion.NeverReleasable)
            yield return "is not one that can never be released; take neverReleasable out";
    }
}
