namespace ExamDocs.Intake.Workbook.Package;

/// <summary>What a workbook holds of a sheet beside its cells.</summary>
/// <param name="Comments">By cell, from top to bottom.</param>
/// <param name="Drawings">What lies over it.</param>
/// <param name="About">Asked when the rows are read.</param>
internal sealed record SheetBeside(
    SortedDictionary<(int Row, int Column), List<string>> Comments,
    SheetDrawings Drawings,
    Func<SheetAbout> About
)
{
    /// <summary>Of a file that holds cells alone.</summary>
    public static SheetBeside Nothing => new([], new SheetDrawings([], 0), () => new SheetAbout());
}
