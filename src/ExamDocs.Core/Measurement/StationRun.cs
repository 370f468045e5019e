namespace ExamDocs.Core.Measurement;

/// <summary>
/// Neighbouring stations, two or more, that are all thinner or all thicker than the median of the whole length by more
/// than the expanded uncertainty of their own means.
/// </summary>
/// <param name="FromMm">Position of the first, millimetres, inclusive.</param>
/// <param name="ToMm">Position of the last, millimetres, inclusive.</param>
/// <param name="Stations">Number of stations.</param>
/// <param name="IsThinner">True where they are thinner than the median; false where they are thicker.</param>
public sealed record StationRun(decimal FromMm, decimal ToMm, int Stations, bool IsThinner)
{
    /// <summary>True where a station lies within the run.</summary>
    public bool Holds(ProfileStation station) => station.PositionMm >= FromMm && station.PositionMm <= ToMm;

    /// <summary>The longest; of equally long ones the first from the reference end. Null where there is none.</summary>
    /// <param name="inOrder">Stations with a mean, by position.</param>
    /// <param name="medianMm">Median of all the means, millimetres.</param>
    internal static StationRun? Longest(IReadOnlyList<ProfileStation> inOrder, double medianMm)
    {
        StationRun? longest = null;
        for (var first = 0; first < inOrder.Count; )
        {
            var side = Side(inOrder[first], medianMm);
            var next = first + 1;
            while (next < inOrder.Count && Side(inOrder[next], medianMm) == side)
                next++;
            if (side != 0 && next - first > Math.Max(1, longest?.Stations ?? 0))
                longest = new StationRun(
                    inOrder[first].PositionMm!.Value,
                    inOrder[next - 1].PositionMm!.Value,
                    next - first,
                    IsThinner: side is -1
                );
            first = next;
        }
        return longest;
    }

    private static int Side(ProfileStation station, double medianMm)
    {
        var away = station.MeanMm!.Value - medianMm;
        return Math.Abs(away) > station.Uncertainty!.ExpandedMm ? Math.Sign(away) : 0;
    }
}
