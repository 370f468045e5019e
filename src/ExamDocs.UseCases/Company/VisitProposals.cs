using NodaTime;

namespace ExamDocs.UseCases.Company;

/// <summary>Items that one visit would examine together.</summary>
/// <param name="By">The last day for it, inclusive: the day on which the first of its items falls due.</param>
/// <param name="At">Where.</param>
/// <param name="Items">By the day on which they fall due.</param>
/// <param name="Minutes">What the items of categories with a figure take together.</param>
/// <param name="WithoutFigure">Ids of the categories for which there is no figure; empty for an item without a category.</param>
public sealed record ProposedVisit(
    LocalDate By,
    DuePlace At,
    IReadOnlyList<DueItem> Items,
    int Minutes,
    IReadOnlyList<string> WithoutFigure
);

/// <summary>
/// Proposes visits by one rule, place by place: the item that falls due first sets the last day of a visit, which takes with it whatever
/// falls due there within so many days after. So an item may come earlier than it must, never later.
/// </summary>
public static class VisitProposals
{
    /// <summary>Four weeks.</summary>
    public const int UsualTogetherDays = 28;

    /// <param name="due">What falls due, each with its day.</param>
    /// <param name="togetherDays">How many days before its own an item may be examined to go with an earlier one; 0 for none.</param>
    /// <param name="minutes">What an item of each category takes, by the user's own figures.</param>
    /// <returns>Each item in one visit; the earliest day first.</returns>
    public static IReadOnlyList<ProposedVisit> Of(IEnumerable<DueItem> due, int togetherDays, IReadOnlyDictionary<string, int> minutes)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(togetherDays);
        return
        [
            .. due.GroupBy(i => i.At.Key, StringComparer.Ordinal)
                .SelectMany(place => AtOnePlace([.. place], togetherDays, minutes))
                .OrderBy(v => v.By)
                .ThenBy(v => v.At.Key, StringComparer.Ordinal),
        ];
    }

    private static IEnumerable<ProposedVisit> AtOnePlace(
        IReadOnlyList<DueItem> items,
        int togetherDays,
        IReadOnlyDictionary<string, int> minutes
    )
    {
        var left = items
            .OrderBy(i => i.FallsDue!.Value)
            .ThenBy(i => i.Id, StringComparer.Ordinal)
            .ThenBy(i => i.Serial, StringComparer.Ordinal)
            .ToList();
        for (var at = 0; at < left.Count; )
        {
            var by = left[at].FallsDue!.Value;
            var visit = left.Skip(at).TakeWhile(i => i.FallsDue <= by.PlusDays(togetherDays)).ToList();
            at += visit.Count;
            yield return new ProposedVisit(
                by,
                visit[0].At,
                visit,
                visit.Sum(i => minutes.GetValueOrDefault(i.Category ?? "")),
                [
                    .. visit
                        .Select(i => i.Category ?? "")
                        .Where(c => !minutes.ContainsKey(c))
                        .Distinct(StringComparer.Ordinal)
                        .Order(StringComparer.Ordinal),
                ]
            );
        }
    }
}
