using System.Text;
using System.Xml.Linq;

namespace ExamDocs.Intake.Tests.Annotating;

/// <summary>
/// A workbook as its copy must have it: results in the place of formulas, and no part that goes with formulas. Written apart
/// from what makes the copy: it changes whole trees.
/// </summary>
internal static class FrozenParts
{
    public static ZipParts Of(byte[] workbook)
    {
        var parts = new ZipParts(workbook);
        foreach (var part in parts.Names.Where(n => n.EndsWith(".xml", StringComparison.Ordinal)).ToList())
        {
            if (
                Encoding.UTF8.GetString(parts.Bytes(part)).Contains("<f", StringComparison.Ordinal)
                && parts.Xml(part) is { Root.Name.LocalName: "worksheet" } sheet
                && Freeze(sheet.Root!)
            )
                parts.Set(part, Encoding.UTF8.GetBytes(sheet.ToString(SaveOptions.DisableFormatting)));
        }
        foreach (var part in parts.Names.Where(n => n.EndsWith("calcChain.xml", StringComparison.Ordinal)).ToList())
            Without(parts, part);
        return parts;
    }

    private static bool Freeze(XElement sheet)
    {
        var formulas = sheet.Descendants().Where(e => e.Name.LocalName is "f" && e.Parent!.Name.LocalName is "c").ToList();
        foreach (var formula in formulas)
        {
            var cell = formula.Parent!;
            formula.Remove();
            if (cell.Elements().Any(e => e.Name.LocalName is "v" && e.Value.Length > 0) || (string?)cell.Attribute("t") is "str")
                continue;
            cell.Elements().Remove();
            cell.SetAttributeValue("t", "e");
            cell.Add(new XElement(cell.Name.Namespace + "v", "#N/A"));
        }
        return formulas.Count > 0;
    }

    private static void Without(ZipParts parts, string part)
    {
        parts.Without(part);
        foreach (var (list, attribute) in new[] { ("[Content_Types].xml", "PartName"), ("xl/_rels/workbook.xml.rels", "Target") })
        {
            var xml = parts.Xml(list);
            xml.Root!.Elements()
                .Single(e => ((string?)e.Attribute(attribute))?.EndsWith("calcChain.xml", StringComparison.Ordinal) == true)
                .Remove();
            parts.Set(list, Encoding.UTF8.GetBytes(xml.ToString(SaveOptions.DisableFormatting)));
        }
    }
}
