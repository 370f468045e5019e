using ExamDocs.Core;
using ExamDocs.Core.Determination;
using NodaTime;

namespace ExamDocs.UseCases;

/// <summary>
/// The visits of one run in the order in which they are decided, as if each were read in a run of its own: a withdrawal holds
/// for those that follow. Of one day those come first that withdraw the most by themselves.
/// </summary>
internal static class VisitsInTurn
{
    /// <returns>Positions in the list given; what is unreadable comes first.</returns>
    public static IReadOnlyList<int> Of(IReadOnlyList<ReadVisits> read, LocalDate today, KnownRules? rules) =>
    [
        .. Enumerable.Range(0, read.Count).GroupBy(n => read[n].Read.Record?.Visit.ExaminedOn ?? LocalDate.MinIsoValue).OrderBy(day => day.Key)
            .SelectMany(IEnumerable<int> (day) => day.Count() == 1 ? day : day.OrderByDescending(n => Withdrawn(read[n].Determined(today, rules, null)))),
    ];

    private static int Withdrawn(CheckedInput input) => input.Visit?.Everything.Count(i => i.Outcome is Outcome.Withdraw) ?? 0;
}
