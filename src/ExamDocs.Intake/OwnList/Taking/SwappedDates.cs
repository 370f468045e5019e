using ExamDocs.Intake.OwnList.Mapping;
using ExamDocs.Intake.OwnList.Words;

namespace ExamDocs.Intake.OwnList.Taking;

/// <summary>
/// Finds columns in which a spreadsheet program has read some dates month first: what could be read so has become a date, with no day
/// after the twelfth, and what could not has stayed a text.
/// </summary>
internal static class SwappedDates
{
    private const int Enough = 3;

    private const int Months = 12;

    public static IEnumerable<string> In(IEnumerable<MappedTable> tables) =>
        from table in tables
        from field in Enum.GetValues<ListField>()
        where ListFields.IsDate(field) && table.Has(field)
        let cells = table.Table.Rows.Select(r => table.Cell(r.Row, field)).OfType<Sheets.ListCell>().ToList()
        let days = cells.Where(c => c.Day is not null).ToList()
        let texts = cells.Where(c => c.Day is null).Select(c => ListDate.Of(c.Text)).OfType<ListDate>().ToList()
        where
            days.Count >= Enough
            && texts.Count(t => t.Only is { IsWholeDay: true }) >= Enough
            && days.TrueForAll(d => d.Day!.Value.Day <= Months)
            && texts.TrueForAll(t => t.Only is null or { IsWholeDay: false } or { Day: > Months })
        select table.Table.Headings[table.Column(field)!.Value];
}
