namespace ExamDocs.Core.Measurement;

/// <summary>
/// Compares the stations of the middle half of the length, where the hardware runs, with those of the two outer quarters. Only the
/// position counts, because nobody records where the hardware ran (common practice, no source).
/// </summary>
/// <param name="MiddleMm">Mean of the means of the middle half, both ends inclusive; millimetres.</param>
/// <param name="EndsMm">Mean of the means of the outer quarters, millimetres.</param>
public sealed record MiddleAgainstEnds(double MiddleMm, double EndsMm)
{
    /// <summary>Millimetres; negative where the middle is thinner.</summary>
    public double DifferenceMm => MiddleMm - EndsMm;

    /// <summary>Null where one of the two has no station.</summary>
    /// <param name="inOrder">Stations with a mean, by position.</param>
    internal static MiddleAgainstEnds? Of(IReadOnlyList<ProfileStation> inOrder)
    {
        if (inOrder.Count < 3)
            return null;
        var (from, to) = (inOrder[0].PositionMm!.Value, inOrder[^1].PositionMm!.Value);
        var quarter = (to - from) / 4;
        var parts = inOrder.ToLookup(s => s.PositionMm >= from + quarter && s.PositionMm <= to - quarter, s => s.MeanMm!.Value);
        return parts.Contains(true) && parts.Contains(false) ? new MiddleAgainstEnds(parts[true].Average(), parts[false].Average()) : null;
    }
}
