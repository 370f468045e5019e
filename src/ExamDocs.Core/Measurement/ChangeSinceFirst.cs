using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Measurement;

/// <summary>A place measured now and in the first profile recorded.</summary>
/// <param name="PositionMm">Millimetres from the reference end.</param>
/// <param name="ThenMm">Mean then, millimetres.</param>
/// <param name="NowMm">Mean now, millimetres.</param>
public sealed record StationChange(decimal PositionMm, double ThenMm, double NowMm)
{
    /// <summary>Millimetres; negative where it has become thinner.</summary>
    public double DifferenceMm => NowMm - ThenMm;
}

/// <summary>Compares the profile with the first one recorded of the same item, station by station at the same position.</summary>
/// <param name="FirstOn">The day the first was measured.</param>
/// <param name="Stations">Places measured both times, by position.</param>
/// <param name="UnmatchedMm">Positions measured only one of the two times, millimetres, in order.</param>
public sealed record ChangeSinceFirst(LocalDate FirstOn, IReadOnlyList<StationChange> Stations, IReadOnlyList<decimal> UnmatchedMm)
{
    /// <summary>The place that has lost most; null where none is thinner than it was.</summary>
    public StationChange? MostThinned => Stations.Where(s => s.DifferenceMm < 0).MinBy(s => s.DifferenceMm);

    /// <summary>The place that has gained most; null where none is thicker than it was.</summary>
    public StationChange? MostThickened => Stations.Where(s => s.DifferenceMm > 0).MaxBy(s => s.DifferenceMm);

    internal static ChangeSinceFirst Between(LocalDate firstOn, IReadOnlyList<DiameterStation> first, IReadOnlyList<ProfileStation> now)
    {
        var then = ByPosition(first.Select(s => (s.PositionMm, StationMean.Of(s))));
        var today = ByPosition(now.Select(s => (s.PositionMm, s.Mean)));
        var both = today.Where(p => then.ContainsKey(p.Key)).OrderBy(p => p.Key);
        return new ChangeSinceFirst(
            firstOn,
            [.. both.Select(p => new StationChange(p.Key, then[p.Key].Millimetres, p.Value.Millimetres))],
            [.. then.Keys.Except(today.Keys).Concat(today.Keys.Except(then.Keys)).Order()]
        );
    }

    /// <summary>Where a position is there twice, its first mean counts; the repeated position is an error with its own finding.</summary>
    private static Dictionary<decimal, StationMean> ByPosition(IEnumerable<(decimal? Position, StationMean? Mean)> stations)
    {
        var found = new Dictionary<decimal, StationMean>();
        foreach (var (position, mean) in stations)
        {
            if (position is { } at && mean is { } measured)
                found.TryAdd(at, measured);
        }
        return found;
    }
}
