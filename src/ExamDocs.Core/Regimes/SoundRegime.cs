using ExamDocs.Core.Records;

namespace ExamDocs.Core.Regimes;

/// <summary>Checks what the rules need of a regime's data and its schema cannot say.</summary>
internal static class SoundRegime
{
    /// <returns>A sentence for every fault; empty where it is sound.</returns>
    public static IReadOnlyList<string> Faults(Regime regime) =>
        [
            .. Order(regime.Laws, "laws"),
            .. Order(regime.Intervals, "intervals"),
            .. Order(regime.Particulars, "particulars"),
            .. Order(regime.Duties, "duties"),
            .. Order(regime.Retention, "retention"),
            .. regime.Intervals.SelectMany((p, n) => Gaps(p.Entries, n)),
            .. regime.HandsOver.Any(h => h is { Purposes: null, Categories: null })
                ? ["/handsOver: an entry names neither purposes nor categories; say which kit is left to the other regime"]
                : Array.Empty<string>(),
        ];

    private static IEnumerable<string> Order<T>(IReadOnlyList<Period<T>> periods, string section) =>
        periods.FollowOneAnother()
            ? []
            :
            [
                $"/{section}: the periods do not follow one another; give every one after the first its from, and end each "
                    + "the day before the next begins",
            ];

    /// <summary>A fault for each purpose without an interval for every use: such an item could be left without a next date.</summary>
    private static IEnumerable<string> Gaps(IReadOnlyList<ExaminationInterval> table, int period) =>
        Words
            .Purposes.All.Select(w => (Word: w, Purpose: Words.Purposes.Find(w)))
            .Append((ExaminationInterval.NotStated, null))
            .Where(p => !table.Any(i => i.IsForEveryUse && i.IsFor(p.Purpose)))
            .Select(p =>
                string.Create(
                    System.Globalization.CultureInfo.InvariantCulture,
                    $"/intervals/{period}/entries: the purpose {p.Word} has no interval; add an entry for it, or one without "
                        + $"purposes and use"
                )
            );
}
