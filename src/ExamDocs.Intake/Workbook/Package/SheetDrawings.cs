using System.Globalization;
using System.Xml;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>What lies over the cells of a sheet.</summary>
/// <param name="Texts">Texts of shapes, with the cell that each begins at.</param>
/// <param name="Others">How many things without a text of their own: pictures, charts, controls.</param>
internal sealed record SheetDrawings(IReadOnlyList<(int Row, int Column, string Text)> Texts, int Others)
{
    /// <summary>Far more than anybody draws; the rest is only counted.</summary>
    private const int MostTexts = 200;

    public static SheetDrawings Of(WorkbookPackage package, string sheetPart, ReadingBudget budget)
    {
        var texts = new List<(int, int, string)>();
        var others = 0;
        foreach (
            var link in Relationships
                .Of(package, sheetPart)
                .Where(l => !l.External && package.Has(l.Target))
                .DistinctBy(l => l.Target, StringComparer.OrdinalIgnoreCase)
        )
        {
            if (link.IsOf("drawing"))
                others += Drawing(package, link.Target, texts, budget);
            else if (link.IsOf("vmlDrawing"))
                others += Controls(package, link.Target);
        }
        return new(texts, others);
    }

    private static int Drawing(WorkbookPackage package, string part, List<(int, int, string)> texts, ReadingBudget budget)
    {
        var others = 0;
        using var reader = package.Read(part);
        while (reader.Read())
        {
            if (!reader.AtStart || reader.Name is not ("twoCellAnchor" or "oneCellAnchor" or "absoluteAnchor"))
                continue;
            budget.Cell();
            var (row, column, text) = Anchored(reader);
            if (text.Length == 0 || texts.Count >= MostTexts)
                others++;
            else
                texts.Add((row, column, text));
        }
        return others;
    }

    /// <summary>Reads to the end of one thing drawn.</summary>
    private static (int Row, int Column, string Text) Anchored(PartReader reader)
    {
        var (depth, row, column) = (reader.Depth, 1, 1);
        var said = new GatheredText();
        while (reader.Read() && !(reader.AtEnd && reader.Depth == depth))
        {
            if (!reader.AtStart)
                continue;
            if (reader.Is("from"))
                (row, column) = From(reader);
            else if (reader.Is("t"))
                said.Add(RichText.Whole(reader) + " ");
        }
        return (row, column, said.ToString().Trim());
    }

    private static (int Row, int Column) From(PartReader reader)
    {
        var (depth, row, column) = (reader.Depth, 1, 1);
        while (reader.Read() && !(reader.AtEnd && reader.Depth == depth))
        {
            if (reader.AtStart && reader.Is("row"))
                row = Number(reader, WorkbookLimits.LastRow);
            else if (reader.AtStart && reader.Is("col"))
                column = Number(reader, WorkbookLimits.LastColumn);
        }
        return (row, column);
    }

    /// <summary>Counted from 0 in the file, from 1 here.</summary>
    private static int Number(PartReader reader, int most) =>
        int.TryParse(RichText.Whole(reader), NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number < most
            ? number + 1
            : 1;

    /// <summary>What an old drawing holds beside the boxes of notes. One that no parser reads counts as one thing.</summary>
    private static int Controls(WorkbookPackage package, string part)
    {
        var others = 0;
        try
        {
            using var reader = package.Read(part);
            while (reader.Read())
                others += reader.AtStart && reader.Is("ClientData") && reader.Attribute("ObjectType") is not "Note" ? 1 : 0;
        }
        catch (XmlException)
        {
            others++;
        }
        return others;
    }
}
