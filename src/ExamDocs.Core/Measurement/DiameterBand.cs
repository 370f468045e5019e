using ExamDocs.Core.Records;

namespace ExamDocs.Core.Measurement;

/// <summary>The mean of a station's readings, kept as a fraction: rounding must never decide whether it is inside a limit.</summary>
/// <param name="SumMm">Sum of the readings, millimetres.</param>
/// <param name="Count">How many readings; at least one.</param>
public readonly record struct StationMean(decimal SumMm, int Count)
{
    /// <summary>Millimetres, to a hundredth, for print only.</summary>
    public decimal Rounded => Math.Round(SumMm / Count, 2, MidpointRounding.AwayFromZero);

    /// <summary>Millimetres with 28 digits, for print and statistics; it never decides whether the mean is inside a limit.</summary>
    public decimal Quotient => SumMm / Count;

    /// <summary>Millimetres, for statistics only.</summary>
    public double Millimetres => (double)Quotient;

    /// <summary>Null where the station has no reading that can be read.</summary>
    public static StationMean? Of(DiameterStation station)
    {
        var readings = station.ReadingsMm.OfType<decimal>().ToList();
        return readings.Count == 0 ? null : new StationMean(readings.Sum(), readings.Count);
    }
}

/// <summary>The maker's nominal diameter with its tolerance; both ends inclusive.</summary>
/// <param name="NominalMm">Millimetres.</param>
/// <param name="TolerancePercent">Per cent of nominal, to either side.</param>
public readonly record struct DiameterBand(decimal NominalMm, decimal TolerancePercent)
{
    /// <summary>Null where there are no limits, or they lack the nominal diameter or the tolerance.</summary>
    public static DiameterBand? Of(MakersLimits? limits) =>
        limits is { NominalDiameterMm: { } nominal, DiameterTolerancePercent: { } percent } ? new DiameterBand(nominal, percent) : null;

    /// <summary>Millimetres, inclusive.</summary>
    public decimal Least => NominalMm * (100 - TolerancePercent) / 100;

    /// <summary>Millimetres, inclusive.</summary>
    public decimal Most => NominalMm * (100 + TolerancePercent) / 100;

    /// <summary>True where this band lies within the other, both ends inclusive.</summary>
    public bool IsWithin(DiameterBand other) => Least >= other.Least && Most <= other.Most;

    public bool Holds(StationMean mean) => mean.SumMm >= Least * mean.Count && mean.SumMm <= Most * mean.Count;

    /// <summary>True where the mean is inside by more than its uncertainty; by exactly its uncertainty is not enough.</summary>
    /// <param name="mean">A mean that the band holds.</param>
    /// <param name="expandedMm">Expanded uncertainty, millimetres.</param>
    public bool Clears(StationMean mean, double expandedMm) =>
        mean.Millimetres - expandedMm > (double)Least && mean.Millimetres + expandedMm < (double)Most;
}
