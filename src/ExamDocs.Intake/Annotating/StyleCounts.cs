using System.Xml;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Annotating;

/// <summary>How many fonts, fills and cell styles a workbook has, so that ours can be numbered after them.</summary>
internal sealed record StyleCounts(int Fonts, int Fills, int CellStyles)
{
    public static StyleCounts Read(WorkbookPackage package, string? part)
    {
        var counted = new Dictionary<string, int>(StringComparer.Ordinal);
        if (part is not null)
        {
            using var reader = package.Read(part);
            var collection = "";
            while (reader.Read())
            {
                if (reader.AtStart && reader.Depth == 1)
                    collection = reader.Name;
                else if (reader.AtStart && reader.Depth == 2)
                    counted[collection] = counted.GetValueOrDefault(collection) + 1;
            }
        }
        return new(counted.GetValueOrDefault("fonts"), counted.GetValueOrDefault("fills"), counted.GetValueOrDefault("cellXfs"));
    }
}
