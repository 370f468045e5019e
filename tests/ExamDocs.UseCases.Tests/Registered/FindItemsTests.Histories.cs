using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using static ExamDocs.UseCases.Tests.BetweenRecords.Stories.Story;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>Histories in which it matters which records are about one thing, in which order they came in, and what is fitted to it.</summary>
public sealed partial class FindItemsTests
{
    private static readonly (string Name, StoryVisit[] Visits, string Asked, string Must)[] Histories =
    [
        (
            "cut under an earlier id, on old paper that comes in late",
            [Visit("V-9", Autumn).Bridge("RB-9", "Q777", i => i.Formerly("RB-1")), Visit("V-1", Spring).Bridge("RB-1", null, i => i.Cut())],
            "RB-9",
            "RB-9 Held"
        ),
        (
            "the same, two ids ago",
            [
                Visit("V-8", Summer).Bridge("RB-5", null, i => i.Formerly("RB-1")),
                Visit("V-9", Autumn).Bridge("RB-9", null, i => i.Formerly("RB-5")),
                Visit("V-1", Spring).Bridge("RB-1", null, i => i.Cut()),
            ],
            "RB-9",
            "RB-9 Held"
        ),
        (
            "withdrawn under an earlier id, and released",
            [
                Bridge(Spring, i => i.Concluded()),
                Visit("V-9", Autumn).Bridge("RB-9", "Q100", i => i.Formerly("RB-1")).Released("RB-9", Spring),
            ],
            "RB-9",
            "RB-9 NotIssued"
        ),
        (
            "withdrawn, sold and released by the new owner",
            [Bridge(Spring, i => i.Concluded()), Visit("V-9", Autumn, "Other Firm").Bridge("RB-1", "Q100").Released("RB-1", Spring)],
            "RB-1",
            "RB-1 NotIssued"
        ),
        (
            "sold, and lost by the new owner",
            [Bridge(Summer), Visit("V-9", Autumn, "Other Firm").Bridge("RB-1", "Q100", i => i.NotLookedAt("lost"))],
            "RB-1",
            "RB-1 Withdrawn"
        ),
        (
            "another tag of the same visit, cut since, with its serial number",
            [Visit("V-1", Summer).Bridge("RB-1", "Q100").Bridge("RB-9", "Q200"), Visit("V-9", Autumn).Bridge("RB-9", "Q100", i => i.Cut())],
            "RB-1",
            "RB-9 Withdrawn|RB-1 Held|RB-9 Held"
        ),
        (
            "another tag of the same visit, there without a serial number",
            [
                Visit("V-1", Summer).Bridge("RB-1", "Q100").Bridge("RB-9", null, i => i.NotLookedAt()),
                Visit("V-9", Autumn).Bridge("RB-9", "Q100", i => i.Cut()),
            ],
            "RB-1",
            "RB-9 Withdrawn|RB-1 Held"
        ),
        (
            "another tag, cut, its maker written with the legal form",
            [Bridge(Summer), Visit("V-9", Autumn).Bridge("RB-9", "Q100", i => i.Maker("Fennick Works Ltd").Cut())],
            "RB-1",
            "RB-9 Withdrawn|RB-1 Held"
        ),
        (
            "another tag, cut, and the maker of this one mistyped since",
            [
                Bridge(Spring),
                Visit("V-2", Summer).Bridge("RB-1", "Q100", i => i.Maker("Fenwick")),
                Visit("V-9", Autumn).Bridge("RB-9", "Q100", i => i.Cut()),
            ],
            "RB-1",
            "RB-9 Withdrawn|RB-1 Held"
        ),
        (
            "a batch number of two drags no third in",
            [Visit("V-1", Summer).Bridge("RB-1", "B5").Bridge("RB-2", "B5"), Visit("V-9", Autumn).Bridge("RB-3", "B5", i => i.Cut())],
            "RB-1",
            "RB-1 NotIssued"
        ),
        (
            "a serial number of another kind of kit",
            [Bridge(Summer), Visit("V-9", Autumn).Connector("C-3", "Q100", i => i.Cut())],
            "RB-1",
            "RB-1 NotIssued"
        ),
        (
            "the tag went from a cut thing to a new one",
            [Bridge(Summer, i => i.Cut()), NewUnderTheTag()],
            "RB-1",
            "RB-1 Withdrawn|RB-1 NotIssued"
        ),
        (
            "the tag went on, and the cut one is asked for by its serial number",
            [Bridge(Summer, i => i.Cut()), NewUnderTheTag()],
            "Q100",
            "RB-1 Withdrawn"
        ),
        ("the tag went on from one that is held", [Bridge(Summer, i => i.Forgotten()), NewUnderTheTag()], "Q100", "RB-1 Held"),
        ("the tag went on from one that is overdue", [Bridge("2026-05-01"), NewUnderTheTag()], "Q100", "RB-1 Overdue"),
        (
            "the tag went on from one whose last day of use is past",
            [Bridge(Summer, i => i.LaterDefect("2026-09-01")), NewUnderTheTag()],
            "Q100",
            "RB-1 Withdrawn"
        ),
        (
            "a serial number corrected in the same visit is no second thing",
            [Visit("V-1", Summer).Bridge("RB-1", "Q999"), Visit("V-1", Summer).Bridge("RB-1", "Q100")],
            "RB-1",
            "RB-1 NotIssued"
        ),
        (
            "asked by the serial number as it was mistyped",
            [Visit("V-1", Summer).Bridge("RB-1", "Q999"), Visit("V-1", Summer).Bridge("RB-1", "Q100")],
            "Q999",
            "RB-1 NotIssued"
        ),
        (
            "cut, and nobody's the next time",
            [Bridge(Summer, i => i.Cut()), Visit("V-9", Autumn, "").Bridge("RB-1", null)],
            "Q100",
            "RB-1 Withdrawn"
        ),
        (
            "a correction moves the examination to an earlier day",
            [Visit("V-1", Autumn).Bridge("RB-1", "Q100"), Visit("V-1", "2026-05-01").Bridge("RB-1", "Q100")],
            "RB-1",
            "RB-1 Overdue"
        ),
        (
            "a correction of an earlier day takes an answer back",
            [
                Visit("V-1", Autumn).Bridge("RB-1", "Q100"),
                Visit("v 01", "2026-10-02", "ALDER VALE").Bridge("rb1", "Q100", i => i.Forgotten()),
            ],
            "RB-1",
            "rb1 Held"
        ),
        (
            "an old visit of the same reference comes in late",
            [Visit("V-1", Autumn).Bridge("RB-1", "Q100", i => i.Forgotten()), Visit("V-1", Summer).Bridge("RB-1", "Q100")],
            "RB-1",
            "RB-1 Held"
        ),
        (
            "lost, stored before the examination",
            [Visit("V-9", Autumn).Bridge("RB-1", "Q100", i => i.NotLookedAt("lost")), Bridge(Summer)],
            "RB-1",
            "RB-1 Withdrawn"
        ),
        (
            "lost, and the visit before it corrected",
            [Bridge(Summer), Visit("V-9", Autumn).Bridge("RB-1", "Q100", i => i.NotLookedAt("lost")), Bridge(Summer, i => i.Mark("M9"))],
            "RB-1",
            "RB-1 Withdrawn"
        ),
        (
            "lost, and examined since",
            [Visit("V-1", Summer).Bridge("RB-1", "Q100", i => i.NotLookedAt("lost")), Bridge(Autumn)],
            "RB-1",
            "RB-1 NotIssued"
        ),
        (
            "destroyed, by another spelling in a list without it",
            [Bridge(Summer), Visit("V-9", Autumn).Bridge("RB-2", "Q200").Disposed("rb 1", "destroyed")],
            "RB-1",
            "RB-1 Withdrawn"
        ),
        (
            "put in quarantine since",
            [Bridge(Summer), Visit("V-9", Autumn).Bridge("RB-1", "Q100", i => i.NotLookedAt()).Disposed("RB-1", "quarantined")],
            "RB-1",
            "RB-1 Held"
        ),
        (
            "two visits of one day, the worse one stored first",
            [Visit("V-A", Autumn).Bridge("RB-1", "Q100", i => i.Forgotten()), Visit("V-B", Autumn).Bridge("RB-1", "Q100")],
            "RB-1",
            "RB-1 Held"
        ),
        (
            "withdrawn and released on one day",
            [
                Visit("V-A", Autumn).Bridge("RB-1", "Q100", i => i.Concluded()),
                Visit("V-B", Autumn).Bridge("RB-1", "Q100").Released("RB-1", Autumn),
            ],
            "RB-1",
            "RB-1 NotIssued"
        ),
        ("its part cut on paper that comes in late", [HarnessAlone(), CutPart()], "H-1", "H-1 Held"),
        (
            "that part taken off another firm's harness of the same id",
            [
                HarnessAlone(),
                CutPart(),
                Visit("V-5", "2026-08-01", "Other Firm")
                    .Harness("H-1", "X1")
                    .Bridge("RB-1", "X5", i => i.NotLookedAt())
                    .Renewed("H-1", "RB-1", null),
            ],
            "H-1",
            "H-1 Held|H-1 NotIssued"
        ),
        (
            "that part moved to another harness by a row alone",
            [HarnessAlone(), CutPart(), Visit("V-10", Summer).Bridge("RB-1", "Q100", i => i.On("H-2").NotLookedAt())],
            "H-1",
            "H-1 Held"
        ),
        (
            "another part of that id taken off",
            [HarnessAlone(), CutPart(), Visit("V-10", Summer).Bridge("RB-1", "Q555", i => i.NotLookedAt()).Renewed("H-1", "RB-1", null)],
            "H-1",
            "H-1 Held"
        ),
        (
            "that part on its earlier tag",
            [
                Visit("V-0", Spring).Harness("H-9", "H100"),
                Visit("V-1", Autumn).Harness("H-1", "H100", i => i.Formerly("H-9")),
                Visit("V-3", Summer).Bridge("RB-5", "Q5", i => i.On("H-9").Cut()),
            ],
            "H-1",
            "H-1 Held"
        ),
    ];

    private static StoryVisit NewUnderTheTag() =>
        Visit("V-9", Autumn).Bridge("RB-1", "Q999", i => i.Not("RB-1", "the new one that took its place"));

    private static StoryVisit HarnessAlone() => Visit("V-1", Autumn).Harness("H-1", "H100");

    private static StoryVisit CutPart() => Visit("V-9", Spring).Bridge("RB-1", "Q100", i => i.On("H-1").Cut());
}
