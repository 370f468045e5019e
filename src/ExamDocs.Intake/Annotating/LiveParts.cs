using System.Xml;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Annotating;

/// <summary>
/// Plans that the copy takes nothing from outside: no formula is left in it, no link to another workbook, no source of a
/// connection. A part that holds none of these is copied as it is.
/// </summary>
internal static class LiveParts
{
    public static void Plan(WorkbookPackage package, PartChanges changes, string mainPart)
    {
        foreach (var link in Relationships.Of(package, mainPart).Where(l => LinksPatch.IsOfPartLeftOut(l) && package.Has(l.Target)))
            changes.LeaveOut(link.Target);
        var parts = package.Entries.Select(e => WorkbookPackage.Normal(e.FullName));
        foreach (var part in parts.Where(p => p.EndsWith(".xml", StringComparison.OrdinalIgnoreCase) && !changes.IsPlanned(p)))
        {
            var root = RootOf(package, part);
            if (root is "worksheet" or "macrosheet" && FormulaCells.Of(package, part) is { Any: true } formulas)
                changes.Patch(part, new FrozenSheet(formulas));
            else if (QuietPatch.IsOf(root) && QuietPatch.IsNeeded(package, part))
                changes.Patch(part, new QuietPatch());
        }
    }

    /// <summary>Empty for a part that no program could read either.</summary>
    private static string RootOf(WorkbookPackage package, string part)
    {
        try
        {
            using var xml = GuardedXml.Open(package.Open(part), keepAll: false);
            xml.MoveToContent();
            return xml.LocalName;
        }
        catch (XmlException)
        {
            return "";
        }
    }
}
