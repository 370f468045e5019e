using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;

namespace ExamDocs.Templates.Shared;

/// <summary>Kit that was taken out of use by a maker's safety notice: no paper may read as if somebody had looked at it.</summary>
public static class TakenOutUnseen
{
    /// <summary>Reference of the notice; null for an item that was examined at its visit, and for a visit that was no recall.</summary>
    public static string? NoticeOf(DeterminedVisit visit, DeterminedItem item)
    {
        ArgumentNullException.ThrowIfNull(visit);
        ArgumentNullException.ThrowIfNull(item);
        return item.Examination is { WasLookedAt: true } ? null : RecallVisit.Read(visit.Record.Visit.Reference)?.Reference;
    }
}
