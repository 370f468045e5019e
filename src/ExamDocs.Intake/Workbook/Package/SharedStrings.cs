using System.Globalization;
using System.Xml;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>The table of texts that cells point into.</summary>
internal static class SharedStrings
{
    public static List<string> Read(WorkbookPackage package, string? part, ReadingBudget budget)
    {
        var texts = new List<string>();
        if (part is null)
            return texts;
        using var reader = package.Read(part);
        while (reader.Read())
        {
            if (!reader.AtStart)
                continue;
            if (reader.Is("sst"))
                texts.EnsureCapacity(Declared(reader));
            if (!reader.Is("si"))
                continue;
            texts.Add(RichText.Read(reader));
            budget.Text(texts[^1].Length);
            if (texts.Count > WorkbookLimits.SharedStrings)
                throw new UnreadableWorkbookException("The workbook holds more texts than any recorded visit does.");
        }
        return texts;
    }

    /// <summary>How many texts it says it holds: believed only for the room they are given.</summary>
    private static int Declared(PartReader reader) =>
        int.TryParse(reader.Attribute("uniqueCount"), NumberStyles.None, CultureInfo.InvariantCulture, out var count)
            ? Math.Min(count, WorkbookLimits.SharedStrings)
            : 0;
}

/// <summary>The text of an element made of runs; reading aids for its pronunciation are left out.</summary>
internal static class RichText
{
    /// <summary>Reads to the end of the element the reader stands at.</summary>
    public static string Read(PartReader reader)
    {
        if (reader.IsEmptyElement)
            return "";
        var text = reader.Text;
        text.Clear();
        var (depth, pronunciation, inText) = (reader.Depth, 0, false);
        while (reader.Read() && !(reader.AtEnd && reader.Depth == depth))
        {
            switch (reader.Node)
            {
                case XmlNodeType.Element when reader.Is("t"):
                    inText = !reader.IsEmptyElement;
                    break;
                case XmlNodeType.Element:
                    pronunciation += !reader.IsEmptyElement && reader.Is("rPh") ? 1 : 0;
                    break;
                case XmlNodeType.EndElement when reader.Is("t"):
                    inText = false;
                    break;
                case XmlNodeType.EndElement:
                    pronunciation -= reader.Is("rPh") ? 1 : 0;
                    break;
                default:
                    if (inText && pronunciation == 0)
                        reader.AppendText(text);
                    break;
            }
        }
        return CellText.Clean(text.ToString());
    }
}
