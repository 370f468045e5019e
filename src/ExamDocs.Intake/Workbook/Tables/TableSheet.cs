namespace ExamDocs.Intake.Workbook.Tables;

/// <summary>A sheet that is one table: headings, then a row for each entry.</summary>
/// <param name="Name">Of the sheet, at most 31 characters.</param>
/// <param name="Headings">Each different.</param>
/// <param name="Rows">As many cells as headings: a text, a number, or null for an empty cell.</param>
public sealed record TableSheet(string Name, IReadOnlyList<string> Headings, IReadOnlyList<IReadOnlyList<object?>> Rows);
