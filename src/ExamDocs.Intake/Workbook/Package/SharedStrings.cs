using System.Globalization;
using System.Xml;
using ExamDocs.Intake.Binding;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>The table of texts that cells point into.</summary>
internal sealed class SharedStrings
{
    private readonly List<string> _texts = [];

    /// <summary>Those struck out in whole or in part, of which there are few.</summary>
    private readonly HashSet<int> _struck = [];

    private SharedStrings() { }

    public int Count => _texts.Count;

    public string this[int index] => _texts[index];

    public bool IsStruck(int index) => _struck.Contains(index);

    public static SharedStrings Read(WorkbookPackage package, string? part, ReadingBudget budget)
    {
        var shared = new SharedStrings();
        var texts = shared._texts;
        if (part is null)
            return shared;
        using var reader = package.Read(part);
        while (reader.Read())
        {
            if (!reader.AtStart)
                continue;
            if (reader.Is("sst"))
                texts.EnsureCapacity(Declared(reader));
            if (!reader.Is("si"))
                continue;
            var (text, isStruck) = RichText.Read(reader);
            if (isStruck)
                shared._struck.Add(texts.Count);
            texts.Add(text);
            budget.Text(texts[^1].Length);
            if (texts.Count > WorkbookLimits.SharedStrings)
                throw new UnreadableWorkbookException("The workbook holds more texts than any recorded visit does.");
        }
        return shared;
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
    /// <summary>All text within the element the reader stands at, to whose end it is read.</summary>
    /// <param name="reader">At its start.</param>
    /// <param name="besides">Name of an element whose text is left out; null for none.</param>
    public static string Whole(PartReader reader, string? besides = null)
    {
        if (reader.IsEmptyElement)
            return "";
        var (text, depth, left) = (reader.Text, reader.Depth, 0);
        text.Clear();
        while (reader.Read() && !(reader.AtEnd && reader.Depth == depth))
        {
            if (besides is not null && reader.Is(besides) && !reader.IsEmptyElement)
                left += reader.AtStart ? 1 : -1;
            else if (left == 0)
                reader.AppendText(text);
        }
        return CellText.Clean(text.ToString());
    }

    /// <summary>Reads to the end of the element the reader stands at.</summary>
    /// <returns>Its text, and whether any of that is struck out.</returns>
    public static (string Text, bool IsStruck) Read(PartReader reader)
    {
        if (reader.IsEmptyElement)
            return ("", false);
        var text = reader.Text;
        text.Clear();
        var (depth, pronunciation, inText) = (reader.Depth, 0, false);
        var (runIsStruck, isStruck) = (false, false);
        while (reader.Read() && !(reader.AtEnd && reader.Depth == depth))
        {
            switch (reader.Node)
            {
                case XmlNodeType.Element when reader.Is("t"):
                    inText = !reader.IsEmptyElement;
                    break;
                case XmlNodeType.Element when reader.Is("r"):
                    runIsStruck = false;
                    break;
                case XmlNodeType.Element when reader.Is("strike"):
                    runIsStruck = StruckStyles.IsStrike(reader);
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
                        isStruck |= reader.AppendText(text) && runIsStruck;
                    break;
            }
        }
        return (CellText.Clean(text.ToString()), isStruck);
    }
}
