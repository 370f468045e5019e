using ExamDocs.Intake.OwnList.Words;

namespace ExamDocs.Intake.OwnList.Mapping;

/// <summary>Which kind of kit a row is about.</summary>
/// <param name="Word">The word that says so, as a map has it; empty where nothing in the row does.</param>
/// <param name="Typed">As the list has it.</param>
/// <param name="Meant">What the words are known to mean; null where they are not known.</param>
internal sealed record RowKind(string Word, string Typed, KindMeant? Meant)
{
    /// <summary>
    /// By the column of categories, else by the title above the row, the sheet's name, the description or the model. Where the
    /// word for the category is not known, a sure word in the description counts.
    /// </summary>
    public static RowKind Of(MappedTable table, TableRow row, KindPhrases kinds)
    {
        var described = InText(table, row, kinds);
        if (table.Text(row.Row, ListField.Category) is { } typed)
        {
            var own = new RowKind(Folded(typed), typed, kinds.Find(typed));
            return own.Meant is null && described is { Meant.Sure: Sureness.Yes } ? described with { Typed = typed } : own;
        }
        return Titled(row.Section, kinds)
            ?? (described is { Meant.Sure: Sureness.Yes } ? described : null)
            ?? Titled(table.Table.Sheet, kinds)
            ?? described
            ?? new RowKind("", "", null);
    }

    private static RowKind? Titled(string? title, KindPhrases kinds) =>
        title is not null && kinds.Find(title) is { } meant ? new RowKind(Folded(title), title, meant) : null;

    private static RowKind? InText(MappedTable table, TableRow row, KindPhrases kinds)
    {
        var texts = new[] { ListField.Description, ListField.Model, ListField.MakerAndModel }
            .Select(f => table.Text(row.Row, f))
            .OfType<string>()
            .ToList();
        foreach (var text in texts)
        {
            if (kinds.Find(text) is { } meant)
                return new RowKind(meant.Phrase, text, meant);
        }
        return texts.Count > 0 && Folded(texts[0]) is { Length: > 0 } word ? new RowKind(word, texts[0], null) : null;
    }

    /// <summary>Without numbers: "rope 45 m" and "rope 60 m" are of one kind.</summary>
    public static string Folded(string text) =>
        string.Join(' ', PlainWords.Split(text).Where(w => !w.Any(char.IsAsciiDigit))) is { Length: > 0 } words
            ? words
            : PlainWords.Of(text);
}
