using System.Globalization;
using ExamDocs.Core.Statistics;
using ExamDocs.Templates.Lessons;

namespace ExamDocs.UseCases.Teaching;

/// <summary>How many items were withdrawn for wear or a defect, and against which criteria.</summary>
internal static class CountRates
{
    private const int MonthsOfYear = 12;

    /// <summary>Where the groups of age begin, years since first use.</summary>
    private static readonly int[] Ages = [0, 1, 2, 3, 5, 8];

    public static IReadOnlyList<RateTable> Of(IReadOnlyList<ItemHistory> items) =>
        [
            By(GroupedBy.Category, items, i => i.Category),
            By(GroupedBy.Model, items, i => i.Model),
            By(GroupedBy.Hardware, [.. items.Where(i => i.IsBridge)], i => i.Hardware),
            By(GroupedBy.Ground, [.. items.Where(i => i.IsBridge)], i => i.Ground),
            ByAge(items),
        ];

    /// <summary>Criteria with a defect or a doubt at the examination that ended an item's service.</summary>
    public static IReadOnlyList<ReasonCount> Reasons(IReadOnlyList<ItemHistory> items) =>
        [
            .. items
                .SelectMany(i => Against(i).Select(criterion => (i.Category, criterion)))
                .CountBy(reason => reason)
                .Select(r => new ReasonCount(r.Key.Category, r.Key.criterion, r.Value))
                .OrderByDescending(r => r.Items)
                .ThenBy(r => r.Category, StringComparer.Ordinal)
                .ThenBy(r => r.Criterion, StringComparer.Ordinal),
        ];

    private static IEnumerable<string> Against(ItemHistory item) =>
        item.End?.Recorded is not { } examination
            ? []
            : examination
                .Observations.Where(o => o.State is Core.Records.ObservedState.Defect or Core.Records.ObservedState.Doubt)
                .Select(o => o.Criterion)
                .Concat(examination.Defects.Select(d => d.Criterion))
                .OfType<string>()
                .Distinct(StringComparer.Ordinal);

    private static RateTable By(GroupedBy by, IReadOnlyList<ItemHistory> items, Func<ItemHistory, string?> name) =>
        new(
            by,
            [
                .. items
                    .GroupBy(name, StringComparer.Ordinal)
                    .OrderBy(g => g.Key is null)
                    .ThenBy(g => g.Key, StringComparer.Ordinal)
                    .Select(g => new RateGroup(g.Key, new Proportion(g.Count(i => i.End is not null), g.Count()))),
            ]
        );

    /// <summary>
    /// An item counts in every group of age in which it was examined, and as withdrawn in the one in which it was.
    /// </summary>
    private static RateTable ByAge(IReadOnlyList<ItemHistory> items)
    {
        var groups = items
            .SelectMany(i =>
                i.Examined.Where(l => i.End is null || l.Day <= i.End.Day)
                    .GroupBy(l => AgeOf(i, l))
                    .Select(g => (Age: g.Key, IsWithdrawn: g.Contains(i.End)))
            )
            .GroupBy(i => i.Age)
            .OrderBy(g => g.Key ?? int.MaxValue);
        return new(
            GroupedBy.Age,
            [
                .. groups.Select(g => new RateGroup(
                    g.Key is { } from ? NameOf(from) : null,
                    new Proportion(g.Count(i => i.IsWithdrawn), g.Count())
                )),
            ]
        );
    }

    private static int? AgeOf(ItemHistory item, LookedAt looked) =>
        item.MonthsAt(looked.Day) is { } months ? Ages.Last(a => a * MonthsOfYear <= months) : null;

    private static string NameOf(int from)
    {
        var next = Array.IndexOf(Ages, from) + 1;
        return next < Ages.Length
            ? string.Create(CultureInfo.InvariantCulture, $"{from} – {Ages[next]}")
            : string.Create(CultureInfo.InvariantCulture, $"{from} +");
    }
}
