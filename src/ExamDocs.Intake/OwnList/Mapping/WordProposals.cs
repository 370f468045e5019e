using ExamDocs.Intake.OwnList.Sheets;
using ExamDocs.Intake.OwnList.Words;
using ExamDocs.Intake.Vocabulary;

namespace ExamDocs.Intake.OwnList.Mapping;

/// <summary>Proposes what the words of a list mean, once it is known which column is what.</summary>
internal static class WordProposals
{
    /// <summary>Characters of a text that is still a word to settle.</summary>
    private const int LongestWord = 60;

    public static IReadOnlyList<KindMap> Kinds(IEnumerable<MappedTable> tables, KindPhrases kinds) =>
        [
            .. tables
                .SelectMany(t => t.Table.Rows.Select(r => RowKind.Of(t, r, kinds)))
                .Where(k => k.Word.Length > 0)
                .GroupBy(k => k.Word, StringComparer.Ordinal)
                .Select(g => Kind(g.Key, [.. g]))
                .OrderByDescending(k => k.Rows)
                .ThenBy(k => k.Word, StringComparer.Ordinal),
        ];

    private static KindMap Kind(string word, List<RowKind> rows)
    {
        var meant = rows[0].Meant;
        return new KindMap(word, meant?.Sure is Sureness.Yes ? meant.Category : null)
        {
            Proposed = meant?.Category,
            Sure = meant?.Sure ?? Sureness.No,
            Rows = rows.Count,
            Samples = Samples.Of(rows.Select(r => r.Typed)),
        };
    }

    /// <summary>Every word of the columns about use, and elsewhere those that speak against an item.</summary>
    public static IReadOnlyList<WordMap> Words(IEnumerable<MappedTable> tables)
    {
        var found = new Dictionary<string, (UseMeaning? Means, List<string> Typed)>(StringComparer.Ordinal);
        foreach (var (table, row) in tables.SelectMany(t => t.Table.Rows.Select(r => (t, r.Row))))
        {
            var ofState = table.Columns(ListField.State).Select(c => c.Column).ToHashSet();
            foreach (var (column, cell) in row.Cells.Where(c => c.Value.Text.Length <= LongestWord && !UseWords.IsBlank(c.Value.Text)))
            {
                var means = ofState.Contains(column) ? UseWords.OfState(cell.Text) : UseWords.Against(cell.Text);
                if (!ofState.Contains(column) && means is null)
                    continue;
                var word = PlainWords.Of(cell.Text);
                if (!found.TryGetValue(word, out var there))
                    found[word] = there = (means, []);
                there.Typed.Add(cell.Text);
            }
        }
        return
        [
            .. found
                .Select(f => new WordMap(f.Key, f.Value.Means) { Rows = f.Value.Typed.Count, Samples = Samples.Of(f.Value.Typed) })
                .OrderByDescending(w => w.Rows)
                .ThenBy(w => w.Word, StringComparer.Ordinal),
        ];
    }

    public static IReadOnlyList<ColourMap> Colours(IEnumerable<MappedTable> tables) =>
        [
            .. tables
                .SelectMany(t => t.Table.Rows.Select(r => (t.Table.Sheet, r.Row)))
                .Where(r => r.Row.Colour is not null)
                .GroupBy(r => r.Row.Colour!, StringComparer.Ordinal)
                .Select(g => new ColourMap(g.Key, null)
                {
                    Rows =
                    [
                        .. g.GroupBy(r => r.Sheet, r => r.Row.Number, StringComparer.Ordinal).Select(s => $"{s.Key}: {RowNumbers.Of(s)}"),
                    ],
                }),
        ];

    /// <summary>The one order that every date which has one reading alone agrees with; null where there is none.</summary>
    public static DateOrder? OrderOfDates(IEnumerable<MappedTable> tables)
    {
        var seen = DateTexts(tables)
            .Where(d => d.Readings.Count == 1)
            .SelectMany(d => d.Readings.Keys)
            .Where(o => o is not DateOrder.YearFirst)
            .Distinct()
            .ToList();
        return seen is [var one] ? one : null;
    }

    /// <summary>Dates that depend on the order, as they are typed.</summary>
    public static IReadOnlyList<string> AmbiguousDates(IEnumerable<MappedTable> tables) =>
        [.. Typed(tables).Where(t => ListDate.Of(t) is { Only: null }).Distinct(StringComparer.Ordinal)];

    private static IEnumerable<ListDate> DateTexts(IEnumerable<MappedTable> tables) => Typed(tables).Select(ListDate.Of).OfType<ListDate>();

    /// <summary>Dates typed as texts between slashes or hyphens: dots are always in one order, and show none for the others.</summary>
    private static IEnumerable<string> Typed(IEnumerable<MappedTable> tables) =>
        from table in tables
        from field in Enum.GetValues<ListField>()
        where ListFields.IsDate(field) || field is ListField.OutOfUse
        from column in table.Columns(field)
        from row in table.Table.Rows
        let cell = row.Row.Cells.GetValueOrDefault(column.Column)
        where cell is { Day: null } && !cell.Text.Contains('.', StringComparison.Ordinal)
        select cell.Text;
}
