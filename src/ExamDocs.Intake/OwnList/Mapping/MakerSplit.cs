using ExamDocs.Intake.OwnList.Words;

namespace ExamDocs.Intake.OwnList.Mapping;

/// <summary>Splits "Make/Model" into the two: at a sign that stands between them, else after a maker that the list shows.</summary>
internal sealed class MakerSplit(IReadOnlyList<string> makers)
{
    private const int LongestMaker = 4;

    /// <summary>No firm buys from more; the rest stays with the model.</summary>
    private const int MostMakers = 500;

    private static readonly string[] Between = [" / ", "/", " | ", "|", " - ", " – ", ", ", "; ", ": ", "\n"];

    private readonly List<string> _makers = [.. makers.OrderByDescending(m => m.Length)];

    /// <summary>The maker, null where it is not known, and the model.</summary>
    public (string? Maker, string Model) Of(string text)
    {
        foreach (var maker in _makers)
        {
            if (
                text.StartsWith(maker, StringComparison.OrdinalIgnoreCase)
                && text.Length > maker.Length
                && !char.IsLetterOrDigit(text[maker.Length])
            )
                return (text[..maker.Length], text[maker.Length..].Trim(' ', '/', '|', '-', '–', ',', ';', ':', '\n'));
        }
        return _makers.Exists(m => string.Equals(m, text, StringComparison.OrdinalIgnoreCase)) ? (text, "") : (null, text);
    }

    /// <summary>Makers that the list shows, and whether that is sure.</summary>
    public static (IReadOnlyList<string> Makers, bool IsSure) Seen(IReadOnlyList<MappedTable> tables)
    {
        var texts = Values(tables, ListField.MakerAndModel).Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        var bySign = Between.FirstOrDefault(sign => texts.Count(t => t.Contains(sign, StringComparison.Ordinal)) >= texts.Count * 0.8);
        if (texts.Count > 0 && bySign is not null)
            return (
                Distinct(
                    texts
                        .Where(t => t.Contains(bySign, StringComparison.Ordinal))
                        .Select(t => t[..t.IndexOf(bySign, StringComparison.Ordinal)].Trim())
                ),
                true
            );
        var known = Distinct(Values(tables, ListField.Maker));
        var split = new MakerSplit(known);
        var left = texts.Where(t => split.Of(t).Maker is null).ToList();
        return ([.. known, .. CommonBeginnings(left)], left.Count == 0);
    }

    /// <summary>Of the texts that begin with one word, the words that all of them begin with.</summary>
    private static IEnumerable<string> CommonBeginnings(List<string> texts)
    {
        foreach (var group in texts.Select(Words).Where(w => w.Length > 1).GroupBy(w => w[0], StringComparer.OrdinalIgnoreCase))
        {
            var all = group.ToList();
            if (all.Count < 2)
                continue;
            var common = Enumerable
                .Range(1, Math.Min(LongestMaker, all.Min(w => w.Length) - 1))
                .Last(n => all.TrueForAll(w => w[n - 1].Equals(all[0][n - 1], StringComparison.OrdinalIgnoreCase)) || n == 1);
            yield return string.Join(' ', all[0].Take(common));
        }
    }

    private static string[] Words(string text) => text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);

    private static List<string> Distinct(IEnumerable<string> makers) =>
        [
            .. makers
                .Where(m => m.Length > 1)
                .GroupBy(m => m, StringComparer.OrdinalIgnoreCase)
                .OrderByDescending(g => g.Count())
                .Take(MostMakers)
                .Select(g => g.Key)
                .Order(StringComparer.OrdinalIgnoreCase),
        ];

    private static IEnumerable<string> Values(IEnumerable<MappedTable> tables, ListField field) =>
        from table in tables
        from row in table.Table.Rows
        let text = table.Text(row.Row, field)
        where text is not null
        select text;
}
