using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>Puts the rows of a sheet about items to the items they name, and loses none silently.</summary>
internal sealed class ItemDetailRows(RowFilling filling, ReadingNotes notes)
{
    private const string Key = "item";

    /// <summary>No item stands there, so that a row that names none holds back no other: what it was to answer is asked again.</summary>
    public const string OfNoItem = "/items/2147483647/";

    /// <summary>Of two items of one id the first.</summary>
    private readonly Dictionary<string, DraftObject> _items = new(StringComparer.Ordinal);

    /// <summary>Remembers an item by its id.</summary>
    /// <returns>The item.</returns>
    public DraftObject Knows(DraftObject item)
    {
        if (item.Text("id") is { } id)
            _items.TryAdd(id, item);
        return item;
    }

    /// <summary>Adds one entry to a list within its item.</summary>
    public DraftObject Add(RowView row, SheetShape shape)
    {
        var key = new DraftObject(OfNoItem + row.Place);
        filling.Fill(key, row, c => c.Path is Key);
        var id = key.Text(Key);
        if (id is null)
            notes.Report(SheetFindings.NoItemNamed, key.Pointer, row.Place, $"the row names no item");
        if (id is null || !_items.TryGetValue(id, out var item))
        {
            if (id is not null)
                notes.Report(
                    SheetFindings.NoSuchItem,
                    key.Pointer,
                    row.Place,
                    $"no item of this workbook has the id '{CellReading.Shown(id)}'"
                );
            return key;
        }
        var entry = item.List(shape.Path).AddObject();
        filling.Fill(entry, row, c => c.Path is not Key);
        return entry;
    }
}
