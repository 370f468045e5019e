using System.Xml.Linq;

namespace ExamDocs.Intake.Tests.Annotating;

/// <summary>The list of findings as it stands in a copy: texts row by row, and links by cell.</summary>
internal sealed record FindingsList(List<List<string>> Rows, Dictionary<string, string> Links)
{
    public static FindingsList Of(byte[] workbook, string sheet)
    {
        var parts = new ZipParts(workbook);
        var xml = parts.Xml(parts.SheetPart(parts.Linked("", "officeDocument").Single(), sheet));
        return new(
            [.. xml.Descendants().Where(e => e.Name.LocalName is "row").Select(r => r.Elements().Select(c => c.Value).ToList())],
            xml.Descendants()
                .Where(e => e.Name.LocalName is "hyperlink")
                .ToDictionary(h => (string)h.Attribute("ref")!, h => (string)h.Attribute("location")!, StringComparer.Ordinal)
        );
    }
}
