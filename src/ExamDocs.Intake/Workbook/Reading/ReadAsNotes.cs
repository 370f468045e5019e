using System.Globalization;
using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>What kind of value was typed in another way than the record format has it.</summary>
internal enum ReadAsKind
{
    Word,
    Date,
    Number,
}

/// <summary>
/// Remembers what was typed in another way than the record format has it, and how it was read: said once for each kind and column,
/// with the cells, of which each can be looked at.
/// </summary>
internal sealed class ReadAsNotes(ReadingNotes notes)
{
    /// <summary>Cells of one column that are remembered one by one; the others are counted.</summary>
    private const int MostRemembered = 2_000;

    private const int MostColumns = 1_000;

    private const int MostTexts = 6;

    private const int MostCells = 8;

    private readonly Dictionary<(ReadAsKind Kind, string Sheet, string Heading), Group> _groups = [];

    /// <summary>The sheet being read.</summary>
    public string Sheet { get; set; } = "";

    public void Add(ReadAsKind kind, string heading, JsonPlace pointer, string typed, string read)
    {
        if (!_groups.TryGetValue((kind, Sheet, heading), out var group))
        {
            // Headings of rows are the user's own words: there may be any number of them.
            var key = (kind, Sheet, _groups.Count < MostColumns ? heading : "and others");
            if (!_groups.TryGetValue(key, out group))
                _groups[key] = group = new Group();
        }
        group.Count++;
        if (group.Cells.Count < MostRemembered)
            group.Cells.Add((pointer.ToString(), typed, read));
    }

    /// <summary>Says what was read; to be called when the places of all cells are known.</summary>
    public void Finish()
    {
        foreach (var ((kind, sheet, heading), group) in _groups)
        {
            var cells = group.Cells.ConvertAll(c => (c.Pointer, Cell: CellOf(c.Pointer), Text: Text(c.Typed, c.Read)));
            var said = cells.GroupBy(c => c.Text).Take(MostTexts).Select(g => Said(g.Key, [.. g.Select(c => c.Cell)]));
            var named = cells.GroupBy(c => c.Text).Take(MostTexts).Sum(g => g.Count());
            notes.Report(
                ReadAsFindings.ReadAs.At(
                    ReadingNotes.Outside(sheet, $"{cells[0].Cell}/{kind}"),
                    group.Count > named
                        ? (Message)(
                            $"in the column '{CellReading.Shown(heading)}' of {sheet}: {Message.Join("; ", said)}; and "
                            + $"{group.Count - named} more"
                        )
                        : $"in the column '{CellReading.Shown(heading)}' of {sheet}: {Message.Join("; ", said)}"
                ) with
                {
                    Also = [.. cells.Select(c => new FurtherPlace(c.Pointer, c.Text))],
                },
                $"{sheet}!{cells[0].Cell}"
            );
        }
    }

    private static Message Text(string typed, string read) => $"'{CellReading.Shown(typed)}' read as {CellReading.Shown(read)}";

    private static Message Said(Message text, List<string> cells) =>
        cells.Count <= MostCells
            ? (Message)$"{text} ({string.Join(", ", cells)})"
            : $"{text} ({string.Join(", ", cells.Take(MostCells))} and {cells.Count - MostCells} more cells)";

    /// <summary>Without its sheet, which is said already.</summary>
    private string CellOf(string pointer)
    {
        for (var at = pointer; at.Length > 0; at = at[..at.LastIndexOf('/')])
        {
            if (notes.Cells.TryGetValue(at, out var place))
                return place[(place.LastIndexOf('!') + 1)..];
        }
        return "?";
    }

    private sealed class Group
    {
        public int Count { get; set; }

        public List<(string Pointer, string Typed, string Read)> Cells { get; } = [];
    }
}
