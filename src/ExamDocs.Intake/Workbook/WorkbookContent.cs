using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Workbook;

/// <summary>What a workbook holds, as the tree that the same record in JSON would give.</summary>
/// <param name="Root">Null where the workbook cannot be read at all.</param>
/// <param name="Cells">
/// JSON pointer to place, for example <c>/items/3/serial</c> to <c>Rope bridges!F5</c>, to be looked up: members left
/// empty under a known heading are found too, and <c>/examinations/3/observations/core-visible</c> for a criterion.
/// </param>
/// <param name="Findings">What only a workbook can have wrong with it.</param>
/// <param name="Unreadable">One sentence saying why nothing could be read; null where a root is given.</param>
public sealed record WorkbookContent(
    ObjectNode? Root,
    IReadOnlyDictionary<string, string> Cells,
    IReadOnlyList<Finding> Findings,
    string? Unreadable
)
{
    /// <summary>What stands above the cell of a pointer, as typed.</summary>
    public Func<string, string?> HeadingOf { get; init; } = _ => null;

    /// <summary>Sheet and number of each row that something stands on, and of which nothing was read.</summary>
    public IReadOnlyList<(string Sheet, int Row)> UnreadRows { get; init; } = [];

    /// <inheritdoc cref="ReadResult.HasNoKnownSheet"/>
    public bool HasNoKnownSheet { get; init; }
}
