using ExamDocs.Intake.OwnList.Sheets;
using ExamDocs.Intake.OwnList.Words;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.OwnList.Mapping;

/// <summary>Tells a row of headings from a row about an item.</summary>
internal static class HeadingRow
{
    /// <summary>Words in a heading at most; more is a sentence.</summary>
    private const int LongestHeading = 8;

    /// <summary>The first row of headings: words, no dates or numbers; half of them are known, at least two, one to the letter.</summary>
    public static bool IsFirst(ListRow row)
    {
        var texts = Texts(row);
        var known = texts.Count(t => PlainWords.Split(t).Count <= LongestHeading && HeadingPhrases.Book.In(t).Count > 0);
        return known >= 2 && known * 2 >= row.Cells.Count && texts.Exists(t => HeadingPhrases.Book.Whole(t) is not null);
    }

    /// <summary>Other headings further down: half of them known to the letter, at least three, and no word for use among them.</summary>
    public static bool IsFurther(ListRow row)
    {
        var texts = Texts(row);
        var known = texts.Count(t => HeadingPhrases.Book.Whole(t) is { Meaning.Sure: Sureness.Yes } && UseWords.OfState(t) is null);
        return known >= 3 && known * 2 > row.Cells.Count;
    }

    /// <summary>Whether it could be one, where no heading is known: words alone, all different.</summary>
    public static bool CouldBe(ListRow row)
    {
        var texts = row.Cells.Values.Select(c => c.Text).ToList();
        return texts.Count > 1
            && !row.Cells.Values.Any(c => IsValue(c) || c.Text.Any(char.IsAsciiDigit) || UseWords.OfState(c.Text) is not null)
            && texts.Distinct(StringComparer.OrdinalIgnoreCase).Count() == texts.Count;
    }

    /// <summary>Whether a row says the headings of its table again.</summary>
    public static bool Repeats(ListRow row, IReadOnlyDictionary<int, string> headings) =>
        row.Cells.Count > 1
        && row.Cells.Count(c =>
            headings.TryGetValue(c.Key, out var heading) && string.Equals(heading, c.Value.Text, StringComparison.OrdinalIgnoreCase)
        ) * 2
            > row.Cells.Count;

    /// <param name="sheet">The sheet's name.</param>
    /// <param name="row">Null where the sheet has no headings.</param>
    /// <param name="columns">Every column that is filled.</param>
    public static Dictionary<int, string> Headings(string sheet, ListRow? row, IEnumerable<int> columns)
    {
        var headings = new Dictionary<int, string>();
        var times = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        foreach (var column in columns.Concat(row?.Cells.Keys.AsEnumerable() ?? []).Distinct().Order())
        {
            var heading =
                row?.At(column) is { } typed && Samples.Visible(typed) is { Length: > 0 } shown
                    ? shown
                    : $"column {CellAddress.Letters(column)} of {sheet}";
            var time = times[heading] = times.GetValueOrDefault(heading) + 1;
            headings[column] =
                time == 1 ? heading : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{heading} ({time})");
        }
        return headings;
    }

    private static bool IsValue(ListCell cell) =>
        cell.Day is not null
        || cell.Text.All(c => char.IsAsciiDigit(c) || c is '.' or ',' or '-' or '/')
        || ListDate.Of(cell.Text) is not null;

    /// <summary>None where one of them is a value.</summary>
    private static List<string> Texts(ListRow row) => row.Cells.Values.Any(IsValue) ? [] : [.. row.Cells.Values.Select(c => c.Text)];
}
