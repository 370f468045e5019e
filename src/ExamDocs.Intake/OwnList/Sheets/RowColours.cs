using System.Globalization;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.OwnList.Sheets;

/// <summary>
/// Finds the rows that somebody marked with a colour. A colour that most cells of a column have, or that two rows in five have,
/// is decoration: it tells no row from another.
/// </summary>
internal static class RowColours
{
    private const double Decorates = 0.4;

    /// <returns>The colours that were taken for decoration.</returns>
    /// <param name="reader">At the beginning of the sheet's part.</param>
    /// <param name="colours">Of the workbook's styles.</param>
    /// <param name="rows">The filled rows; each gets the colour that marks it.</param>
    public static IReadOnlyList<string> Mark(PartReader reader, CellColours colours, IReadOnlyList<ListRow> rows)
    {
        var painted = Painted(reader, colours, rows.ToDictionary(r => r.Number));
        var ofColumn = painted.GroupBy(p => (p.Column, p.Colour)).ToDictionary(g => g.Key, g => g.Count());
        var marking = painted.Where(p => ofColumn[(p.Column, p.Colour)] <= rows.Count * Decorates).ToList();
        var ofRows = marking
            .GroupBy(p => p.Colour, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.Select(p => p.Row.Number).Distinct().Count(), StringComparer.Ordinal);
        var marks = marking.Where(p => ofRows[p.Colour] <= rows.Count * Decorates).ToList();
        foreach (var (row, _, colour) in marks)
            row.Colour ??= colour;
        return [.. painted.Select(p => p.Colour).Except(marks.Select(m => m.Colour), StringComparer.Ordinal)];
    }

    private static List<(ListRow Row, int Column, string Colour)> Painted(
        PartReader reader,
        CellColours colours,
        Dictionary<int, ListRow> rows
    )
    {
        var painted = new List<(ListRow, int, string)>();
        var (row, column) = (0, 0);
        while (reader.Read())
        {
            if (!reader.AtStart)
                continue;
            if (reader.Is("row"))
                (row, column) = (
                    int.TryParse(reader.Attribute("r"), CultureInfo.InvariantCulture, out var declared) ? declared : row + 1,
                    0
                );
            else if (reader.Is("c"))
            {
                column = reader.Attribute("r") is { } address ? CellAddress.Column(address) ?? column + 1 : column + 1;
                if (
                    colours.Of(reader.Attribute("s")) is { } colour
                    && rows.TryGetValue(row, out var filled)
                    && filled.Cells.ContainsKey(column)
                )
                    painted.Add((filled, column, colour));
            }
        }
        return painted;
    }
}
