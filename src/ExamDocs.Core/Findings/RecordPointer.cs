using System.Globalization;

namespace ExamDocs.Core.Findings;

/// <summary>The row of the record that a JSON pointer (RFC 6901) is about: /items/3/serial is about row 3 of items.</summary>
/// <param name="List">Name of the list.</param>
/// <param name="Row">Which row of it, counted from 0.</param>
public readonly record struct RecordPointer(string List, int Row)
{
    /// <summary>Null where the pointer is about no row: the visit, a whole list, the record, or a place that is no row number.</summary>
    public static RecordPointer? ToRow(string pointer)
    {
        var steps = pointer.Split('/', 4);
        return steps.Length > 2 && int.TryParse(steps[2], NumberStyles.None, CultureInfo.InvariantCulture, out var row)
            ? new(steps[1], row)
            : null;
    }

    /// <summary>The pointer itself, then each that it lies within, as far as the row of a list that it is in.</summary>
    public static IEnumerable<string> WithinRow(string pointer)
    {
        foreach (var at in Enclosing(pointer))
        {
            yield return at;
            if (
                char.IsAsciiDigit(at[^1])
                && int.TryParse(at[(at.LastIndexOf('/') + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out _)
            )
                yield break;
        }
    }

    /// <summary>The pointer itself, then each that it lies within, but for the whole.</summary>
    public static IEnumerable<string> Enclosing(string pointer)
    {
        for (var at = pointer; at.Length > 0; at = at[..Math.Max(0, at.LastIndexOf('/'))])
            yield return at;
    }
}
