using NodaTime;

namespace ExamDocs.Core.Regimes;

/// <summary>Facts of one kind that are in force together, from a day on.</summary>
/// <typeparam name="T">One fact.</typeparam>
public sealed record Period<T>
{
    /// <summary>First day in force, inclusive; null where that day was not looked up, which only the first period may leave out.</summary>
    public LocalDate? From { get; init; }

    /// <summary>Last day in force, inclusive; null where no end is known.</summary>
    public LocalDate? Until { get; init; }

    public required IReadOnlyList<T> Entries { get; init; }
}

/// <summary>Picks what is in force on a day.</summary>
public static class Periods
{
    /// <summary>
    /// What is in force on the day. Before the first period the first one counts; after the last one, or where the day is not known,
    /// the last one counts. So a date that the data lack never means that no law applies.
    /// </summary>
    public static IReadOnlyList<T> InForce<T>(this IReadOnlyList<Period<T>> periods, LocalDate? day)
    {
        if (periods.Count == 0)
            return [];
        var last = periods.Count - 1;
        while (last > 0 && periods[last].From > day)
            last--;
        return periods[last].Entries;
    }

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
