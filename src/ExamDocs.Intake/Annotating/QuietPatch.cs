using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Annotating;

/// <summary>
/// Takes from a part what would fetch something when the workbook is opened: sources of connections, the order to refresh,
/// and formulas that reach beyond the workbook.
/// </summary>
internal sealed class QuietPatch : PartPatch
{
    private static readonly string[] Sources =
    [
        "connection",
        "command",
        "serverCommand",
        "url",
        "post",
        "sourceFile",
        "odcFile",
        "localConnection",
        "htmlTables",
        "editPage",
    ];

    private static readonly string[] Orders = ["refreshOnLoad", "interval", "keepAlive"];

    /// <summary>Root elements of the parts that can hold any of these.</summary>
    public static bool IsOf(string root) =>
        root is "connections" or "queryTable" or "pivotCacheDefinition" or "table" or "chartSpace" or "webPr";

    public static bool IsNeeded(WorkbookPackage package, string part)
    {
        using var reader = package.Read(part);
        while (reader.Read())
        {
            if (!reader.AtStart)
                continue;
            if (
                Sources.Any(name => reader.Attribute(name) is { Length: > 0 })
                || Orders.Any(name => reader.Attribute(name) is not (null or "0" or "false"))
            )
                return true;
            if (Reach.HoldsFormula(reader.Name) && Reach.IsBeyond(RichText.Whole(reader)))
                return true;
        }
        return false;
    }

    protected override string Changed(string text) => Reach.HoldsFormula(Parent) && Reach.IsBeyond(text) ? Reach.Lost : text;

    protected override IReadOnlyList<KeyValuePair<string, string>> Attributes(string name) =>
        [
            .. Sources.Where(a => Source.GetAttribute(a) is { Length: > 0 }).Select(a => KeyValuePair.Create(a, "")),
            .. Orders.Where(a => Source.GetAttribute(a) is not null).Select(a => KeyValuePair.Create(a, "0")),
        ];
}
