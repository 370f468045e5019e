using System.Globalization;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Annotating;

/// <summary>Names and numbers that the workbook's tabs have already.</summary>
internal sealed record WorkbookNames(IReadOnlySet<string> Sheets, long LastSheetId)
{
    public static WorkbookNames Read(WorkbookPackage package, string mainPart)
    {
        var (names, last) = (new HashSet<string>(StringComparer.OrdinalIgnoreCase), 0L);
        using var reader = package.Read(mainPart);
        while (reader.Read())
        {
            if (!reader.AtStart || !reader.Is("sheet"))
                continue;
            names.Add(reader.Attribute("name") ?? "");
            if (uint.TryParse(reader.Attribute("sheetId"), NumberStyles.None, CultureInfo.InvariantCulture, out var id))
                last = Math.Max(last, id);
        }
        return new(names, last);
    }

    /// <summary>The name given, or with the first number that makes it a new one.</summary>
    public string Fresh(string wanted)
    {
        var name = wanted;
        for (var n = 2; Sheets.Contains(name); n++)
            name = string.Create(CultureInfo.InvariantCulture, $"{wanted} {n}");
        return name;
    }
}
