namespace ExamDocs.Intake.Workbook.Package;

/// <summary>What users wrote about the cells of a sheet: notes, and threads of comments.</summary>
internal static class SheetComments
{
    /// <summary>
    /// Of every cell that has any, all of it, one below the other; row and column 0 where the file does not name the cell.
    /// </summary>
    public static SortedDictionary<(int Row, int Column), List<string>> Of(WorkbookPackage package, string sheetPart, ReadingBudget budget)
    {
        var found = new SortedDictionary<(int Row, int Column), List<string>>();
        foreach (
            var link in Relationships
                .Of(package, sheetPart)
                .Where(l => !l.External && (l.IsOf("comments") || l.IsOf("threadedComment")) && package.Has(l.Target))
                .DistinctBy(l => l.Target, StringComparer.OrdinalIgnoreCase)
        )
        {
            using var reader = package.Read(link.Target);
            while (reader.Read())
            {
                if (reader.AtStart && (reader.Is("comment") || reader.Is("threadedComment")))
                    Add(reader, found, budget);
            }
        }
        return found;
    }

    private static void Add(PartReader reader, SortedDictionary<(int Row, int Column), List<string>> found, ReadingBudget budget)
    {
        budget.Cell();
        var cell = CellAddress.Parse((reader.Attribute("ref") ?? "").Split(':')[0]) ?? (0, 0);
        // Where a note lies on the sheet, some programs write as numbers within it.
        var text = RichText.Whole(reader, besides: "anchor");
        budget.Text(text.Length);
        if (text.Length == 0)
            return;
        if (!found.TryGetValue(cell, out var texts))
            found[cell] = texts = [];
        texts.Add(text);
    }
}
