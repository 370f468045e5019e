namespace ExamDocs.Intake.Workbook.Package;

/// <summary>
/// What a workbook may cost at most. The figures are ours: far above any real visit, and low enough that a hostile
/// file is refused within seconds.
/// </summary>
internal static class WorkbookLimits
{
    public const int FileBytes = 32 * 1024 * 1024;

    public const int Parts = 2_000;

    /// <summary>Declared length of one part once inflated.</summary>
    public const long PartBytes = 64L * 1024 * 1024;

    /// <summary>Declared length of all parts together.</summary>
    public const long TotalBytes = 128L * 1024 * 1024;

    /// <summary>What is unpacked in all, each part as often as it is read.</summary>
    public const long UnpackedBytes = 3 * TotalBytes;

    /// <summary>Inflated to packed, tested only on parts above <see cref="RatioFromBytes"/>.</summary>
    public const long Ratio = 200;

    public const long RatioFromBytes = 16L * 1024 * 1024;

    public const int Depth = 64;

    /// <summary>Different element and attribute names in one part.</summary>
    public const int Names = 2_000;

    /// <summary>Bytes between one tag and the next: the longest cell text, with every character escaped, fits.</summary>
    public const int BytesBetweenTags = 1024 * 1024;

    /// <summary>Characters of one cell, the limit that spreadsheet programs have too.</summary>
    public const int TextLength = 32_767;

    /// <summary>Characters of all texts together.</summary>
    public const long TextTotal = 12_000_000;

    public const int Sheets = 200;

    public const int SharedStrings = 500_000;

    public const int Styles = 70_000;

    public const int LastRow = 1_048_576;

    public const int LastColumn = 16_384;

    public const int RowElements = 1_100_000;

    /// <summary>Cells of all sheets, empty ones with a style included.</summary>
    public const int CellElements = 2_000_000;

    public const int FilledCells = 300_000;

    /// <summary>Entries of all lists together.</summary>
    public const int ListEntriesTotal = 300_000;

    /// <summary>Entries that one cell may list.</summary>
    public const int ListEntries = 200;

    public const int Findings = 5_000;
}
