using ExamDocs.Core.Criteria;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using ExamDocs.Templates.CheckSheet.Wording;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Items;

namespace ExamDocs.Templates.CheckSheet;

/// <summary>One place along a rope at which two diameters are to be read.</summary>
/// <param name="Number">Counted from 1.</param>
/// <param name="Position">Millimetres from the reference end as last time; empty where it is to be chosen.</param>
/// <param name="LastMean">Mean of last time's readings, millimetres; empty where there was none.</param>
public sealed record SheetStation(string Number, string Position, string LastMean);

/// <summary>The grid for the diameters of a rope: it shows where to measure and holds no reading.</summary>
public sealed class SheetDiameters
{
    private static CheckSheetPhrases Words => CheckSheetPhrases.Current;

    /// <summary>Stations side by side on a page.</summary>
    private const int StationsPerRow = 9;

    /// <summary>Blank places beside those of last time, for one that needs a closer look.</summary>
    private const int SpareStations = 2;

    private readonly MakersLimits? _limits;

    private SheetDiameters(IReadOnlyList<DiameterStation> last, MakersLimits? limits)
    {
        _limits = limits;
        var known = last.OrderBy(s => s.PositionMm ?? decimal.MaxValue).ToList();
        var count = known.Count == 0 ? StationsPerRow : known.Count + SpareStations;
        HasLast = known.Count > 0;
        Rows = [.. Enumerable.Range(0, count).Select(i => Station(i + 1, i < known.Count ? known[i] : null)).Chunk(StationsPerRow)];
    }

    /// <summary>Rows of stations, in order along the rope.</summary>
    public IReadOnlyList<IReadOnlyList<SheetStation>> Rows { get; }

    public bool HasLast { get; }

    /// <summary>The maker's diameter, its limits and their document, or that none is recorded.</summary>
    public string Limits
    {
        get
        {
            var source = ItemPhrases.Current.Document(_limits?.Source?.Title, _limits?.Source?.Revision, _limits?.Source?.Page);
            return (_limits?.NominalDiameterMm, DiameterBand.Of(_limits)) switch
            {
                (_, { } band) => Words.Band(
                    Printed.Number(band.NominalMm),
                    Printed.Number(band.TolerancePercent),
                    Printed.Millimetres(band.Least),
                    Printed.Millimetres(band.Most),
                    source
                ),
                ({ } nominal, null) => Words.NominalOnly(Printed.Number(nominal), source),
                _ => Words.NoNominal,
            };
        }
    }

    /// <summary>Null for an item whose diameter nobody asks for and nobody measured.</summary>
    public static SheetDiameters? Of(DeterminedItem item, Examination? last) =>
        last?.Diameters is { Count: > 0 } measured ? new SheetDiameters(measured, item.DiameterLimits)
        : item.Category is { } category && IsAskedOf(category) ? new SheetDiameters([], item.DiameterLimits)
        : null;

    /// <summary>Whether diameters along its length are asked of every item of the category.</summary>
    public static bool IsAskedOf(Category category) => category.Criteria.Any(AsksForDiameter);

    /// <summary>
    /// Whether it asks for the diameter of a textile part; the catalogue names such criteria diameter or diameter-change.
    /// </summary>
    private static bool AsksForDiameter(Criterion criterion) =>
        criterion.Material is MaterialFamily.Textile
        && criterion.Means.Contains(Means.Measure)
        && criterion.Id.StartsWith("diameter", StringComparison.Ordinal);

    private static SheetStation Station(int number, DiameterStation? last) =>
        new(
            Printed.Count(number),
            last?.PositionMm is { } position ? Printed.Number(position) : "",
            last is not null && StationMean.Of(last) is { } mean ? Printed.Millimetres(mean.Rounded) : ""
        );
}
