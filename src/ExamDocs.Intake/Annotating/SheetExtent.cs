using System.Globalization;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Annotating;

/// <summary>What a sheet and its rows say of how far they reach, widened for the cells that are made.</summary>
internal static class SheetExtent
{
    /// <summary>Null where nothing needs to change, or what stands there cannot be read.</summary>
    public static string? Dimension(string? reference, IReadOnlyList<Mark> marks)
    {
        if (
            reference?.Split(':') is not [var first, .. var rest]
            || rest.Length > 1
            || marks.Count == 0
            || CellAddress.Parse(first) is not { } from
            || CellAddress.Parse(rest.Length == 0 ? first : rest[0]) is not { } to
        )
            return null;
        (int Row, int Column) least = (Math.Min(from.Row, marks.Min(m => m.Row)), Math.Min(from.Column, marks.Min(m => m.Column)));
        (int Row, int Column) most = (Math.Max(to.Row, marks.Max(m => m.Row)), Math.Max(to.Column, marks.Max(m => m.Column)));
        return least == from && most == to ? null : $"{CellAddress.Of(least.Row, least.Column)}:{CellAddress.Of(most.Row, most.Column)}";
    }

    /// <inheritdoc cref="Dimension"/>
    public static string? Spans(string? spans, IReadOnlyCollection<Mark> marks)
    {
        // Several spans mean blank columns in between: too rare to join; they only help to read faster.
        if (
            spans?.Split(':') is not [var first, var last]
            || marks.Count == 0
            || !int.TryParse(first, NumberStyles.None, CultureInfo.InvariantCulture, out var from)
            || !int.TryParse(last, NumberStyles.None, CultureInfo.InvariantCulture, out var to)
        )
            return null;
        var (least, most) = (Math.Min(from, marks.Min(m => m.Column)), Math.Max(to, marks.Max(m => m.Column)));
        return least == from && most == to ? null : string.Create(CultureInfo.InvariantCulture, $"{least}:{most}");
    }
}
