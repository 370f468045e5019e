using static ExamDocs.UseCases.Tests.BetweenRecords.Stories.Story;

namespace ExamDocs.UseCases.Tests.BetweenRecords.Stories;

/// <summary>Kit that one record put in quarantine, sent for repair or lost, and another has again.</summary>
internal static class AsideStories
{
    private const string Spring = "2026-05-01";
    private const string Summer = "2026-07-01";
    private const string Autumn = "2026-11-02";

    public static IEnumerable<Story> All => [.. OfItself(), .. OnAHarness()];

    private static IEnumerable<Story> OfItself() =>
        [
            new Story("In quarantine, and back", "What was quarantined stays so until somebody releases it.")
            {
                Runs =
                [
                    [Connector("V-1", Spring)],
                    [Aside("quarantined")],
                    [Connector("V-2", Autumn)],
                ],
                Must = ["C-1 undetermined U3"],
            },
            new Story("In quarantine, released and back", "Somebody did.")
            {
                Runs =
                [
                    [Connector("V-1", Spring)],
                    [Aside("quarantined")],
                    [Connector("V-2", Autumn).Released("C-1", Summer)],
                ],
                Must = ["C-1 fit"],
            },
            new Story("Sent for repair, and back", "It may have been repaired: it was examined since.")
            {
                Runs =
                [
                    [Connector("V-1", Spring)],
                    [Aside("sent for repair")],
                    [Connector("V-2", Autumn)],
                ],
                Must = ["C-1 fit"],
            },
            new Story("Withdrawn and quarantined, made good and back", "The quarantine ends with the withdrawal that it was for.")
            {
                Runs =
                [
                    [Connector("V-1", Spring, i => i.Cut())],
                    [Aside("quarantined")],
                    [Connector("V-2", Autumn).Repaired("C-1").Released("C-1", Spring, "made-good")],
                ],
                Must = ["C-1 fit"],
            },
        ];

    private static IEnumerable<Story> OnAHarness() =>
        [
            .. from action in new[] { "quarantined", "sent for repair" }
            select new Story($"A bridge {action}, its harness alone", "Nobody has looked at the bridge since.")
            {
                Runs =
                [
                    [Both()],
                    [Bridge(i => i.NotLookedAt()).Disposed("RB-1", action)],
                    [Visit("V-2", Autumn).Harness("H-1", "A1")],
                ],
                Must = ["H-1 undetermined U6"],
            },
            new Story("A bridge lost, its harness alone", "It may be on the harness still.")
            {
                Runs =
                [
                    [Both()],
                    [Bridge(i => i.NotLookedAt("lost"))],
                    [Visit("V-2", Autumn).Harness("H-1", "A1")],
                ],
                Must = ["H-1 undetermined U6"],
            },
            new Story("A bridge quarantined and renewed, its harness alone", "The harness has another one.")
            {
                Runs =
                [
                    [Both()],
                    [Bridge(i => i.NotLookedAt()).Disposed("RB-1", "quarantined")],
                    [Visit("V-2", Autumn).Harness("H-1", "A1").Bridge("RB-2", "Q200", i => i.On("H-1")).Renewed("H-1", "RB-1", "RB-2")],
                ],
                Must = ["H-1 fit"],
            },
        ];

    private static StoryVisit Connector(string reference, string day, Func<StoryItem, StoryItem>? more = null) =>
        Visit(reference, day).Connector("C-1", "B7", more);

    private static StoryVisit Aside(string action) =>
        Visit("V-1b", Summer).Connector("C-1", "B7", i => i.NotLookedAt()).Disposed("C-1", action);

    private static StoryVisit Both() => Visit("V-1", Spring).Harness("H-1", "A1").Bridge("RB-1", "Q100", i => i.On("H-1"));

    private static StoryVisit Bridge(Func<StoryItem, StoryItem> more) =>
        Visit("V-1b", Summer).Bridge("RB-1", "Q100", i => more(i.On("H-1")));
}
