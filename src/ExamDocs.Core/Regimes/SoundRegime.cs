using ExamDocs.Core.Records;

namespace ExamDocs.Core.Regimes;

/// <summary>What must be so in a regime's data for the rules to rely on it, beyond what its schema can say.</summary>
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

    /// <summary>Every purpose has an interval whatever the use, so that no item is without a date.</summary>
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
