using ClosedXML.Excel;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Writing;

/// <summary>Writes headings with their notes; a note says in words what the fill says in colour.</summary>
internal static class HeadingStyle
{
    /// <summary>Stands in every note, so that no name of a machine or its user does.</summary>
    private const string NoteAuthor = "ExamDocs";

    /// <param name="sheet">Where they stand in the first row.</param>
    /// <param name="columns">In their order.</param>
    /// <param name="shown">Those that the row must be high enough for.</param>
    public static void Write(IXLWorksheet sheet, IReadOnlyList<Column> columns, IEnumerable<Column> shown)
    {
        for (var n = 0; n < columns.Count; n++)
        {
            var cell = sheet.Cell(1, n + 1);
            cell.SetValue<string>(Shown(columns[n]));
            Paint(cell, Fill(columns[n]));
            AddNote(cell, NoteOn(columns[n]));
            sheet.Column(n + 1).Width = Width(columns[n]);
        }
        sheet.Row(1).Height = (RowHeight.OfLine * shown.Max(Lines)) + 3;
    }

    /// <summary>The heading as it is written.</summary>
    public static string Shown(Column column) => column.IsStarred ? $"{column.Heading} *" : column.Heading;

    /// <summary>What the note on a heading says: the reader knows it again.</summary>
    public static string NoteOn(Column column) => $"{GroupName(column)}{column.Help}{Choice(column)}";

    public static void Paint(IXLCell cell, string fill)
    {
        cell.Style.Font.Bold = true;
        cell.Style.Alignment.WrapText = true;
        cell.Style.Alignment.Vertical = XLAlignmentVerticalValues.Top;
        cell.Style.Fill.BackgroundColor = XLColor.FromHtml(fill);
        cell.Style.Border.BottomBorder = XLBorderStyleValues.Thin;
        cell.Style.Border.RightBorder = XLBorderStyleValues.Hair;
        cell.Style.Protection.SetLocked(true);
    }

    public static void AddNote(IXLCell cell, string text)
    {
        cell.Comment.SetAuthor(NoteAuthor);
        cell.Comment.AddText(text);
        cell.Comment.Style.Size.SetWidth(34).Size.SetHeight(Math.Max(3, (text.Length / 34) + 2) * RowHeight.OfLine);
    }

    private static string GroupName(Column column) =>
        column.Group switch
        {
            ColumnGroup.Examination => "Examination. ",
            ColumnGroup.Criterion => "Criterion. ",
            ColumnGroup.CriterionNote => "Note to a criterion. ",
            ColumnGroup.LastTime => "Last time. ",
            ColumnGroup.Conclusion => "Conclusion. ",
            _ => "",
        };

    /// <summary>A criterion's help lists its words already.</summary>
    private static string Choice(Column column) =>
        column.Words.Count == 0 || column.Group is ColumnGroup.Criterion ? "" : $" One of: {string.Join(", ", column.Words)}.";

    private static string Fill(Column column) =>
        column.Group switch
        {
            ColumnGroup.Examination => "#E2EFDA",
            ColumnGroup.Criterion => "#FFE699",
            ColumnGroup.CriterionNote => "#FFF7DB",
            ColumnGroup.LastTime => "#E7E6E6",
            ColumnGroup.Conclusion => "#F4CCCC",
            _ => "#DDEBF7",
        };

    /// <summary>Wide enough for the heading's longest word and for the longest word that may be chosen.</summary>
    public static double Width(Column column)
    {
        var longest = column.Heading.Split(' ').Concat(column.Words).Max(w => w.Length);
        return Math.Max(column.Width, (longest * 1.15) + 3);
    }

    private static int Lines(Column column)
    {
        var (lines, used, width) = (1, 0, (int)(Width(column) / 1.15));
        foreach (var word in column.Heading.Split(' '))
        {
            if (used > 0 && used + 1 + word.Length > width)
                (lines, used) = (lines + 1, 0);
            used += word.Length + (used > 0 ? 1 : 0);
        }
        return lines;
    }
}
