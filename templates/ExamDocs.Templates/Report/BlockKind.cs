using ExamDocs.Core.Records;

namespace ExamDocs.Templates.Report;

/// <summary>Why an item has a block of its own in a schedule, in the order in which the blocks are printed.</summary>
public enum BlockKind
{
    Withdrawn,

    /// <summary>It may be used until a date, or has a defect.</summary>
    Limited,

    /// <summary>It was examined after the day by which it was due.</summary>
    Overdue,

    /// <summary>Examined before first use or after installation, which has its own paragraph of the law.</summary>
    First,

    /// <summary>It is in order, and its texts are too long for a line.</summary>
    Long,
}

internal static class BlockKinds
{
    // Lengths in characters. A line that is longer would fill a good part of a page by itself.
    private const int LongestNote = 420;
    private const int LongestName = 60;
    private const int LongestDescription = 200;
    private const int LongestHeading = 900;

    /// <summary>Null for an item in order, which has a line.</summary>
    public static BlockKind? Of(ReportItem item) =>
        item switch
        {
            { Determined.Outcome: not (Outcome.Fit or Outcome.FitUntil) } => BlockKind.Withdrawn,
            { Determined.Outcome: Outcome.FitUntil } or { Defects.Count: > 0 } => BlockKind.Limited,
            { Determined.WasDueBy: not null } => BlockKind.Overdue,
            { IsFirst: true } => BlockKind.First,
            _ => IsTooLong(item) ? BlockKind.Long : null,
        };

    private static bool IsTooLong(ReportItem item) =>
        item.Id.Length > LongestName
        || item.Marking.Length > 2 * LongestName
        || item.Description.Length > LongestDescription
        || string.Concat(item.Notes).Length > LongestNote
        || item.Group.Length > LongestHeading;
}
