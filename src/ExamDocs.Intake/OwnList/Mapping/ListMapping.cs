using ExamDocs.Core.Regimes;
using ExamDocs.Intake.OwnList.Sheets;
using ExamDocs.Intake.OwnList.Words;
using ExamDocs.Intake.Vocabulary;

namespace ExamDocs.Intake.OwnList.Mapping;

/// <summary>A list with the map that it is read by, while that is being settled.</summary>
public sealed class ListMapping
{
    private readonly ListMap _given;

    /// <param name="book">The list.</param>
    /// <param name="rules">The categories there are.</param>
    /// <param name="given">What was settled before; null for nothing.</param>
    public ListMapping(ListBook book, KnownRules rules, ListMap? given)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(rules);
        (Book, Rules, Kinds, _given) = (book, rules, new KindPhrases(rules), given ?? new ListMap());
        Finder = TableFinder.In(book, Kinds);
        Map = new ListMap { Columns = Settled(ColumnProposals.Of(Finder.Tables, Kinds), _given.Columns) };
        ProposeWords();
    }

    public ListMap Map { get; private set; }

    public ListBook Book { get; }

    public KnownRules Rules { get; }

    /// <summary>Headings that the map given names and the list does not have.</summary>
    public IReadOnlyList<string> UnknownHeadings =>
        [.. _given.Columns.Select(c => c.Heading).Where(h => !Map.Columns.Any(c => IsSame(c.Heading, h)))];

    internal KindPhrases Kinds { get; }

    internal TableFinder Finder { get; }

    internal IReadOnlyList<MappedTable> Tables { get; private set; } = [];

    /// <summary>Dates that could be read in two ways.</summary>
    public IReadOnlyList<string> AmbiguousDates { get; private set; } = [];

    /// <summary>The orders in which those dates can be read.</summary>
    public IReadOnlyList<DateOrder> DateOrders =>
        [.. AmbiguousDates.Select(ListDate.Of).OfType<ListDate>().SelectMany(d => d.Readings.Keys).Distinct().Order()];

    /// <summary>What a column of maker and model seems to be split after; null where there is no such column.</summary>
    public IReadOnlyList<string>? MakersSeen => Tables.Any(t => t.Has(ListField.MakerAndModel)) ? MakerSplit.Seen(Tables).Makers : null;

    /// <summary>Settles what a column is; what the words mean is then looked at anew.</summary>
    internal void SettleColumn(string heading, ListField field)
    {
        Map = Map with { Columns = [.. Map.Columns.Select(c => IsSame(c.Heading, heading) ? c with { To = field } : c)] };
        ProposeWords();
    }

    internal void Settle(Func<ListMap, ListMap> settled) => Map = settled(Map);

    private void ProposeWords()
    {
        Tables = [.. Finder.Tables.Select(t => new MappedTable(t, Map))];
        AmbiguousDates = WordProposals.AmbiguousDates(Tables);
        var (makers, isSure) = MakerSplit.Seen(Tables);
        Map = Map with
        {
            Dates = _given.Dates ?? Map.Dates ?? WordProposals.OrderOfDates(Tables),
            Makers = _given.Makers ?? (isSure ? makers : null),
            Kinds = Settled(WordProposals.Kinds(Tables, Kinds)),
            Words = Settled(WordProposals.Words(Tables)),
            Colours = Settled(WordProposals.Colours(Tables)),
        };
    }

    private static IReadOnlyList<ColumnMap> Settled(IReadOnlyList<ColumnMap> proposed, IReadOnlyList<ColumnMap> given) =>
        [.. proposed.Select(p => given.FirstOrDefault(g => IsSame(g.Heading, p.Heading)) is { To: { } to } ? p with { To = to } : p)];

    private IReadOnlyList<KindMap> Settled(IReadOnlyList<KindMap> proposed) =>
        [
            .. proposed.Select(p =>
                _given.Kinds.FirstOrDefault(g => IsSame(g.Word, p.Word)) is { } given
                    ? p with
                    {
                        Category = given.Category,
                        IsSettled = true,
                    }
                    : p
            ),
        ];

    private IReadOnlyList<WordMap> Settled(IReadOnlyList<WordMap> proposed) =>
        [
            .. proposed.Select(p =>
                _given.Words.FirstOrDefault(g => IsSame(g.Word, p.Word))?.Means is { } means ? p with { Means = means } : p
            ),
        ];

    private IReadOnlyList<ColourMap> Settled(IReadOnlyList<ColourMap> proposed) =>
        [
            .. proposed.Select(p =>
                _given.Colours.FirstOrDefault(g => IsSame(g.Colour, p.Colour))?.Means is { } means ? p with { Means = means } : p
            ),
        ];

    private static bool IsSame(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);
}
