namespace ExamDocs.Intake.Workbook.Package;

/// <summary>What has been read so far, over all parts, against the limits.</summary>
internal sealed class ReadingBudget
{
    private long _characters;
    private int _cells;
    private int _filled;
    private int _rows;

    public void Text(int characters)
    {
        if ((_characters += characters) > WorkbookLimits.TextTotal)
            throw new UnreadableWorkbookException("The workbook holds more text than any recorded visit does.");
    }

    public void Cell()
    {
        if (++_cells > WorkbookLimits.CellElements)
            throw new UnreadableWorkbookException("The workbook has more cells than any recorded visit needs.");
    }

    public void FilledCell()
    {
        if (++_filled > WorkbookLimits.FilledCells)
            throw new UnreadableWorkbookException("The workbook has more cells filled in than any recorded visit needs.");
    }

    public void Row()
    {
        if (++_rows > WorkbookLimits.RowElements)
            throw new UnreadableWorkbookException("The workbook has more rows than any recorded visit needs.");
    }
}
