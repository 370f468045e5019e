using System.IO.Compression;

namespace ExamDocs.Intake.Workbook.Writing;

/// <summary>Takes the times out of a workbook's package, so that equal content gives equal bytes whenever it is written.</summary>
internal static class FixedTimes
{
    /// <summary>The first day that a ZIP can name.</summary>
    private static readonly DateTimeOffset Made = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <param name="workbook">A whole workbook, which is changed.</param>
    public static void Set(Stream workbook)
    {
        using var zip = new ZipArchive(workbook, ZipArchiveMode.Update, leaveOpen: true);
        foreach (var part in zip.Entries)
            part.LastWriteTime = Made;
    }
}
