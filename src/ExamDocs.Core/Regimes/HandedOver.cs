using ExamDocs.Core.Records;

namespace ExamDocs.Core.Regimes;

/// <summary>Kit that a regime leaves to another one: only that other regime then binds an examination that names it.</summary>
public sealed record HandedOver
{
    /// <summary>Purposes in the words of the record format, and not-stated; null for kit of every purpose.</summary>
    public IReadOnlyList<string>? Purposes { get; init; }

    /// <summary>Ids of categories; null for kit of every category.</summary>
    public IReadOnlyList<string>? Categories { get; init; }

    /// <summary>Id of the regime that the kit is left to.</summary>
    public required string To { get; init; }

    public required string Source { get; init; }

    public required Confidence Confidence { get; init; }

    internal bool IsFor(Purpose? purpose, string? category) =>
        ExaminationInterval.Names(Purposes, purpose)
        && (Categories is null || (category is not null && Categories.Contains(category, StringComparer.Ordinal)));
}

/// <summary>Finds the regimes that bind an examination.</summary>
public static class RegimesInForce
{
    /// <summary>
    /// The examination's own regime and the visit's; or only its own, where the visit's leaves such kit to it. The regime whose
    /// particulars are printed comes first: the visit's, unless the examination's own asks for everything that the visit's does.
    /// </summary>
    /// <param name="own">The regime that the examination names; null where it names none, or one that is not known.</param>
    /// <param name="visits">The regime of the visit; null where it is not known.</param>
    /// <param name="purpose">What the item is for; null where not stated.</param>
    /// <param name="category">The item's category, as recorded.</param>
    /// <param name="day">The day examined; null where not known.</param>
    public static IReadOnlyList<Regime> Of(Regime? own, Regime? visits, Purpose? purpose, string? category, NodaTime.LocalDate? day)
    {
        if (own is null || visits is null || string.Equals(own.Id, visits.Id, StringComparison.Ordinal))
            return (own ?? visits) is { } only ? [only] : [];
        if (visits.HandsOver.Any(h => string.Equals(h.To, own.Id, StringComparison.Ordinal) && h.IsFor(purpose, category)))
            return [own];
        return visits.Asked(day).All(own.Asked(day).Contains) ? [own, visits] : [visits, own];
    }
}
