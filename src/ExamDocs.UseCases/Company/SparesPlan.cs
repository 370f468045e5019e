using ExamDocs.Core.Findings;
using NodaTime;

namespace ExamDocs.UseCases.Company;

/// <summary>A part that has to be replaced by a day.</summary>
/// <param name="Part">Its id.</param>
/// <param name="Serial">As typed; null where not recorded.</param>
/// <param name="Category">Id of the category; null where not recorded.</param>
/// <param name="Whole">Id of what it is fitted to; null where that is not recorded.</param>
/// <param name="At">Whose kit, and where.</param>
/// <param name="By">The last day on which it may serve, or is projected to, inclusive.</param>
/// <param name="Why">Why, in a sentence.</param>
/// <param name="Permitted">Part numbers that the maker of what it is fitted to permits; empty where none is recorded.</param>
public sealed record SpareNeed(
    string Part,
    string? Serial,
    string? Category,
    string? Whole,
    DuePlace At,
    LocalDate By,
    Message Why,
    IReadOnlyList<string> Permitted
);

/// <summary>What is needed of a part.</summary>
/// <param name="Permitted">Part numbers of which any will do; one at least.</param>
/// <param name="Needs">What needs it, the earliest first.</param>
/// <param name="InStock">How many of them the stock gives for these; never more than are needed.</param>
public sealed record SpareOrder(IReadOnlyList<string> Permitted, IReadOnlyList<SpareNeed> Needs, int InStock)
{
    public int ToOrder => Needs.Count - InStock;

    public LocalDate FirstBy => Needs[0].By;

    /// <summary>The part numbers in a language's words.</summary>
    public string Name(MessageLanguage language) => SpareSheets.Numbers(Permitted, language);
}

/// <summary>Parts that are not listed, all for one reason.</summary>
/// <param name="Parts">How many; one at least.</param>
/// <param name="Why">No whole sentence.</param>
public sealed record SparesLeftOut(int Parts, Message Why)
{
    public Message Line => $"Parts left out: {Parts}. Why: {Why}.";
}

/// <summary>What has to be ordered by a day, and what nobody can order by what is recorded.</summary>
/// <param name="To">The last day looked at, inclusive.</param>
/// <param name="Orders">By part number.</param>
/// <param name="NotRecorded">Parts for which no permitted part number is recorded, the earliest first.</param>
/// <param name="LeftOut">Parts of which nobody can say when they have to be replaced, or that are not needed, by reason.</param>
public sealed record SparesPlan(
    LocalDate To,
    IReadOnlyList<SpareOrder> Orders,
    IReadOnlyList<SpareNeed> NotRecorded,
    IReadOnlyList<SparesLeftOut> LeftOut
)
{
    /// <summary>
    /// Sets needs against a stock. Each piece in stock counts once: needs that only one part number will do come first, then the others.
    /// </summary>
    /// <param name="needs">What is needed.</param>
    /// <param name="stock">By part number, letter by letter.</param>
    public static SparesPlan Of(SpareNeeds needs, IReadOnlyDictionary<string, int> stock)
    {
        ArgumentNullException.ThrowIfNull(needs);
        var left = new Dictionary<string, int>(stock, StringComparer.Ordinal);
        var orders = needs
            .All.Where(n => n.Permitted.Count > 0)
            .GroupBy(n => string.Join('\n', n.Permitted.Order(StringComparer.Ordinal)), StringComparer.Ordinal)
            .OrderBy(g => g.First().Permitted.Count)
            .ThenBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => Order([.. g.OrderBy(n => n.By).ThenBy(n => n.Part, StringComparer.Ordinal)], left))
            .ToList();
        return new(
            needs.To,
            [.. orders.OrderBy(o => string.Join(' ', o.Permitted), StringComparer.Ordinal)],
            [.. needs.All.Where(n => n.Permitted.Count == 0).OrderBy(n => n.By).ThenBy(n => n.Part, StringComparer.Ordinal)],
            needs.LeftOut
        );
    }

    private static SpareOrder Order(IReadOnlyList<SpareNeed> needs, Dictionary<string, int> left)
    {
        var (permitted, taken) = (needs[0].Permitted.Order(StringComparer.Ordinal).ToList(), 0);
        foreach (var number in permitted.Where(left.ContainsKey))
        {
            var some = Math.Min(left[number], needs.Count - taken);
            (left[number], taken) = (left[number] - some, taken + some);
        }
        return new(permitted, needs, taken);
    }
}

/// <summary>Parts that have to be replaced by a day.</summary>
/// <param name="To">The last day looked at, inclusive.</param>
/// <param name="All">In any order.</param>
/// <param name="LeftOut">Parts that are not among them whatever the day, by reason.</param>
public sealed record SpareNeeds(LocalDate To, IReadOnlyList<SpareNeed> All, IReadOnlyList<SparesLeftOut> LeftOut);
