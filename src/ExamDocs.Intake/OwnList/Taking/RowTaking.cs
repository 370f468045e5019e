using ExamDocs.Core.Records;
using ExamDocs.Intake.Binding;
using ExamDocs.Intake.OwnList.Mapping;
using ExamDocs.Intake.OwnList.Sheets;
using ExamDocs.Intake.OwnList.Words;

namespace ExamDocs.Intake.OwnList.Taking;

/// <summary>Makes an item of a row. What finds no place of its own is kept in the description, under its heading.</summary>
internal sealed class RowTaking(MappedTable table, TableRow row, ListMap map, UseOfRow use)
{
    private static readonly char[] BetweenStandards = [';', ',', '\n', '+'];

    private readonly SortedDictionary<int, string> _remarks = [];

    /// <summary>Headings under which a date or a load stands that was not read.</summary>
    public List<string> NotRead { get; } = [];

    /// <summary>Headings of values that the description has no room for.</summary>
    public List<string> NoRoom { get; } = [];

    /// <param name="id">The item's id.</param>
    /// <param name="category">A category's id, or the list's own word for an unknown one; null where nothing tells it.</param>
    /// <param name="split">Tells maker and model apart.</param>
    public Item Take(string id, string? category, MakerSplit split)
    {
        var both = Text(ListField.MakerAndModel) is { } value ? split.Of(value) : (Maker: null, Model: null);
        var item = new Item
        {
            Id = id,
            Category = category,
            Maker = Text(ListField.Maker) ?? both.Maker,
            Model = Text(ListField.Model) ?? (both.Model is "" ? null : both.Model),
            PartNumber = Text(ListField.PartNumber),
            Serial = Text(ListField.Serial),
            OwnersMark = Text(ListField.OwnersMark),
            Manufactured = Date(ListField.Manufactured),
            Purchased = Date(ListField.Purchased),
            FirstUsed = Date(ListField.FirstUsed),
            ObsoleteOn = Date(ListField.ObsoleteOn) ?? use.PlannedEnd,
            LastExamined = Date(ListField.LastExamined),
            SafeWorkingLoad = Load(ListField.SafeWorkingLoad),
            MarkedStrength = Load(ListField.MarkedStrength),
            Standards = Text(ListField.Standards)
                ?.Split(BetweenStandards, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
                ?? [],
            FittedTo = Text(ListField.FittedTo),
            Status = Status(),
        };
        return item with { Description = Described(item) };
    }

    private ItemStatus? Status() =>
        use.Against.Any(a => a.Means is UseMeaning.Destroyed) ? ItemStatus.Destroyed
        : use.Against.Any(a => a.Means is UseMeaning.Lost) ? ItemStatus.Lost
        : use.IsStored && use.Against.Count == 0 ? ItemStatus.Stored
        : null;

    /// <summary>A value that a line goes through is not taken for what it was: its author took it back.</summary>
    private ListCell? Cell(ListField field)
    {
        var cell = table.Cell(row.Row, field);
        if (cell is null || !cell.IsStruck || IsStruckWhole())
            return cell;
        Remark(field, $"{cell.Text} (struck out)");
        return null;
    }

    private bool IsStruckWhole() => row.Row.Cells.Values.Count(c => c.IsStruck) * 2 >= row.Row.Cells.Count;

    private string? Text(ListField field) => Cell(field)?.Text;

    private PartialDate? Date(ListField field)
    {
        if (Cell(field) is not { } cell)
            return null;
        if (cell.Day is { Year: >= 1900 and <= 2200 } day)
            return PartialDate.Of(day);
        return ListDate.Of(cell.Text)?.In(map.Dates) is { } read ? read : NotReadAs<PartialDate>(field, cell.Text);
    }

    private Load? Load(ListField field) =>
        Cell(field) is not { } cell ? null
        : ListLoad.Of(cell.Text, table.Table.Headings[table.Column(field)!.Value]) is { } load ? load
        : NotReadAs<Load>(field, cell.Text);

    private T? NotReadAs<T>(ListField field, string text)
        where T : class
    {
        NotRead.Add(table.Table.Headings[table.Column(field)!.Value]);
        Remark(field, text);
        return null;
    }

    private void Remark(ListField field, string text) => _remarks[table.Column(field)!.Value] = text;

    /// <summary>What it is, then in brackets what the list says besides, which decides nothing.</summary>
    private string Described(Item item)
    {
        var own = Text(ListField.Description) ?? table.Text(row.Row, ListField.Category) ?? row.Section ?? item.Model;
        foreach (var (column, _) in table.Columns(ListField.Remark).Where(c => row.Row.Cells.ContainsKey(c.Column)))
            _remarks[column] = row.Row.Cells[column].Text;
        foreach (var column in use.Remarks)
            _remarks[column] = row.Row.Cells[column].Text;
        var said = _remarks
            .Where(r => !UseWords.IsBlank(r.Value))
            .Select(r => (Heading: table.Table.Headings[r.Key], Text: $"{table.Table.Headings[r.Key]}: {r.Value}"))
            .Concat(row.Row.Comments.Select(c => (Heading: "comment", Text: $"comment: {c}")));
        var described = own ?? "not described in the list";
        var brackets = "";
        foreach (var (heading, text) in said)
        {
            var next = $"{brackets}{(brackets.Length == 0 ? "" : "; ")}{text.ReplaceLineEndings(" ")}";
            if (described.Length + next.Length > TextGuard.MaxText - 40)
                NoRoom.Add(heading);
            else
                brackets = next;
        }
        return brackets.Length == 0 ? described : $"{described} (in the owner's list: {brackets})";
    }
}
