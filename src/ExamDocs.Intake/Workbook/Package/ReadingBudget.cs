using ExamDocs.Intake.Binding;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>What has been read so far, over all parts, against the limits.</summary>
internal sealed class ReadingBudget
{
    private long _characters;
    private long _inflated;
    private int _cells;
    private int _filled;
    private int _rows;

    /// <summary>Characters of texts read so far.</summary>
    public long Characters => _characters;

    /// <summary>Bytes unpacked so far, over all parts.</summary>
    public long Inflated => _inflated;

    /// <summary>Cells seen so far, empty ones included.</summary>
    public int Cells => _cells;

    public int FilledCells => _filled;

    public int Rows => _rows;

    /// <summary>What a part declares was tested before, and it cannot unpack to more; but many links may lead to one part.</summary>
    public void Unpacked(int bytes)
    {
        if ((_inflated += bytes) > WorkbookLimits.UnpackedBytes)
            throw new UnreadableWorkbookException("The workbook unpacks to more than any recorded visit needs.");
    }

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
