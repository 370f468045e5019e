using NodaTime;

namespace ExamDocs.Intake.OwnList.Sheets;

/// <summary>A filled cell of a list.</summary>
/// <param name="Text">As its reader sees it, without blanks around it.</param>
/// <param name="Day">The day, where the cell holds a date and not a text.</param>
internal sealed record ListCell(string Text, LocalDate? Day = null)
{
    /// <summary>A line goes through it.</summary>
    public bool IsStruck { get; init; }

    /// <summary>An error, a formula without its result, or a number of more digits than a cell keeps.</summary>
    public bool IsUnsound { get; init; }

    /// <summary>It counts others: what a row of totals is known by.</summary>
    public bool IsFormula { get; init; }
}

/// <summary>A row with at least one filled cell.</summary>
/// <param name="Number">Counted from 1.</param>
/// <param name="Cells">By column, counted from 1.</param>
internal sealed record ListRow(int Number, SortedDictionary<int, ListCell> Cells)
{
    public bool IsHidden { get; init; }

    /// <summary>What marks this row and not most of the others, for example "fill FFFF0000"; null where nothing does.</summary>
    public string? Colour { get; set; }

    /// <summary>What was written beside its cells.</summary>
    public List<string> Comments { get; } = [];

    public string? At(int? column) => column is { } at && Cells.TryGetValue(at, out var cell) ? cell.Text : null;
}

/// <summary>One sheet of a list, or one file of separated values.</summary>
/// <param name="Name">Its name; of a file its name without the ending.</param>
/// <param name="Rows">From top to bottom.</param>
internal sealed record ListSheet(string Name, IReadOnlyList<ListRow> Rows)
{
    /// <summary>What of the sheet has to be named, a sentence each.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>A file of separated values, which has nothing hidden or merged.</summary>
    public bool IsSeparated { get; init; }
}

/// <summary>A firm's own list as it was read.</summary>
public sealed record ListBook
{
    internal ListBook(string fileName, IReadOnlyList<ListSheet> sheets, string? unreadable) =>
        (FileName, Sheets, Unreadable) = (fileName, sheets, unreadable);

    /// <summary>A list that cannot be read.</summary>
    /// <param name="fileName">Its name without a folder.</param>
    /// <param name="why">One sentence.</param>
    public static ListBook Refused(string fileName, string why) => new(fileName, [], why);

    public string FileName { get; }

    public string? Unreadable { get; }

    internal IReadOnlyList<ListSheet> Sheets { get; }

    /// <summary>How many rows have something in them.</summary>
    public int FilledRows => Sheets.Sum(s => s.Rows.Count);
}
