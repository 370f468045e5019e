using ExamDocs.Core.Records;
using ExamDocs.Intake.OwnList.Mapping;
using ExamDocs.Intake.OwnList.Sheets;
using ExamDocs.Intake.OwnList.Words;
using NodaTime;

namespace ExamDocs.Intake.OwnList.Taking;

/// <summary>
/// Finds all that a row says of its item's use: in the columns for that, in any other cell, in comments, in the titles above it, by
/// a line through it or by its colour. The worst of it counts, and a word that is not known counts against the item.
/// </summary>
internal sealed class UseOfRow(MappedTable table, TableRow row, ListMap map, IReadOnlyDictionary<string, UseMeaning?> words, LocalDate asOf)
{
    private readonly List<AgainstItem> _against = [];

    /// <summary>Cells that say nothing against the item, by their columns: they are kept as remarks.</summary>
    public HashSet<int> Remarks { get; } = [];

    /// <summary>Where a column for what is out of use gives a day to come: its planned last day of service.</summary>
    public PartialDate? PlannedEnd { get; private set; }

    public bool IsStored { get; private set; }

    public IReadOnlyList<AgainstItem> Against => _against;

    public void Look()
    {
        var about = new HashSet<int>();
        foreach (var field in new[] { ListField.State, ListField.OutOfUse, ListField.InUse })
        {
            foreach (var (column, heading) in table.Columns(field).Where(c => row.Row.Cells.ContainsKey(c.Column)))
            {
                about.Add(column);
                LookAt(field, column, heading, row.Row.Cells[column]);
            }
        }
        foreach (var (column, heading) in table.Columns(ListField.InUse).Where(c => !row.Row.Cells.ContainsKey(c.Column)))
        {
            // Where most rows are ticked as in use, one that is not ticked is not.
            if (!IsResult(heading) && table.IsMostlyFilled(column))
                Add(UseMeaning.Withdrawn, $"{heading} is empty", null);
        }
        foreach (var (column, cell) in row.Row.Cells.Where(c => !about.Contains(c.Key)))
            Add(
                Meaning(cell.Text, UseWords.AgainstInCell),
                $"{table.Table.Headings[column]} '{Samples.Short(cell.Text)}'",
                DayIn(cell.Text)
            );
        foreach (var comment in row.Row.Comments)
            Add(UseWords.OfState(comment) ?? UseWords.Against(comment), $"comment '{Samples.Short(comment)}'", DayIn(comment));
        if (row.Against is { } title)
            Add(UseWords.Against(title), $"it stands under '{Samples.Short(title)}'", null);
        if (row.Row.Cells.Values.Any(c => c.IsStruck))
            Add(UseMeaning.Withdrawn, "struck out", null);
        if (
            row.Row.Colour is { } colour
            && map.Colours.FirstOrDefault(c => string.Equals(c.Colour, colour, StringComparison.Ordinal))?.Means is not UseMeaning.Remark
        )
            Add(UseMeaning.Withdrawn, $"marked with a colour ({colour})", null);
    }

    private void LookAt(ListField field, int column, string heading, ListCell cell)
    {
        if (!cell.IsUnsound && UseWords.IsBlank(cell.Text))
            return;
        var means = field switch
        {
            _ when cell.IsUnsound => UseMeaning.Withdrawn,
            ListField.State => Meaning(cell.Text, UseWords.OfState) ?? UseMeaning.Withdrawn,
            ListField.InUse => InUse(cell),
            _ => OutOfUse(heading, cell),
        };
        if (means is UseMeaning.Remark)
            Remarks.Add(column);
        else if (means is UseMeaning.Stored)
            IsStored = Remarks.Add(column) || IsStored;
        var day = DateOf(cell) ?? DayIn(cell.Text) ?? (field is ListField.OutOfUse ? null : LastExamined());
        Add(means, $"{heading} '{Samples.Short(cell.Text)}'", day);
    }

    /// <summary>A result that is missing says nothing: the item may be new.</summary>
    private static bool IsResult(string heading) => PlainWords.Of(heading) is "pass" or "passed" or "bestanden" or "conforme";

    private UseMeaning InUse(ListCell cell) =>
        UseWords.IsNo(cell.Text) ? UseMeaning.Withdrawn
        : UseWords.IsYes(cell.Text) || DateOf(cell) is not null ? UseMeaning.Remark
        : Meaning(cell.Text, UseWords.OfState) ?? UseMeaning.Withdrawn;

    private UseMeaning OutOfUse(string heading, ListCell cell)
    {
        if (UseWords.IsNo(cell.Text) || UseWords.OfState(cell.Text) is UseMeaning.Remark)
            return UseMeaning.Remark;
        if (DateOf(cell) is { } day && day.Earliest > asOf)
        {
            PlannedEnd = PlannedEnd is null || day.Latest < PlannedEnd.Latest ? day : PlannedEnd;
            return UseMeaning.Remark;
        }
        var ofHeading = UseWords.Against(heading) ?? UseMeaning.Withdrawn;
        var ofCell = UseWords.OfState(cell.Text) ?? UseMeaning.Withdrawn;
        return ofHeading > ofCell ? ofHeading : ofCell;
    }

    private UseMeaning? Meaning(string text, Func<string, UseMeaning?> known) =>
        words.GetValueOrDefault(PlainWords.Of(text)) ?? known(text);

    private void Add(UseMeaning? means, string why, PartialDate? on)
    {
        if (means is { } known and >= UseMeaning.Lost)
            _against.Add(new AgainstItem(known, why, on));
    }

    private PartialDate? LastExamined() => table.Cell(row.Row, ListField.LastExamined) is { } cell ? DateOf(cell) : null;

    private PartialDate? DateOf(ListCell cell) => cell.Day is { } day ? PartialDate.Of(day) : ListDate.Of(cell.Text)?.In(map.Dates);

    /// <summary>A date that stands among words: "scrapped 2024-03-12".</summary>
    private PartialDate? DayIn(string text) =>
        text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
            .Select(word => word.Trim(',', ';', '(', ')', ':'))
            .Where(word => word.Length >= 6)
            .Select(word => ListDate.Of(word)?.In(map.Dates))
            .FirstOrDefault(date => date is not null);
}
