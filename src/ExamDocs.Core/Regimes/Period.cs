using NodaTime;

namespace ExamDocs.Core.Regimes;

/// <summary>Facts of one kind that hold together, from a day on.</summary>
/// <typeparam name="T">One fact.</typeparam>
public sealed record Period<T>
{
    /// <summary>First day on which they hold, inclusive; null, on the first period only, where that day was not looked up.</summary>
    public LocalDate? From { get; init; }

    /// <summary>Last day on which they hold, inclusive; null where no end is known.</summary>
    public LocalDate? Until { get; init; }

    public required IReadOnlyList<T> Entries { get; init; }
}

/// <summary>Picks what is in force on a day.</summary>
public static class Periods
{
    /// <summary>
    /// What is in force on the day. Before the first period the first one is taken, after the last one, or where the day
    /// is not known, the last: no record is let off because a date is missing in the data.
    /// </summary>
    public static IReadOnlyList<T> InForce<T>(this IReadOnlyList<Period<T>> periods, LocalDate? day) =>
        periods.Count == 0 ? []
        : day is null ? periods[^1].Entries
        : (periods.LastOrDefault(p => p.From is null || p.From <= day) ?? periods[0]).Entries;

    /// <summary>True where the periods follow one another without a gap and without overlap.</summary>
    internal static bool FollowOneAnother<T>(this IReadOnlyList<Period<T>> periods) =>
        Enumerable
            .Range(1, Math.Max(0, periods.Count - 1))
            .All(n =>
                periods[n].From is { } from
                && !(periods[n - 1].From >= from)
                && (periods[n - 1].Until is not { } until || until == from.PlusDays(-1))
            ) && periods.All(p => !(p.Until < p.From));
}
