using ExamDocs.Core.Statistics;
using ExamDocs.Templates.Lessons;

namespace ExamDocs.Documents.Tests.Snapshots;

/// <summary>What invented records teach: of every kind of table a group that is large enough, and one that is too small to compare.</summary>
internal static class InventedLessons
{
    private static readonly IReadOnlyList<Lifetime> Rings = Lives(24, everyNth: 4, longest: 48);

    private static readonly IReadOnlyList<Lifetime> Shackles = Lives(22, everyNth: 2, longest: 30);

    private static readonly IReadOnlyList<Lifetime> Others = Lives(3, everyNth: 2, longest: 20);

    public static RecordLessons All { get; } =
        new()
        {
            Employer = "Harrowmere Tree Works",
            Visits = 14,
            Items = 131,
            First = new(2023, 3, 6),
            Last = new(2026, 4, 20),
            Rates =
            [
                new(GroupedBy.Category, [Rate("connector", 4, 60), Rate("harness", 0, 9), Rate("rope-bridge", 17, 49), Rate(null, 1, 2)]),
                new(GroupedBy.Model, [Rate("Fennock <&> bridge", 17, 49), Rate("Tarnley Oval", 4, 60)]),
                new(GroupedBy.Hardware, [Rate("ring", 6, 24), Rate("shackle", 11, 22)]),
                new(GroupedBy.Ground, [Rate("sandy", 12, 30), Rate(null, 5, 19)]),
                new(GroupedBy.Age, [Rate("0 – 1", 3, 49), Rate("1 – 2", 9, 40), Rate("8 +", 1, 3)]),
            ],
            Survival =
            [
                new(GroupedBy.Everything, [Survival("", [.. Rings, .. Shackles, .. Others], null)]),
                new(
                    GroupedBy.Hardware,
                    [
                        Survival("ring", Rings, [.. Shackles, .. Others]),
                        Survival("shackle", Shackles, [.. Rings, .. Others]),
                        Survival(null, Others, null),
                    ]
                ),
                new(GroupedBy.Ground, [Survival("sandy", [.. Rings, .. Shackles], null)]),
            ],
            LeftOut = 5,
            Wear = [new("ring", [.. Enumerable.Range(0, 20).Select(n => 0.002 * n)]), new("shackle", [-0.001, 0.03, 0.05])],
            Reasons = [new("rope-bridge", "cover-cut", 9), new("connector", "gate-action", 4), new(null, "identity", 1)],
            Agreement =
            [
                new(null, new CohenKappa(20, 5, 10, 65)),
                new("cover-cut", new CohenKappa(0, 0, 0, 25)),
                new("marking", new CohenKappa(1, 1, 0, 4)),
            ],
        };

    private static RateGroup Rate(string? name, int withdrawn, int items) => new(name, new Proportion(withdrawn, items));

    private static SurvivalGroup Survival(string? name, IReadOnlyList<Lifetime> lives, IReadOnlyList<Lifetime>? others) =>
        new(name, new KaplanMeier(lives), lives.Sum(l => l.Time - l.Entry), others is null ? null : LogRank.Of(lives, others));

    private static List<Lifetime> Lives(int number, int everyNth, int longest) =>
        [.. Enumerable.Range(1, number).Select(n => new Lifetime((double)(n * longest) / number, n % everyNth == 0))];
}
