using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;

namespace ExamDocs.UseCases.Tests.SeededYears;

/// <summary>A model of the invented firm's kit: how many it has, what its maker allows, and how often it has to be withdrawn.</summary>
/// <param name="Category">Id of the category.</param>
/// <param name="Prefix">What ids and serial numbers begin with.</param>
/// <param name="Count">How many are in use at any time.</param>
/// <param name="UseYears">How long its maker lets it serve.</param>
/// <param name="Risk">The chance that one examination withdraws it.</param>
/// <param name="Faults">The criteria that a withdrawal is about; the first is the usual one.</param>
internal sealed record SeededModel(
    string Category,
    string Prefix,
    int Count,
    string Maker,
    string Model,
    string Description,
    int UseYears,
    double Risk,
    params string[] Faults
)
{
    public const string BridgePart = "FB-11-38";

    public static SeededModel Bridge { get; } =
        new(
            "rope-bridge",
            "FB",
            90,
            "Fennock Harness",
            "Fennock bridge",
            "Rope bridge, 380 mm",
            3,
            0.02,
            "cover-cut",
            "heat",
            "core-visible"
        );

    /// <summary>400 items with the bridges.</summary>
    public static IReadOnlyList<SeededModel> All { get; } =
    [
        new("harness", "FH", 60, "Fennock Harness", "Fennock 4", "Tree-climbing harness", 10, 0.012, "webbing-cut", "stitching"),
        new("harness", "MH", 30, "Marlbeck Works", "Marlbeck Ridge", "Tree-climbing harness", 10, 0.03, "stitching", "buckles-operate"),
        Bridge,
        new(
            "connector",
            "TO",
            70,
            "Tarnley Metal",
            "Tarnley Oval",
            "Oval connector, self-locking gate",
            15,
            0.012,
            "lock-action",
            "wear-groove"
        ),
        new("connector", "TB", 30, "Tarnley Metal", "Tarnley Bow", "Bow connector, screw gate", 15, 0.03, "rivet-play", "gate-action"),
        new("lanyard", "ML", 40, "Marlbeck Works", "Marlbeck Flipline", "Positioning lanyard with adjuster", 6, 0.03, "cut", "termination"),
        new("friction-cord", "GC", 30, "Garlow Cordage", "Garlow Hitch 10", "Hitch cord with sewn eyes", 4, 0.07, "heat", "cover-cut"),
        new("climbing-rope", "GR", 20, "Garlow Cordage", "Garlow Line 11.8", "Climbing rope 45 m", 5, 0.04, "cover-cut", "core-feel"),
        new("sling", "GS", 20, "Garlow Cordage", "Garlow Strop", "Anchor strop 1.2 m", 6, 0.025, "cut", "stitching"),
        new("swivel-ring", "TR", 10, "Tarnley Metal", "Tarnley Ring 28", "Plain ring", 15, 0.01),
    ];

    /// <summary>Its maker's limits, with what every item of the model shares.</summary>
    public MakersLimits Limits =>
        new()
        {
            Maker = Maker,
            Model = Model,
            PartNumber = IsBridge ? BridgePart : null,
            Source = new LimitsSource
            {
                Title = $"Instructions for use, {Model}",
                Revision = "2",
                Page = "6",
            },
            MaxUseYears = UseYears,
            MaxStorageYears = 2,
            IntervalMonths = 12,
            NominalDiameterMm = IsBridge ? 11 : null,
            DiameterTolerancePercent = IsBridge ? 10 : null,
            PermittedParts = Prefix is "FH" or "MH" ? [BridgePart] : null,
            Retying = IsBridge || Prefix is "FH" or "MH" ? Core.Records.Retying.Maker : null,
            Description = Description,
            SafeWorkingLoad = new Load
            {
                Value = 1,
                Unit = "persons",
                Basis = "maker's instructions",
            },
            MarkedStrength = new Load { Value = 22, Unit = "kN" },
        };

    public bool IsBridge => Category is "rope-bridge";

    public IReadOnlyList<Criterion> Criteria => Catalogue.Find(Category)!.Criteria;
}
