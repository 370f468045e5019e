using ExamDocs.Core.Cases;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Intake.Workbook.Writing;

/// <summary>
/// What of one visit is still true at the next: the parties, the people, the kit and its makers' limits, and as history
/// whatever was examined, renewed and released.
/// </summary>
internal static class NextVisit
{
    public static ExaminationRecord Of(ExaminationRecord recorded)
    {
        // What the visit states for all its examinations is no history's: each of them takes it along.
        var record = SharedValues.PerExamination(recorded);
        return new()
        {
            Format = record.Format,
            Visit = record.Visit with { Reference = null, ExaminedOn = null, ReportedOn = null },
            People = record.People,
            Items =
            [
                .. record.Items.Select(item =>
                    item with
                    {
                        LastExamined = LastExamined(item, record),
                        FittedTo = FittedTo(item, record),
                        // That it was not shown is told of one visit, and by nobody of the next.
                        Status = item.Status is ItemStatus.NotPresented ? null : item.Status,
                    }
                ),
            ],
            Limits = record.Limits,
            Examinations = [.. record.Examinations.Select(e => Earlier(e, record.Visit))],
            Renewals = record.Renewals,
            Remedies = record.Remedies,
            Releases = record.Releases,
            Disposals = record.Disposals,
        };
    }

    /// <summary>Its photos lie with its own record: beside the next one nobody finds them.</summary>
    private static Examination Earlier(Examination examination, Visit visit) =>
        examination with
        {
            ExaminedOn = examination.DayAt(visit),
            Observations = [.. examination.Observations.Select(o => o with { Photo = null })],
        };

    /// <summary>What was taken off is not on any more.</summary>
    private static string? FittedTo(Item item, ExaminationRecord record) =>
        item is { Id: { } part, FittedTo: { } whole } && Assembly.IsRemoved(record, new Core.Identity.FoldedIds(), part, whole)
            ? null
            : item.FittedTo;

    /// <summary>The latest examination recorded here, unless a later one was recorded already.</summary>
    private static PartialDate? LastExamined(Item item, ExaminationRecord record)
    {
        var latest = record
            .Examinations.Where(e => item.Id is not null && string.Equals(e.Item, item.Id, StringComparison.Ordinal) && e.WasLookedAt)
            .Select(e => e.DayAt(record.Visit))
            .Max();
        return latest is { } day && (item.LastExamined is null || item.LastExamined.Latest < day) ? PartialDate.Of(day) : item.LastExamined;
    }
}
