namespace ExamDocs.Templates.Report;

/// <summary>
/// About how high a line of a group will be on paper. It only decides where a heading is repeated, so it need not be exact.
/// </summary>
internal static class LineHeight
{
    // Millimetres, and characters that fit into a column, by the widths and letter sizes of report.css.
    private const double OfText = 3.4;
    private const double Padding = 1.3;
    private const int IdColumn = 13;
    private const int MarkColumn = 16;
    private const int NoteRow = 118;

    /// <summary>Of a line with nothing long in it.</summary>
    public const double Least = OfText + Padding;

    public static double Of(ReportItem item, IReadOnlyList<string> notes) =>
        Padding
        + (OfText * Math.Max(Rows(item.Id.Length, IdColumn), Rows(item.Marking.Length, MarkColumn)))
        + (OfText * Rows(notes.Sum(n => n.Length + 3), NoteRow));

    private static int Rows(int length, int column) => (length + column - 1) / column;
}
