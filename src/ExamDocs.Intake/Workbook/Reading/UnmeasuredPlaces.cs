using System.Globalization;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>
/// Rows of a place along a rope that hold no reading. The workbook for a next visit has one for each place of last time; left as it is,
/// it says that nobody measured there, and nothing of it comes into the record. Every other such row is read, and is at fault.
/// </summary>
internal sealed class UnmeasuredPlaces(DetailRows details, ExaminationIndex index, ReadingNotes notes)
{
    private readonly List<(RowView Row, SheetShape Shape, DraftObject StandIn)> _empty = [];

    /// <summary>Places with a reading of some earlier day.</summary>
    private readonly HashSet<(string Item, decimal Position)> _before = [];

    /// <summary>Whether a row is one without a reading or a day: it is kept until all rows are read.</summary>
    /// <returns>What stands for its entry meanwhile; null where the row is to be read like any other.</returns>
    public DraftObject? Takes(RowView row, SheetShape shape)
    {
        if (shape.Path is not "diameters" || Place(row) is not { } place)
            return null;
        var isDated = row.AnyFilled(c => c.Path is "examinedOn");
        if (row.AnyFilled(c => c.Kind is ColumnKind.NumberInList))
        {
            if (isDated)
                _before.Add(place);
            return null;
        }
        if (isDated)
            return null;
        var standIn = new DraftObject(ItemDetailRows.OfNoItem + row.Place);
        standIn.Add("item", new TextNode(standIn.Pointer, place.Item));
        _empty.Add((row, shape, standIn));
        return standIn;
    }

    /// <summary>Reads what was no place of last time; names the places of an examined item that were left out.</summary>
    public void Finish()
    {
        var left = new List<(string Item, decimal Position, RowView Row)>();
        foreach (var (row, shape, _) in _empty)
        {
            if (Place(row) is { } place && _before.Contains(place))
                left.Add((place.Item, place.Position, row));
            else
                _ = details.Add(row, shape);
        }
        foreach (var item in left.GroupBy(l => l.Item, StringComparer.Ordinal))
        {
            if (index.Find(item.Key, null) is { } examination)
                notes.Report(
                    SheetFindings.PlaceNotMeasured,
                    $"{examination.Pointer}/diameters/left",
                    item.First().Row.Place,
                    $"measured last time and not this time, mm from the reference end: {string.Join(", ", item.Select(i => Shown(i.Position)))}",
                    item.Key
                );
        }
        _empty.Clear();
    }

    private static string Shown(decimal position) => position.ToString(CultureInfo.InvariantCulture);

    /// <summary>Null where the row names no item, or no position that is a plain number.</summary>
    private static (string Item, decimal Position)? Place(RowView row)
    {
        string? item = null;
        decimal? position = null;
        foreach (var cell in row.Cells)
        {
            if (row.ColumnAt(cell.Column)?.Path is "item")
                item = cell.Raw.Trim();
            else if (row.ColumnAt(cell.Column)?.Path is "positionMm")
                position = decimal.TryParse(cell.Raw, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var mm) ? mm : null;
        }
        return item is not null && position is { } at ? (item, at) : null;
    }
}
