using ExamDocs.Core.Recalls;
using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Recalling;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using ExamDocs.UseCases.Tests.Issuing;
using NodaTime;
using static ExamDocs.UseCases.Tests.BetweenRecords.Stories.Story;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>A notice of the maker of all bridges, which names serial numbers Q100 to Q199, against what a register holds.</summary>
public sealed class RecallItemsTests : IDisposable
{
    private const string Spring = "2026-05-11";
    private const string Autumn = "2026-11-02";
    private static readonly LocalDate Today = new(2026, 11, 9);

    private readonly Workspace _workspace = new();
    private int _files;

    public void Dispose() => _workspace.Dispose();

    private static readonly (string Name, StoryVisit[] Visits, string Must)[] Cases =
    [
        ("named", [Visit("V-1", Spring).Bridge("RB-1", "Q150")], "RB-1 Affected"),
        ("not named", [Visit("V-1", Spring).Bridge("RB-1", "Q250")], "RB-1 NotAffected"),
        ("no serial number", [Visit("V-1", Spring).Bridge("RB-1", null)], "RB-1 CannotTell"),
        ("another maker", [Visit("V-1", Spring).Bridge("RB-1", "Q150", i => i.Maker("Tarnholm Gear"))], "RB-1 NotAffected"),
        ("maker spelt otherwise", [Visit("V-1", Spring).Bridge("RB-1", "q-0150", i => i.Maker("FENNICK WORKS LTD."))], "RB-1 Affected"),
        ("maker misspelt", [Visit("V-1", Spring).Bridge("RB-1", "Q150", i => i.Maker("Fenick Works"))], "RB-1 CannotTell"),
        ("withdrawn", [Visit("V-1", Spring).Bridge("RB-1", "Q150", i => i.Cut())], "RB-1 Affected"),
        (
            "lost",
            [Visit("V-1", Spring).Bridge("RB-1", "Q150"), Visit("V-2", Autumn).Bridge("RB-1", "Q150", i => i.NotLookedAt("lost"))],
            "RB-1 Affected"
        ),
        ("destroyed", [Visit("V-1", Spring).Bridge("RB-1", "Q150", i => i.Destroyed())], "RB-1 Affected"),
        (
            "its serial number left out later",
            [Visit("V-1", Spring).Bridge("RB-1", "Q150"), Visit("V-2", Autumn).Bridge("RB-1", null)],
            "RB-1 Affected"
        ),
        (
            "named under a former id",
            [Visit("V-1", Spring).Bridge("RB-1", "Q150"), Visit("V-2", Autumn).Bridge("RB-9", null, i => i.Formerly("RB-1"))],
            "RB-9 Affected"
        ),
        ("sold", [Visit("V-1", Spring).Bridge("RB-1", "Q150"), Visit("V-2", Autumn, "Birch Ltd").Bridge("RB-1", "Q150")], "RB-1 Affected"),
        (
            "of two employers",
            [Visit("V-1", Spring).Bridge("RB-1", "Q150"), Visit("V-2", Spring, "Birch Ltd").Bridge("RB-7", "Q160")],
            "RB-1 Affected|RB-7 Affected"
        ),
        (
            "fitted to a harness of another maker",
            [Visit("V-1", Spring).Harness("H-1", "H100", i => i.Maker("Tarnholm Gear")).Bridge("RB-1", "Q150", i => i.On("H-1"))],
            "H-1 Affected|RB-1 Affected"
        ),
        (
            "may be fitted to a harness of another maker",
            [Visit("V-1", Spring).Harness("H-1", "H100", i => i.Maker("Tarnholm Gear")).Bridge("RB-1", null, i => i.On("H-1"))],
            "H-1 CannotTell|RB-1 CannotTell"
        ),
        (
            "a part that only a renewal names",
            [Visit("V-1", Spring).Harness("H-1", "H100", i => i.Maker("Tarnholm Gear")).Renewed("H-1", "RB-1", null)],
            "RB-1 CannotTell|H-1 NotAffected"
        ),
        ("on two rows of one record under one id", [Visit("V-1", Spring).Bridge("RB-1", "Q250").Bridge("RB-1", "Q150")], "RB-1 Affected"),
        (
            "its serial number corrected",
            [Visit("V-1", Spring).Bridge("RB-1", "Q150"), Visit("V-1", Spring).Bridge("RB-1", "Q250")],
            "RB-1 Affected"
        ),
        (
            "its maker corrected",
            [Visit("V-1", Spring).Bridge("RB-1", "Q150"), Visit("V-1", Spring).Bridge("RB-1", "Q150", i => i.Maker("Tarnholm Gear"))],
            "RB-1 Affected"
        ),
        (
            "left out of a later version of its visit",
            [Visit("V-1", Spring).Bridge("RB-1", "Q150").Bridge("RB-2", "Q250"), Visit("V-1", Spring).Bridge("RB-2", "Q250")],
            "RB-1 Affected|RB-2 NotAffected"
        ),
        (
            "a part that a renewal fitted and nobody looked at",
            [Visit("V-1", Spring).Harness("H-1", "H100", i => i.Maker("Tarnholm Gear")).Renewed("H-1", null, "RB-1")],
            "RB-1 CannotTell|H-1 CannotTell"
        ),
        (
            "a part that nobody looked at, under an id that somebody else's part has too",
            [
                Visit("V-1", Spring).Bridge("RB-1", "Q250"),
                Visit("V-2", Spring, "Birch Ltd").Harness("H-2", "H100", i => i.Maker("Tarnholm Gear")).Renewed("H-2", null, "RB-1"),
            ],
            "H-2 CannotTell|RB-1 CannotTell|RB-1 NotAffected"
        ),
        (
            "a part without an id on a harness of another maker",
            [Visit("V-1", Spring).Harness("H-1", "H100", i => i.Maker("Tarnholm Gear")).Bridge(null!, "Q150", i => i.On("H-1"))],
            " Affected|H-1 Affected"
        ),
        (
            "fitted to a harness by a later record, under a spelling of its own",
            [
                Visit("V-1", Spring).Harness("H-1", "H100", i => i.Maker("Tarnholm Gear")).Bridge("RB-1", "Q150"),
                Visit("V-2", Autumn).Bridge("rb 01", "q 150", i => i.On("h1")),
            ],
            "H-1 Affected|rb 01 Affected"
        ),
        (
            "hired, and sold under another tag",
            [
                Visit("V-1", Spring, "Birch Ltd").HiredFrom("Elm Hire").Bridge("RB-1", "Q150"),
                Visit("V-2", Autumn).Bridge("B-7", "Q150", i => i.Maker("Tarnholm Gear")),
            ],
            "B-7 NotAffected|RB-1 Affected"
        ),
        (
            "another of that tag",
            [Visit("V-1", Spring).Bridge("RB-1", "Q150"), Visit("V-2", Autumn).Bridge("RB-1", "Q250")],
            "RB-1 Affected|RB-1 NotAffected"
        ),
    ];

    public static TheoryData<string> Names { get; } = [.. Cases.Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_item_of_the_register_is_affected_not_affected_or_open(string name)
    {
        var (_, visits, must) = Cases.Single(c => c.Name == name);
        foreach (var visit in visits)
            Import(visit);
        Assert.Equal(
            must.Split('|').Order(StringComparer.Ordinal),
            Found().Select(i => $"{i.Item.Id} {i.Verdict}").Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void The_affected_come_first_with_how_they_stand_and_why()
    {
        Import(Visit("V-1", Spring).Bridge("RB-1", "Q250").Bridge("RB-2", null).Bridge("RB-3", "Q150", i => i.Cut()));
        var found = Found();
        Assert.Equal(["RB-3", "RB-2", "RB-1"], found.Select(i => i.Item.Id));
        Assert.Contains("withdrawn on 11 May 2026", found[0].Why!.Text, StringComparison.Ordinal);
        Assert.Equal(["no serial number is on record"], found[1].Reasons.Select(r => r.Text));
    }

    private IReadOnlyList<RecalledItem> Found() =>
        RecallItems.In(
            _workspace.Register,
            new SafetyNotice
            {
                Maker = "Fennick Works",
                Reference = "FW-1",
                On = new(2026, 11, 1),
                Demands = "Take it out of use.",
                ReadAt = "letter",
                Affected = [new NamedKit { SerialRanges = [new("Q100", "Q199")] }],
            },
            Today
        );

    private void Import(StoryVisit visit)
    {
        var path = Path.Combine(_workspace.Folder, FormattableString.Invariant($"visit-{++_files}.json"));
        File.WriteAllText(path, visit.Json);
        ImportVisits.Run([path], _workspace.Register, Today, KnownRules.BuiltIn);
    }
}
