using System.Runtime.InteropServices;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>A byte wide, because many cells are held at once.</summary>
internal enum CellKind : byte
{
    Text,
    Number,
    Boolean,

    /// <summary>A date spelt out in ISO 8601, not counted in days.</summary>
    IsoDate,

    /// <summary>#N/A and the like.</summary>
    Error,

    /// <summary>A formula that was saved without its result.</summary>
    FormulaWithoutValue,

    /// <summary>A pointer to a shared text that is not there, or a kind of cell that the format does not have.</summary>
    Damaged,
}

/// <summary>A filled cell as the file holds it.</summary>
/// <param name="Column">Counted from 1.</param>
/// <param name="Raw">Its text, or the characters of its number.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Cell(int Column, CellKind Kind, string Raw, NumberFormat Format, bool IsFormula)
{
    /// <summary>A line goes through it, or through part of its text.</summary>
    public bool IsStruck { get; init; }
}

/// <summary>A row with at least one filled cell.</summary>
/// <param name="Number">Counted from 1.</param>
internal sealed record SheetRow(int Number, bool Hidden, ArraySegment<Cell> Cells);
