using System.Globalization;
using ExamDocs.Core;
using ExamDocs.Core.Records;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// Names withdrawals that come into a register after a later visit of the same item: they count from the next visit on. Within one
/// run they count at once, because its visits are decided together.
/// </summary>
internal static class LateWithdrawals
{
    /// <summary>One sentence for each item.</summary>
    public static IEnumerable<string> Of(DecideRun run) =>
        from decided in run.Decided.Zip(run.Numbers, (d, n) => (Visit: d, n.IsNew))
        where decided.IsNew
        from item in decided.Visit.Visit.Items
        where item.Outcome is Outcome.Withdraw && item.Reasons.Any(r => r.Code[0] == 'W' && r.Code is not "W10")
        let day = item.ExaminedOn ?? decided.Visit.Visit.Record.Visit.ExaminedOn
        let later = decided
            .Visit.Lines.Where(l =>
                !l.IsWhole
                && DetermineVisits.PlaceInRun(l.Visit) is null
                && string.Equals(l.Item, item.Item.Id, StringComparison.Ordinal)
                && l.On > day
            )
            .Select(l => l.On)
            .ToList()
        where later.Count > 0
        select string.Create(
            CultureInfo.InvariantCulture,
            $"{item.Item.Id} was withdrawn on {day:uuuu-MM-dd} by this record, and examined again on {later.Max():uuuu-MM-dd} "
                + $"by one that did not know of it. Unless it was released, it may not be used: take it out of use now."
        );
}
