namespace ExamDocs.UseCases.Commands;

/// <summary>What became of a list of kit.</summary>
public sealed record AdoptResult
{
    /// <summary>Why nothing was done, a sentence each; empty where the list was read.</summary>
    public IReadOnlyList<string> Refused { get; init; } = [];

    /// <summary>Questions to settle first, a sentence each; until then no workbook is written.</summary>
    public IReadOnlyList<string> ToSettle { get; init; } = [];

    /// <summary>The map that was written; null for none.</summary>
    public string? MapWritten { get; init; }

    /// <summary>The workbook that was written; null for none.</summary>
    public string? Written { get; init; }

    /// <summary>How many items of each kind are in it, most first; the kind's id, or the list's own word for an unknown one.</summary>
    public IReadOnlyList<(string Kind, int Items)> Items { get; init; } = [];

    /// <summary>Every filled row of the list that became no item: sheet, row, why.</summary>
    public IReadOnlyList<(string Sheet, int Row, string Why)> LeftOut { get; init; } = [];

    /// <summary>What the user should know about the items, a sentence each.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];
}
