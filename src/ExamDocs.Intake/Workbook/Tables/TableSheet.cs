namespace ExamDocs.Intake.Workbook.Tables;

/// <summary>A sheet that is one table: headings, then a row for each entry.</summary>
/// <param name="Name">Of the sheet, at most 31 characters.</param>
/// <param name="Headings">Each different.</param>
/// <param name="Rows">As many cells as headings: a text, a number, or null for an empty cell.</param>
public sealed record TableSheet(string Name, IReadOnlyList<string> Headings, IReadOnlyList<IReadOnlyList<object?>> Rows)
{
    /// <summary>How columns are shown.</summary>
    public IReadOnlyList<ColumnLook> Looks { get; init; } = [];
}

/// <summary>How a column is shown; what stands in its cells stays the same.</summary>
/// <param name="Heading">Of the column.</param>
public sealed record ColumnLook(string Heading)
{
    /// <summary>Of numbers, as a workbook has it; null for the usual one.</summary>
    public string? Format { get; init; }

    /// <summary>Each number has a bar behind it, as long as the number is great.</summary>
    public bool HasBars { get; init; }

    /// <summary>Rows with this text in the column are grey, and have no bars; null for none.</summary>
    public string? GreyAt { get; init; }
}
