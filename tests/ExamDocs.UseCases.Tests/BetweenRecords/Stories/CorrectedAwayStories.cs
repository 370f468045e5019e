using static ExamDocs.UseCases.Tests.BetweenRecords.Stories.Story;

namespace ExamDocs.UseCases.Tests.BetweenRecords.Stories;

/// <summary>
/// What a corrected record no longer says: what ended something there, or told two things apart, counts no more; what was found against an
/// item still does.
/// </summary>
internal static class CorrectedAwayStories
{
    private const string Spring = "2026-05-01";
    private const string Summer = "2026-07-01";
    private const string Autumn = "2026-11-02";

    public static IEnumerable<Story> All => [.. Quarantines(), .. Releases(), .. Others(), .. Renamed()];

    private static IEnumerable<Story> Quarantines() =>
        [
            new Story("A reference used again after a quarantine, and the record corrected", "The quarantine was in another visit.")
            {
                Runs =
                [
                    [Aside("YARD")],
                    [Connector("YARD", Autumn)],
                    [Connector("YARD", Autumn, i => i.Mark("M1"))],
                ],
                Must = ["C-1 undetermined U3"],
            },
            new Story("A quarantine corrected away", "Only a release ends it.")
            {
                Runs =
                [
                    [Aside("V-1")],
                    [Visit("V-1", Summer).Connector("C-1", "B7", i => i.NotLookedAt())],
                    [Connector("V-2", Autumn)],
                ],
                Must = ["C-1 undetermined U3"],
            },
            new Story("In quarantine, and a release corrected away", "It was of another item.")
            {
                Runs =
                [
                    [Aside("V-1")],
                    [Connector("V-2", Autumn).Released("C-1", Summer)],
                    [Connector("V-2", Autumn)],
                ],
                Must = ["C-1 undetermined U3"],
            },
            .. Unsound()
                .Select(release => new Story($"In quarantine, and released elsewhere {release.How}", "It is no release.")
                {
                    Runs =
                    [
                        [Aside("V-1")],
                        [release.Of(Visit("V-2", Summer).Connector("C-1", "B7", i => i.NotLookedAt()))],
                        [Connector("V-3", Autumn)],
                    ],
                    Must = ["C-1 undetermined U3"],
                }),
            new Story("Withdrawn, released, and then put in quarantine", "The release was of the withdrawal.")
            {
                Runs =
                [
                    [Connector("V-1", Spring, i => i.Cut())],
                    [
                        Visit("V-2", "2026-06-01")
                            .Connector("C-1", "B7", i => i.NotLookedAt())
                            .Repaired("C-1")
                            .Released("C-1", Spring, "made-good"),
                    ],
                    [Aside("V-3")],
                    [Connector("V-4", Autumn)],
                ],
                Must = ["C-1 undetermined U3"],
            },
            .. from state in new[] { "in quarantine", "lost" }
            from now in new[] { (How: "another serial number", Id: "C-1", Serial: "B8"), (How: "another id", Id: "C-9", Serial: "B7") }
            select new Story($"Kit {state}, and back under {now.How}", "It may be that one: somebody has to say.")
            {
                Runs =
                [
                    [state is "lost" ? Visit("V-1", Summer).Connector("C-1", "B7", i => i.NotLookedAt("lost")) : Aside("V-1")],
                    [Visit("V-2", Autumn).Connector(now.Id, now.Serial)],
                ],
                Must = [$"{now.Id} undetermined U3"],
            },
        ];

    private static IEnumerable<(string How, Func<StoryVisit, StoryVisit> Of)> Unsound() =>
        [
            ("without grounds", v => v.Released("C-1", null, grounds: "")),
            ("by nobody who is known", v => v.Released("C-1", null, by: "ex9")),
            ("after the day of its record", v => v.Released("C-1", null, on: "2027-01-01")),
            ("under a document that is not known", v => v.Released("C-1", null, document: "Q-2026-000777")),
        ];

    private static IEnumerable<Story> Releases() =>
        [
            new Story("Withdrawn, and the release corrected away", "It was of another item.")
            {
                Runs =
                [
                    [Connector("V-1", Spring, i => i.Doubt())],
                    [Connector("V-2", Autumn).Released("C-1", Spring)],
                    [Connector("V-2", Autumn)],
                ],
                Must = ["C-1 withdraw W10"],
            },
            new Story("Withdrawn, and the release corrected away a visit ago", "It was of another item.")
            {
                Runs =
                [
                    [Connector("V-1", Spring, i => i.Doubt())],
                    [Visit("V-2", Summer).Connector("C-1", "B7", i => i.NotLookedAt()).Released("C-1", Spring)],
                    [Visit("V-2", Summer).Connector("C-1", "B7", i => i.NotLookedAt())],
                    [Connector("V-3", Autumn)],
                ],
                Must = ["C-1 withdraw W10"],
            },
            new Story("Withdrawn and released, and the release corrected with its record", "It is still there.")
            {
                Runs =
                [
                    [Connector("V-1", Spring, i => i.Doubt())],
                    [Visit("V-2", Summer).Connector("C-1", "B7", i => i.NotLookedAt()).Released("C-1", Spring)],
                    [Visit("V-2", Summer).Connector("C-1", "B7", i => i.NotLookedAt().Mark("M1")).Released("C-1", Spring)],
                    [Connector("V-3", Autumn)],
                ],
                Must = ["C-1 fit"],
            },
        ];

    private static IEnumerable<Story> Others() =>
        [
            new Story("A repair corrected away", "Nothing was made good.")
            {
                Runs =
                [
                    [Connector("V-1", Spring, i => i.Cut())],
                    [Visit("V-2", Summer).Connector("C-1", "B7", i => i.NotLookedAt()).Repaired("C-1")],
                    [Visit("V-2", Summer).Connector("C-1", "B7", i => i.NotLookedAt())],
                    [Connector("V-3", Autumn).Released("C-1", Spring, "made-good")],
                ],
                Must = ["C-1 withdraw W10"],
            },
            new Story("A repair of a later defect corrected away, and another serial number", "The defect is there still.")
            {
                Runs =
                [
                    [Connector("V-1", Spring, i => i.LaterDefect("2027-03-01"))],
                    [Visit("V-2", Summer).Connector("C-1", "B7", i => i.NotLookedAt()).Repaired("C-1")],
                    [Visit("V-2", Summer).Connector("C-1", "B7", i => i.NotLookedAt())],
                    [Visit("V-3", Autumn).Connector("C-1", "B8")],
                ],
                Must = ["C-1 undetermined U3"],
            },
            new Story("A serial number typed twice and corrected", "It was never a batch number.")
            {
                Runs =
                [
                    [Connector("V-1", Spring).Connector("C-2", "B7")],
                    [Connector("V-1", Spring).Connector("C-2", "B8")],
                    [Connector("V-2", Summer, i => i.Cut())],
                    [Visit("V-3", Autumn).Connector("C-9", "B7")],
                ],
                Must = ["C-9 undetermined U3"],
            },
            new Story("An answer corrected away", "Nobody says any more that they are two.")
            {
                Runs =
                [
                    [Connector("V-1", Spring, i => i.Cut())],
                    [Visit("V-2", Autumn).Connector("C-9", "B7", i => i.Not("C-1", "both were on the table")).Connector("C-1", "B7")],
                    [Visit("V-2", Autumn).Connector("C-9", "B7")],
                ],
                Must = ["C-9 undetermined U3"],
            },
            new Story("An answer corrected away, and the next visit", "What was fit by the answer vouches for nothing.")
            {
                Runs =
                [
                    [Connector("V-1", Spring, i => i.Cut())],
                    [Visit("V-2", Summer).Connector("C-9", "B7", i => i.Not("C-1", "both were on the table")).Connector("C-1", "B7")],
                    [Visit("V-2", Summer).Connector("C-9", "B7")],
                    [Visit("V-3", Autumn).Connector("C-9", "B7")],
                ],
                Must = ["C-9 undetermined U3"],
            },
            new Story("A renewal corrected away", "The withdrawn bridge is on the harness still.")
            {
                Runs =
                [
                    .. BridgeRenewed(),
                    [Visit("V-1", Summer).Harness("H-1", "A1").Bridge("RB-1", "Q100", i => i.On("H-1").Doubt())],
                    [Visit("V-9", Autumn).Harness("H-1", "A1")],
                ],
                Must = ["H-1 withdraw W9"],
            },
            .. from owner in new[] { "Alder Vale Ltd", "Brackwater Trees" }
            from id in new[] { "C-1", "C-9" }
            where (owner, id) is not ("Alder Vale Ltd", "C-1")
            select new Story($"Withdrawn, and back as {id} of {owner} with the maker cut short", "Fennick may be Fennick Works.")
            {
                Runs =
                [
                    [Connector("V-1", Spring, i => i.Cut())],
                    [Visit("V-2", Autumn, owner).Connector(id, "B7", i => i.Maker("Fennick"))],
                ],
                Must = [$"{id} undetermined U3"],
            },
        ];

    /// <summary>The corrected record has the item under a new id, which says that it is the same.</summary>
    private static IEnumerable<Story> Renamed() =>
        [
            new Story("A release corrected away with the id", "It was of another item.")
            {
                Runs =
                [
                    [Connector("V-1", Spring, i => i.Doubt())],
                    [Connector("V-2", Autumn).Released("C-1", Spring)],
                    [Visit("V-2", Autumn).Connector("C-1A", "B7", i => i.Formerly("C-1"))],
                ],
                Must = ["C-1A withdraw W10"],
            },
            new Story("A release of a quarantine corrected away with the id", "It was of another item.")
            {
                Runs =
                [
                    [Aside("V-1")],
                    [Connector("V-2", Autumn).Released("C-1", Summer)],
                    [Visit("V-2", Autumn).Connector("C-1A", "B7", i => i.Formerly("C-1"))],
                ],
                Must = ["C-1A undetermined U3"],
            },
            new Story("An answer corrected away with the id", "Nobody says any more that they are two.")
            {
                Runs =
                [
                    [Connector("V-1", Spring, i => i.Cut())],
                    [Visit("V-2", Autumn).Connector("C-9", "B7", i => i.Not("C-1", "both were on the table")).Connector("C-1", "B7")],
                    [Visit("V-2", Autumn).Connector("C-8", "B7", i => i.Formerly("C-9"))],
                ],
                Must = ["C-8 undetermined U3"],
            },
            new Story("A renewal corrected away with the id of the bridge", "The withdrawn bridge is on the harness still.")
            {
                Runs =
                [
                    .. BridgeRenewed(),
                    [Visit("V-1", Summer).Bridge("RB-1A", "Q100", i => i.Formerly("RB-1").On("H-1").Doubt())],
                    [Visit("V-9", Autumn).Harness("H-1", "A1")],
                ],
                Must = ["H-1 withdraw W9"],
            },
        ];

    /// <summary>A harness with a bridge, which was in doubt and renewed.</summary>
    private static IEnumerable<StoryVisit[]> BridgeRenewed() =>
        [
            [Visit("V-0", Spring).Harness("H-1", "A1").Bridge("RB-1", "Q100", i => i.On("H-1"))],
            [
                Visit("V-1", Summer)
                    .Harness("H-1", "A1")
                    .Bridge("RB-1", "Q100", i => i.Doubt())
                    .Bridge("RB-3", "Q300", i => i.On("H-1"))
                    .Renewed("H-1", "RB-1", "RB-3"),
            ],
        ];

    private static StoryVisit Connector(string reference, string day, Func<StoryItem, StoryItem>? more = null) =>
        Visit(reference, day).Connector("C-1", "B7", more);

    private static StoryVisit Aside(string reference) =>
        Visit(reference, Summer).Connector("C-1", "B7", i => i.NotLookedAt()).Disposed("C-1", "quarantined");
}
