using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using ExamDocs.Core.Statistics;
using ExamDocs.Templates.Lessons;

namespace ExamDocs.UseCases.Teaching;

/// <summary>How long rope bridges last until they are withdrawn for wear or a defect, and how fast they get thinner.</summary>
internal static class CountSurvival
{
    /// <summary>Days with diameters from which a rate of wear is taken, at least.</summary>
    private const int LeastDays = 3;

    public static IReadOnlyList<SurvivalTable> Of(IReadOnlyList<ItemHistory> items)
    {
        var bridges = items.Where(i => i.IsBridge).Select(i => (Item: i, Life: LifeOf(i))).Where(b => b.Life is not null).ToList();
        return
        [
            By(GroupedBy.Everything, [.. bridges.Select(b => ((string?)"", b.Life!))]),
            By(GroupedBy.Hardware, [.. bridges.Select(b => (b.Item.Hardware, b.Life!))]),
            By(GroupedBy.Ground, [.. bridges.Select(b => (b.Item.Ground, b.Life!))]),
        ];
    }

    /// <summary>Rope bridges that tell nothing of how long they last.</summary>
    public static int LeftOut(IReadOnlyList<ItemHistory> items) => items.Count(i => i.IsBridge && LifeOf(i) is null);

    public static IReadOnlyList<WearGroup> Wear(IReadOnlyList<ItemHistory> items) =>
        [
            .. items
                .Where(i => i.IsBridge)
                .Select(i => (i.Hardware, Rate: WearOf(i)))
                .Where(w => w.Rate is not null)
                .GroupBy(w => w.Hardware, StringComparer.Ordinal)
                .OrderBy(g => g.Key is null)
                .ThenBy(g => g.Key, StringComparer.Ordinal)
                .Select(g => new WearGroup(g.Key, [.. g.Select(w => w.Rate!.Value).Order()])),
        ];

    /// <summary>
    /// From first use to the withdrawal, or censored at the last examination. It is watched from the start where it came into use once
    /// kit of its owner was on record; else from its first examination: had it been withdrawn before, nobody would know.
    /// </summary>
    /// <returns>Null where the first use is not known, or it was not watched for any time.</returns>
    internal static Lifetime? LifeOf(ItemHistory item)
    {
        var last = (item.End ?? item.Examined[^1]).Day;
        if (item.MonthsAt(last) is not { } age)
            return null;
        var entry = item.FirstUsed >= item.WatchedSince ? 0 : item.MonthsAt(item.Examined[0].Day) ?? 0;
        return entry < age ? new Lifetime(age, item.End is not null, entry) : null;
    }

    /// <summary>Millimetres a month by which the smallest mean of a day falls, by a line that a few wild values do not move.</summary>
    private static double? WearOf(ItemHistory item)
    {
        var days = item
            .Examined.Select(l => (Months: item.MonthsAt(l.Day), Thinnest: Thinnest(l.Recorded)))
            .Where(d => d.Months is not null && d.Thinnest is not null)
            .ToList();
        if (days.Select(d => d.Months).Distinct().Count() < LeastDays)
            return null;
        return -TheilSen.Through([.. days.Select(d => d.Months!.Value)], [.. days.Select(d => d.Thinnest!.Value)])?.Slope;
    }

    private static double? Thinnest(Examination? examination) =>
        examination?.Diameters.Select(StationMean.Of).OfType<StationMean>().Select(m => (double?)m.Millimetres).Min();

    private static SurvivalTable By(GroupedBy by, IReadOnlyList<(string? Name, Lifetime Life)> bridges)
    {
        var groups = bridges
            .GroupBy(b => b.Name, b => b.Life, StringComparer.Ordinal)
            .OrderBy(g => g.Key is null)
            .ThenBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => (Name: g.Key, Lives: g.ToList()))
            .ToList();
        return new(
            by,
            [
                .. groups.Select(g => new SurvivalGroup(
                    g.Name,
                    new KaplanMeier(g.Lives),
                    g.Lives.Sum(l => l.Time - l.Entry),
                    Against(g.Lives, [.. groups.Where(other => other != g).SelectMany(other => other.Lives)])
                )),
            ]
        );
    }

    private static LogRank? Against(IReadOnlyList<Lifetime> group, IReadOnlyList<Lifetime> others) =>
        group.Count < LessonsModel.LeastToCompare || others.Count < LessonsModel.LeastToCompare ? null : LogRank.Of(group, others);
}
