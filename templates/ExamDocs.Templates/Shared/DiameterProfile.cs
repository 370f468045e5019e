using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates.Wording;

namespace ExamDocs.Templates.Shared;

/// <summary>Diameters at one station; all lengths in millimetres.</summary>
public sealed record Station(decimal? Position, IReadOnlyList<decimal?> Readings, decimal? Mean);

/// <summary>The diameters measured along a rope, with the maker's limits where they are recorded; millimetres.</summary>
public sealed class DiameterProfile
{
    private DiameterProfile(IReadOnlyList<Station> stations, MakersLimits? limits)
    {
        Stations = stations;
        Nominal = limits?.NominalDiameterMm;
        Tolerance = limits?.DiameterTolerancePercent;
        var source = limits?.Source;
        Source = English.Report.Document(source?.Title, source?.Revision, source?.Page);
    }

    public IReadOnlyList<Station> Stations { get; }

    public decimal? Nominal { get; }

    /// <summary>Per cent of nominal to either side, inclusive.</summary>
    public decimal? Tolerance { get; }

    public string Source { get; }

    public decimal? Low => Nominal * (1 - (Tolerance / 100m));

    public decimal? High => Nominal * (1 + (Tolerance / 100m));

    /// <summary>What the plot shows and where its limits come from, in words.</summary>
    public string Caption => (Nominal, Tolerance) switch
    {
        ({ } n, { } t) => English.Report.Tolerance(Printed.Number(n), Printed.Number(t), Printed.Millimetres(Low!.Value), Printed.Millimetres(High!.Value), Source),
        ({ } n, null) => English.Report.NominalOnly(Printed.Number(n), Source),
        _ => English.Report.NoTolerance,
    };

    /// <summary>Whether this mean lies outside the maker's tolerance, both ends of which are inside it.</summary>
    public bool IsOutside(decimal? mean) => mean is { } m && Low is { } low && High is { } high && (m < low || m > high);

    /// <summary>The profile of an item; null where no diameters were measured.</summary>
    public static DiameterProfile? Of(DeterminedItem item)
    {
        var measured = item.Examination?.Diameters ?? [];
        return measured.Count == 0 ? null : new DiameterProfile([.. measured.Select(Read)], item.Limits);
    }

    private static Station Read(DiameterStation station)
    {
        decimal[] known = [.. station.ReadingsMm.OfType<decimal>()];
        return new Station(station.PositionMm, station.ReadingsMm, known.Length == 0 ? null : known.Average());
    }
}
