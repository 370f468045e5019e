using ExamDocs.Core;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Known;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Json;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Issuing;

namespace ExamDocs.UseCases.Registered;

/// <summary>Makes what a register stores of a determined visit.</summary>
internal static class RememberVisit
{
    public static VisitToRemember Of(DeterminedVisit visit) =>
        new(visit.Recorded, EmbeddedRecord.Write(visit.Recorded, visit.Reading), [.. KnownOutcomes.Of(visit).Select(Remembered)])
        {
            Version = ProgramVersion.Deciding(visit),
            AsOf = visit.AsOf,
        };

    /// <summary>The visit as stored, with the lines of earlier documents that it ends.</summary>
    /// <param name="decided">The visit.</param>
    /// <param name="numberOf">Gives the number in the register of a visit that was known when it was decided; null for one that is not
    /// there.</param>
    public static VisitToRemember Of(DecidedVisit decided, Func<int, int?> numberOf) =>
        Of(decided.Visit) with
        {
            Ends = [.. EndsOf(decided, numberOf)],
        };

    private static RememberedOutcome Remembered(KnownOutcome o) =>
        new(o.Item, o.Outcome.Word(), o.Codes)
        {
            ExaminedOn = o.ExaminedOn,
            Until = o.Until,
            NextBy = o.NextBy,
            Parts = o.Parts,
            NeverReleasable = o.NeverReleasable,
        };

    /// <summary>
    /// The lines of earlier visits that no longer hold: those about an item that may not be used, and about what it is fitted to. An item
    /// that was only left unexamined ends nothing.
    /// </summary>
    private static IEnumerable<LineEnd> EndsOf(DecidedVisit decided, Func<int, int?> numberOf) =>
        from item in decided.Visit.Everything
        let why = WhyItEnds(item)
        where why is not null
        let day = item.ExaminedOn ?? decided.Visit.Record.Visit.ExaminedOn ?? decided.Visit.AsOf
        from line in decided.Lines
        where string.Equals(line.Item, item.Item.Id, StringComparison.Ordinal) && line.On <= day
        let visit = numberOf(line.Visit)
        where visit is not null
        select new LineEnd(visit.Value, line.OtherId, day, line.IsWhole ? $"{line.Item}, which is fitted to it, {why}" : why);

    private static string? WhyItEnds(DeterminedItem item) =>
        item switch
        {
            { Outcome: Outcome.Withdraw } => "was withdrawn",
            { Item.Status: ItemStatus.Lost } => "was recorded as lost",
            { Outcome: Outcome.Undetermined } when item.Reasons.Any(r => r.Code is not "U0") => "is held: it could not be determined",
            _ => null,
        };
}
