using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Intake;

/// <summary>What reading gave: a record with what was found wrong on the way, or the reason it cannot be read at all.</summary>
/// <param name="Record">Null where the input is unreadable.</param>
/// <param name="Findings">Findings of the reader, with pointers into the record.</param>
/// <param name="Sources">Where in the input each pointer was typed.</param>
/// <param name="Unreadable">One sentence saying why nothing could be read; null where a record is given.</param>
public sealed record ReadResult(ExaminationRecord? Record, IReadOnlyList<Finding> Findings, SourceMap Sources, string? Unreadable)
{
    /// <summary>
    /// Rows on which something was typed and of which nothing was read, each by its first cell: what was wrong with them stands
    /// among the findings.
    /// </summary>
    public IReadOnlyList<SourcePlace> UnreadRows { get; init; } = [];

    /// <summary>
    /// True where the photos that the record names are not beside it, and what was wrong with them stands among the findings.
    /// </summary>
    public bool PhotosAreElsewhere { get; init; }

    /// <summary>The visit of which it is a part, as a document of ours holds it; null for a whole record.</summary>
    public PartOfVisit? PartOf { get; init; }

    /// <summary>True where it is a workbook or a table of which no sheet is known: it may be a list of the user's own.</summary>
    public bool HasNoKnownSheet { get; init; }
}

/// <summary>The whole visit that a part of its record was cut from.</summary>
/// <param name="Items">Items of the whole.</param>
/// <param name="Sha256">Of the whole record as it would be embedded; lower-case hexadecimal.</param>
public sealed record PartOfVisit(int Items, string Sha256);
