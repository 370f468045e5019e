using System.Globalization;

namespace ExamDocs.Core.Findings;

/// <summary>Where something was typed, in the parts that findings are grouped by.</summary>
/// <param name="File">The file.</param>
/// <param name="Sheet">The sheet of a workbook; null for any other file.</param>
/// <param name="At">The cell, for example F12, or the place in a JSON file, for example #/items/3; empty for the whole.</param>
public sealed record SourcePlace(string File, string? Sheet, string At)
{
    /// <summary>What stands above the cell's column, as it was typed; null where nothing does, and for a row as a whole.</summary>
    public string? Heading { get; init; }

    /// <summary>Letters of the column and number of the row; null for what is no cell.</summary>
    public (string Column, int Row)? Cell
    {
        get
        {
            var digits = At.AsSpan().TrimStart("ABCDEFGHIJKLMNOPQRSTUVWXYZ");
            return digits.Length < At.Length && int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var row)
                ? (At[..^digits.Length], row)
                : null;
        }
    }
}
