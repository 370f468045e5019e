using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Annotating;

/// <summary>Where a sheet names the drawing that holds the boxes of its notes.</summary>
internal static class LegacyDrawing
{
    /// <summary>The link's id; null where the sheet names none.</summary>
    public static string? IdOf(WorkbookPackage package, string sheetPart)
    {
        using var reader = package.Read(sheetPart);
        while (reader.Read())
        {
            if (reader.AtStart && reader.Depth == 1 && reader.Is("legacyDrawing"))
                return reader.RelationshipId();
        }
        return null;
    }
}
