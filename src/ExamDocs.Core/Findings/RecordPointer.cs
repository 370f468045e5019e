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
}
