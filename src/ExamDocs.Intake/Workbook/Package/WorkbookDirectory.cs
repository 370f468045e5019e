using ExamDocs.Intake.Binding;

namespace ExamDocs.Intake.Workbook.Package;

internal sealed record SheetEntry(string Name, string Part, bool Hidden);

/// <summary>What the workbook's main part says: its sheets in tab order, and which day its dates count from.</summary>
internal sealed record WorkbookDirectory(
    IReadOnlyList<SheetEntry> Sheets,
    bool Counts1904,
    string? SharedStrings,
    string? Styles,
    bool LinksOthers,
    string Main
)
{
    /// <summary>Names of sheets of another kind, made of a chart, a dialogue or commands, which have no rows.</summary>
    public IReadOnlyList<string> WithoutRows { get; private init; } = [];

    public static WorkbookDirectory Read(WorkbookPackage package)
    {
        var main = Relationships.Of(package, "").Find(r => r.IsOf("officeDocument") && !r.External)
            ?? throw new UnreadableWorkbookException("The file is a zip archive, but not a workbook (.xlsx).");
        if (!package.Has(main.Target))
            throw new UnreadableWorkbookException("A part of the workbook is missing. It may be damaged; save it again.");
        var links = Relationships.Of(package, main.Target).FindAll(r => !r.External);
        var others = new List<string>();
        var (sheets, counts1904) = ReadMain(package, main.Target, links, others);
        return new(
            sheets,
            counts1904,
            Part(package, links, "sharedStrings"),
            Part(package, links, "styles"),
            links.Exists(r => r.IsOf("externalLink")),
            main.Target
        )
        {
            WithoutRows = others,
        };
    }

    private static string? Part(WorkbookPackage package, List<Relationship> links, string kind) =>
        links.Find(r => r.IsOf(kind)) is { } link && package.Has(link.Target) ? link.Target : null;

    private static (List<SheetEntry> Sheets, bool Counts1904) ReadMain(
        WorkbookPackage package,
        string part,
        List<Relationship> links,
        List<string> others
    )
    {
        var sheets = new List<SheetEntry>();
        var counts1904 = false;
        using var reader = package.Read(part);
        while (reader.Read())
        {
            if (!reader.AtStart)
                continue;
            if (reader.Is("workbookPr"))
                counts1904 = IsTrue(reader.Attribute("date1904"));
            else if (reader.Is("sheet") && Sheet(reader, links, others) is { } sheet)
                sheets.Add(sheet);
            else if (!reader.Is("workbook") && reader.Depth == 0)
                throw new UnreadableWorkbookException("The file is an Office document, but not a workbook (.xlsx).");
            if (sheets.Count + others.Count > WorkbookLimits.Sheets)
                throw new UnreadableWorkbookException("The workbook has more than 200 sheets.");
        }
        return (sheets, counts1904);
    }

    private static SheetEntry? Sheet(PartReader reader, List<Relationship> links, List<string> others)
    {
        var id = reader.RelationshipId();
        var name = reader.Attribute("name") ?? "";
        var link = links.Find(r => string.Equals(r.Id, id, StringComparison.Ordinal))
            ?? throw new UnreadableWorkbookException($"The sheet \"{name}\" is missing from the file. It may be damaged; save it again.");
        var hidden = reader.Attribute("state") is "hidden" or "veryHidden";
        if (link.IsOf("worksheet"))
            return new SheetEntry(name, link.Target, hidden);
        others.Add(name);
        return null;
    }

    /// <summary>A boolean attribute of the format: "1", "true" or "on".</summary>
    internal static bool IsTrue(string? attribute) => attribute is "1" or "true" or "on";
}
