using ExamDocs.Core.Determination;
using ExamDocs.Core.Measurement;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Diameters;
using ExamDocs.Templates.Shared.Wording.Items;

namespace ExamDocs.Templates.Shared;

/// <summary>Diameters at one station as they are printed; all lengths in millimetres.</summary>
public sealed class Station(ProfileStation measured)
{
    public decimal? Position => measured.PositionMm;

    public IReadOnlyList<decimal?> Readings => measured.Recorded.ReadingsMm;

    public decimal? Mean => measured.Mean is { } mean ? mean.Quotient : null;

    public bool IsOutside => measured.IsOutside;

    public bool StandsOut => measured.StandsOut;

    public bool IsTooCloseToCall => measured.IsTooCloseToCall;

    /// <summary>Mean and place in words.</summary>
    public string InWords =>
        DiameterPhrases.Current.MeanAt(Printed.Millimetres(Mean ?? 0), Position is { } p ? Printed.Number(p) : Phrases.Common.NotRecorded);
}

/// <summary>
/// The diameters measured along a rope as they are printed, with the maker's limits where they are recorded; millimetres.
/// </summary>
public sealed class DiameterProfile
{
    private readonly MeasuredProfile _measured;

    private DiameterProfile(MeasuredProfile measured)
    {
        _measured = measured;
        Stations = [.. measured.Stations.Select(s => new Station(s))];
        var source = measured.Limits?.Source;
        Source = ItemPhrases.Current.Document(source?.Title, source?.Revision, source?.Page);
    }

    public IReadOnlyList<Station> Stations { get; }

    public decimal? Nominal => _measured.Limits?.NominalDiameterMm;

    /// <summary>Per cent of nominal to either side, inclusive.</summary>
    public decimal? Tolerance => _measured.Limits?.DiameterTolerancePercent;

    public string Source { get; }

    public decimal? Low => _measured.Band?.Least;

    public decimal? High => _measured.Band?.Most;

    /// <summary>What the plot shows and where its limits come from, in words.</summary>
    public string Caption =>
        (Nominal, Tolerance) switch
        {
            ({ } n, { } t) => DiameterPhrases.Current.Tolerance(
                Printed.Number(n),
                Printed.Number(t),
                Printed.Millimetres(Low!.Value),
                Printed.Millimetres(High!.Value),
                Source
            ),
            ({ } n, null) => DiameterPhrases.Current.NominalOnly(Printed.Number(n), Source),
            _ => DiameterPhrases.Current.NoTolerance,
        };

    /// <summary>What is marked in the plot, and what it means; empty where nothing is.</summary>
    public IReadOnlyList<string> Marked =>
        [
            .. Say(Stations.Where(s => s.StandsOut), DiameterPhrases.Current.StandingOut),
            .. Say(Stations.Where(s => s.IsTooCloseToCall), DiameterPhrases.Current.TooCloseToCall),
        ];

    /// <summary>The profile of an item; null where no diameters were measured.</summary>
    public static DiameterProfile? Of(DeterminedItem item) => item.Profile is { } measured ? new DiameterProfile(measured) : null;

    private static IEnumerable<string> Say(IEnumerable<Station> stations, Func<string, string> sentence)
    {
        var places = string.Join(", ", stations.Select(s => s.InWords));
        return places.Length == 0 ? [] : [sentence(places)];
    }
}
