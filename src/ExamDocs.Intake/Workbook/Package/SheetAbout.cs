using System.Runtime.InteropServices;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>What a file says of a sheet beside its rows.</summary>
/// <param name="Merges">How many ranges of cells are merged.</param>
/// <param name="FirstMerge">The first of them, for example B2:B5; null where there is none.</param>
/// <param name="LinksOtherWorkbooks">Whether the workbook takes values from others.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct SheetAbout(int Merges, string? FirstMerge, bool LinksOtherWorkbooks)
{
    public static SheetAbout Nothing => default;
}
