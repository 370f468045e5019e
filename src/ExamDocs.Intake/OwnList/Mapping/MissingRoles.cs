using ExamDocs.Intake.OwnList.Words;

namespace ExamDocs.Intake.OwnList.Mapping;

/// <summary>Looks for an id and a kind of kit among the columns of a table whose headings name neither.</summary>
internal static class MissingRoles
{
    public static void Fill(ListTable table, List<ColumnValues> columns, Dictionary<string, Seeming> proposed)
    {
        if (!table.Headings.Values.Any(h => proposed[h].Field is ListField.Id))
            Propose(ListField.Id, columns.Where(c => IsFree(c) && LooksLikeIds(c)), proposed);
        if (!table.Headings.Values.Any(h => proposed[h].Field is ListField.Category or ListField.Description))
            Propose(ListField.Category, columns.Where(c => IsFree(c) && c.Kinds >= 0.5).OrderByDescending(c => c.Kinds), proposed);

        bool IsFree(ColumnValues column) => proposed[column.Heading].Field is ListField.Remark && !IsNamedOtherwise(column.Heading);
    }

    private static void Propose(ListField field, IEnumerable<ColumnValues> columns, Dictionary<string, Seeming> proposed)
    {
        if (columns.FirstOrDefault() is { } found)
            proposed[found.Heading] = new Seeming(field, Sureness.Likely);
    }

    /// <summary>A price or a size is none of these, whatever it looks like; a number is.</summary>
    private static bool IsNamedOtherwise(string heading) =>
        PlainWords.Of(heading) is not ("no" or "nr") && HeadingPhrases.Book.Whole(heading) is not null;

    private static bool LooksLikeIds(ColumnValues column) =>
        column is { Variety: >= 0.95, Codes: >= 0.9, Filled: >= 0.6, Dates: < 0.3, Length: <= 20, CountsRows: false };
}
