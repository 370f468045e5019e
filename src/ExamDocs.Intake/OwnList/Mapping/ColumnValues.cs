using ExamDocs.Intake.OwnList.Sheets;
using ExamDocs.Intake.OwnList.Words;

namespace ExamDocs.Intake.OwnList.Mapping;

/// <summary>What stands under one heading, on all sheets that have it, and of what kind that is.</summary>
internal sealed class ColumnValues(string heading, IReadOnlyList<ListCell> cells, int rows, KindPhrases kinds)
{
    /// <summary>So many values tell what a column holds.</summary>
    private const int Enough = 2_000;

    private readonly List<ListCell> _cells = [.. cells.Where(c => !UseWords.IsBlank(c.Text)).Take(Enough)];

    public string Heading => heading;

    public IEnumerable<string> Texts => _cells.Select(c => c.Text);

    public bool IsEmpty => _cells.Count == 0;

    /// <summary>Of the rows, how many have a value.</summary>
    public double Filled => rows == 0 ? 0 : (double)cells.Count / rows;

    public int Distinct { get; } = cells.Take(Enough).Select(c => c.Text).Distinct(StringComparer.OrdinalIgnoreCase).Count();

    /// <summary>Different values to values.</summary>
    public double Variety => _cells.Count == 0 ? 0 : (double)Distinct / Math.Min(cells.Count, Enough);

    public double Dates => Share(c => c.Day is not null || ListDate.Of(c.Text) is not null);

    public double Kinds => Share(c => kinds.Find(c.Text) is not null);

    /// <summary>Words about use, without a bare yes and no.</summary>
    public double UsesInWords => Share(c => UseWords.OfState(c.Text) is not null);

    public double Uses => Share(c => UseWords.OfState(c.Text) is not null || UseWords.IsYes(c.Text) || UseWords.IsNo(c.Text));

    public double Codes => Share(c => c.Text.Any(char.IsAsciiDigit) && c.Text.Length <= 30 && c.Day is null);

    public double StandardNumbers =>
        Share(c =>
            PlainWords.Split(c.Text) is { Count: > 1 } words
            && words[0] is "en" or "iso" or "din" or "ansi"
            && words[1].All(char.IsAsciiDigit)
        );

    /// <summary>Characters of a value on average.</summary>
    public double Length => _cells.Count == 0 ? 0 : _cells.Average(c => c.Text.Length);

    /// <summary>1, 2, 3: a number for the row and not for the thing.</summary>
    public bool CountsRows =>
        _cells.Count > 2
        && _cells
            .Select(
                (c, n) =>
                    string.Equals(c.Text, (n + 1).ToString(System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal)
            )
            .All(x => x);

    private double Share(Func<ListCell, bool> has) => _cells.Count == 0 ? 0 : (double)_cells.Count(has) / _cells.Count;

    /// <summary>Of every heading of the tables, in the order in which they stand.</summary>
    public static IReadOnlyList<ColumnValues> Of(IReadOnlyList<ListTable> tables, KindPhrases kinds)
    {
        var cells = new Dictionary<string, List<ListCell>>(StringComparer.OrdinalIgnoreCase);
        var rows = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        foreach (var table in tables)
        {
            foreach (var (column, heading) in table.Headings.OrderBy(h => h.Key))
            {
                if (!cells.TryGetValue(heading, out var of))
                    cells[heading] = of = [];
                of.AddRange(table.Rows.Select(r => r.Row.Cells.GetValueOrDefault(column)).OfType<ListCell>());
                rows[heading] = rows.GetValueOrDefault(heading) + table.Rows.Count;
            }
        }
        return [.. cells.Select(c => new ColumnValues(c.Key, c.Value, rows[c.Key], kinds))];
    }
}
