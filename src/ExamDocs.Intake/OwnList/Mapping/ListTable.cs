using ExamDocs.Intake.OwnList.Sheets;

namespace ExamDocs.Intake.OwnList.Mapping;

/// <summary>Rows under one row of headings.</summary>
/// <param name="Sheet">The sheet's name.</param>
/// <param name="Headings">By column, each once; a column without one has its letters for a heading.</param>
/// <param name="Rows">Those that are about items.</param>
internal sealed record ListTable(string Sheet, IReadOnlyDictionary<int, string> Headings, IReadOnlyList<TableRow> Rows);

/// <summary>A row about an item.</summary>
/// <param name="Row">As read.</param>
/// <param name="Section">The title that stands above it within the table, where that names a kind of kit; null for none.</param>
/// <param name="Against">A title, or the name of the sheet or file, that says it is out of use; null for none.</param>
internal sealed record TableRow(ListRow Row, string? Section, string? Against);

/// <summary>A row that becomes no item.</summary>
/// <param name="Sheet">The sheet's name.</param>
/// <param name="Row">Its number, counted from 1.</param>
/// <param name="Why">For example: a row of totals.</param>
public sealed record RowLeftOut(string Sheet, int Row, string Why);
