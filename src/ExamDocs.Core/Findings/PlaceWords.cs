namespace ExamDocs.Core.Findings;

/// <summary>Says where a finding was made, in as few words as its places allow.</summary>
public static class PlaceWords
{
    /// <summary>Names in a row that are still read: of items, columns, sheets, ranges of rows.</summary>
    private const int Most = 12;

    /// <summary>For example "at F5", "in column F, rows 4 to 12, 15", "of COR-11, COR-12"; empty where the whole file is meant.</summary>
    /// <param name="group">The finding.</param>
    /// <param name="all">Whether every place is named, however many there are.</param>
    public static Message Of(FindingGroup group, bool all = false)
    {
        ArgumentNullException.ThrowIfNull(group);
        var places = group.Places.Where(p => p.At.Length > 0).ToList();
        var most = all ? int.MaxValue : Most;
        if (places is [])
            return Message.None;
        if (places is [var only])
            return only.Cell is null ? (Message)$"at {only.At}" : $"at {only.At}{Under(only.Heading)}";
        if (!places.TrueForAll(p => p.Cell is not null))
            return group.Items.Count > 1
                ? (Message)$"of {List(group.Items.Select(Message.AsIs), most)}"
                : $"at {List(places.Select(p => Message.AsIs(p.At)), most)}";
        var sheets = places.GroupBy(p => p.Sheet ?? p.File, StringComparer.Ordinal).ToList();
        return sheets is [var one]
            ? (Message)$"in {Cells(one, most)}"
            : $"on {List(sheets.Select(s => (Message)$"{s.Key} {Cells(s, most)}"), most, "; ")}";
    }

    /// <summary>Rows that follow each other as a range: "row 4", "rows 4 to 12, 15".</summary>
    public static Message Rows(IEnumerable<int> rows, int most = Most)
    {
        var ranges = new List<(int First, int Last)>();
        foreach (var row in rows.Distinct().Order())
        {
            if (ranges.Count > 0 && ranges[^1].Last == row - 1)
                ranges[^1] = (ranges[^1].First, row);
            else
                ranges.Add((row, row));
        }
        var words = List(ranges.SelectMany(Words), most);
        return ranges is [var (first, last)] && first == last ? (Message)$"row {words}" : $"rows {words}";
    }

    private static Message[] Words((int First, int Last) range) =>
        (range.Last - range.First) switch
        {
            0 => [$"{range.First}"],
            1 => [$"{range.First}", $"{range.Last}"],
            _ => [$"{range.First} to {range.Last}"],
        };

    private static Message Cells(IGrouping<string, SourcePlace> places, int most)
    {
        var heading = places.Select(p => p.Heading).Distinct(StringComparer.Ordinal).ToList() is [var only] ? only : null;
        var cells = places.Select(p => p.Cell!.Value).ToList();
        var columns = cells.Select(c => c.Column).Distinct(StringComparer.Ordinal).ToList();
        var rows = Rows(cells.Select(c => c.Row), most);
        return columns is [var column]
            ? (Message)$"column {column}{Under(heading)}, {rows}"
            : $"{rows}, columns {List(columns.Select(Message.AsIs), most)}";
    }

    private static string Under(string? heading) => heading is null ? "" : $" ({heading})";

    private static Message List(IEnumerable<Message> names, int most, string divider = ", ")
    {
        var all = names.ToList();
        return all.Count <= most ? Message.Join(divider, all) : $"{Message.Join(divider, all.Take(most))} and {all.Count - most} more";
    }
}
