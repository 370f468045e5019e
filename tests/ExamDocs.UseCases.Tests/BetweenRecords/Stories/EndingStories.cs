using static ExamDocs.UseCases.Tests.BetweenRecords.Stories.Story;

namespace ExamDocs.UseCases.Tests.BetweenRecords.Stories;

/// <summary>What ends a withdrawal, and what does not: releases, corrections, loss and destruction.</summary>
internal static class EndingStories
{
    private const string Spring = "2026-05-11";
    private const string Autumn = "2026-11-02";
    private const string NextSpring = "2027-04-20";

    public static IEnumerable<Story> All => [.. Released(), .. NotReleased(), .. Corrected(), .. Gone()];

    private static IEnumerable<Story> Released() =>
        [
            new Story("A doubt, examined again", "A second look settles a doubt.")
            {
                Runs =
                [
                    [First(i => i.Doubt())],
                    [Second().Released("C-1", Spring, "examined-again")],
                ],
                Must = ["C-1 fit"],
            },
            new Story("The examiner's own word, examined again", "Nothing had been found.")
            {
                Runs =
                [
                    [First(i => i.Concluded())],
                    [Second().Released("C-1", Spring)],
                ],
                Must = ["C-1 fit"],
            },
            new Story("A defect made good", "The repair is on record and the release says so.")
            {
                Runs =
                [
                    [First(i => i.Cut())],
                    [Second().Repaired("C-1").Released("C-1", Spring, "made-good")],
                ],
                Must = ["C-1 fit"],
            },
            new Story("A defect made good, the reason left out", "A repair on record is the reason.")
            {
                Runs =
                [
                    [First(i => i.Cut())],
                    [Second().Repaired("C-1").Released("C-1", Spring)],
                ],
                Must = ["C-1 fit"],
            },
            new Story("A defect made good, the repair in another record", "The repair is on record, whichever has it.")
            {
                Runs =
                [
                    [First(i => i.Cut())],
                    [Visit("V-1b", "2026-07-01").Connector("C-1", "B7", i => i.NotLookedAt()).Repaired("C-1")],
                    [Second().Released("C-1", Spring, "made-good")],
                ],
                Must = ["C-1 fit"],
            },
            new Story(
                "A repair of another thing under the id, years of both under a new id",
                "What was cleaned was made by somebody else: the defect of this one was never made good."
            )
            {
                Runs =
                [
                    [First(i => i.Cut())],
                    [Visit("V-1b", "2026-07-01").Connector("C-1", "Z9", i => i.Maker("Hollin Forge").NotLookedAt()).Repaired("C-1")],
                    [Visit("V-1c", "2026-08-01").Connector("C-1", "B7", i => i.NotLookedAt()).Released("C-1", Spring, "made-good")],
                    [Visit("V-2", Autumn).Connector("C-1-B", "B7", i => i.Formerly("C-1"))],
                ],
                Must = ["C-1-B withdraw W10"],
            },
            new Story("Saw contact recorded in error", "It alone reaches what nothing else releases.")
            {
                Runs =
                [
                    [Saw()],
                    [SecondBridge().Released("RB-1", Spring, "recorded-in-error", grounds: "the stain was paint, seen under the lens")],
                ],
                Must = ["RB-1 fit"],
            },
            new Story("Released, and the visit after", "Once recorded it holds.")
            {
                Runs =
                [
                    [First(i => i.Doubt())],
                    [Second().Released("C-1", Spring, "examined-again")],
                    [Visit("V-3", NextSpring).Connector("C-1", "B7")],
                ],
                Must = ["C-1 fit"],
            },
            new Story("Released under another spelling", "c 01 is C-1.")
            {
                Runs =
                [
                    [First(i => i.Doubt())],
                    [Visit("V-2", Autumn).Connector("c 01", "B7").Released("c 01", Spring, "examined-again")],
                ],
                Must = ["c 01 fit"],
            },
        ];

    private static IEnumerable<Story> NotReleased() =>
        [
            new Story("Withdrawn and released in one record", "A record that withdraws the item does not release it in the same breath.")
            {
                Runs =
                [
                    [First(i => i.Doubt()).Released("C-1", Spring, "examined-again")],
                    [Second()],
                ],
                Must = ["C-1 withdraw W10"],
            },
            new Story(
                "Withdrawn and released in one record, said to be an error",
                "Which of the two is wrong is for a later record to say."
            )
            {
                Runs =
                [
                    [First(i => i.Cut()).Released("C-1", Spring, "recorded-in-error", grounds: "the crack was a casting mark")],
                    [Second()],
                ],
                Must = ["C-1 withdraw W10"],
            },
            new Story("A decisive defect, examined again", "A crack does not heal by looking.")
            {
                Runs =
                [
                    [First(i => i.Cut())],
                    [Second().Released("C-1", Spring, "examined-again")],
                ],
                Must = ["C-1 withdraw W10"],
            },
            new Story("Made good without a repair on record", "Nothing was made good.")
            {
                Runs =
                [
                    [First(i => i.Cut())],
                    [Second().Released("C-1", Spring, "made-good")],
                ],
                Must = ["C-1 withdraw W10"],
            },
            new Story("Made good by a repair from before the withdrawal", "It came too early to make this good.")
            {
                Runs =
                [
                    [First(i => i.Cut())],
                    [Second().Repaired("C-1", "2026-05-01").Released("C-1", Spring, "made-good")],
                ],
                Must = ["C-1 withdraw W10"],
            },
            new Story("Saw contact made good", "Nothing makes saw contact good.")
            {
                Runs =
                [
                    [Saw()],
                    [SecondBridge().Repaired("RB-1").Released("RB-1", Spring, "made-good")],
                ],
                Must = ["RB-1 withdraw W10"],
            },
            new Story("A release dated after the examination", "The examination cannot rest on it.")
            {
                Runs =
                [
                    [First(i => i.Doubt())],
                    [Second().Released("C-1", Spring, on: "2026-11-03")],
                ],
                Must = ["C-1 withdraw W10"],
            },
            new Story("A release dated a year after the examination", "The same.")
            {
                Runs =
                [
                    [First(i => i.Doubt())],
                    [Second().Released("C-1", Spring, on: "2027-11-02")],
                ],
                Must = ["C-1 withdraw W10"],
            },
            new Story("A release dated before the withdrawal", "It cannot have known of it.")
            {
                Runs =
                [
                    [First(i => i.Doubt())],
                    [Second().Released("C-1", Spring, on: "2026-05-10")],
                ],
                Must = ["C-1 withdraw W10"],
            },
            new Story("Dated the day after the examination, recorded in error", "No reason makes a later day an earlier one.")
            {
                Runs =
                [
                    [First(i => i.Cut())],
                    [Second().Released("C-1", Spring, "recorded-in-error", on: "2026-11-03")],
                ],
                Must = ["C-1 withdraw W10"],
            },
            .. new[] { ".", "ok", "fine fine", "- - - -" }.Select(grounds => new Story(
                $"A release on the grounds \"{grounds}\"",
                "Grounds are a sentence: two words at least that say something."
            )
            {
                Runs =
                [
                    [First(i => i.Doubt())],
                    [Second().Released("C-1", Spring, grounds: grounds)],
                ],
                Must = [grounds == "fine fine" ? "C-1 fit" : "C-1 withdraw W10"],
            }),
            .. new[] { "Q-2026-000404", "R-2026-000404", "N-2025-000001", "the red label" }.Select(document => new Story(
                $"A release of {document}, which does not exist",
                "It names a document that withdrew nothing."
            )
            {
                Runs =
                [
                    [First(i => i.Doubt())],
                    [Second().Released("C-1", null, document: document)],
                ],
                Must = ["C-1 withdraw W10"],
            }),
            new Story("A release of another day's withdrawal", "On that day nothing was withdrawn.")
            {
                Runs =
                [
                    [First(i => i.Doubt())],
                    [Second().Released("C-1", "2026-05-12")],
                ],
                Must = ["C-1 withdraw W10"],
            },
            new Story("A release that names neither document nor day", "It releases only what its own record withdrew.")
            {
                Runs =
                [
                    [First(i => i.Doubt())],
                    [Second().Released("C-1", null)],
                ],
                Must = ["C-1 withdraw W10"],
            },
            new Story("A release by somebody the record does not know", "Who takes it on must be named.")
            {
                Runs =
                [
                    [First(i => i.Doubt())],
                    [Second().Released("C-1", Spring, by: "ex9")],
                ],
                Must = ["C-1 withdraw W10"],
            },
            new Story("Withdrawn twice, released once", "Each withdrawal needs its release.")
            {
                Runs =
                [
                    [First(i => i.Doubt())],
                    [Visit("V-1b", "2026-07-01").Connector("C-1", "B7", i => i.Doubt())],
                    [Second().Released("C-1", Spring)],
                ],
                Must = ["C-1 withdraw W10"],
            },
            new Story("A fit examination in between", "A later clear look ends nothing by itself.")
            {
                Runs =
                [
                    [First(i => i.Doubt())],
                    [Visit("V-1b", "2026-07-01").Connector("C-1", "B7")],
                    [Second()],
                ],
                Must = ["C-1 withdraw W10"],
            },
            new Story(
                "A fit examination in between, and then a release of the withdrawal",
                "What was withdrawn on its account alone needs no release of its own."
            )
            {
                Runs =
                [
                    [First(i => i.Doubt())],
                    [Visit("V-1b", "2026-07-01").Connector("C-1", "B7")],
                    [Second().Released("C-1", Spring)],
                ],
                Must = ["C-1 fit"],
            },
        ];

    private static IEnumerable<Story> Corrected() =>
        [
            new Story("A withdrawal corrected to clear", "What any version withdrew holds until it is released.")
            {
                Runs =
                [
                    [First(i => i.Cut())],
                    [First()],
                ],
                Must = ["C-1 withdraw W10"],
            },
            new Story("Saw contact corrected to clear", "The same.")
            {
                Runs =
                [
                    [Saw()],
                    [Visit("V-1", Spring).Bridge("RB-1", "Q100")],
                ],
                Must = ["RB-1 withdraw W10"],
            },
            new Story(
                "A withdrawal corrected under another spelling of reference and employer",
                "v 01 of Alder Vale is V-1 of Alder Vale Ltd."
            )
            {
                Runs =
                [
                    [First(i => i.Cut())],
                    [Visit("v 01", Spring, "ALDER VALE").Connector("C-1", "B7")],
                ],
                Must = ["C-1 withdraw W10"],
            },
            new Story("A withdrawal corrected to clear, and the next visit", "No version's withdrawal is forgotten.")
            {
                Runs =
                [
                    [First(i => i.Cut())],
                    [First()],
                    [Second()],
                ],
                Must = ["C-1 withdraw W10"],
            },
            new Story("A correction of a correction", "Fit, then withdrawn, then fit again: the withdrawal holds.")
            {
                Runs =
                [
                    [First()],
                    [First(i => i.Cut())],
                    [First(i => i.Mark("M1"))],
                ],
                Must = ["C-1 withdraw W10"],
            },
            new Story("The first version handed in again", "Fit, then withdrawn, then the very same first record: the withdrawal holds.")
            {
                Runs =
                [
                    [First()],
                    [First(i => i.Cut())],
                    [First()],
                ],
                Must = ["C-1 withdraw W10"],
            },
            new Story("A withdrawal corrected, with a release for the error", "The correction says what was wrong.")
            {
                Runs =
                [
                    [First(i => i.Cut())],
                    [First().Released("C-1", Spring, "recorded-in-error", grounds: "typed on the wrong line, C-2 was meant")],
                ],
                Must = ["C-1 fit"],
            },
            new Story("A correction that leaves the item out", "Left out is not released.")
            {
                Runs =
                [
                    [First(i => i.Cut())],
                    [Visit("V-1", Spring).Connector("C-9", "X9")],
                    [Second()],
                ],
                Must = ["C-1 withdraw W10"],
            },
            new Story(
                "A tag named in a renewal alone vouches for nothing",
                "H-1 of serial A2 was withdrawn, most likely by a slip; that a renewal named H-1 since does not say which it was."
            )
            {
                Runs =
                [
                    [Visit("V-1", "2026-02-02").Harness("H-1", "A1")],
                    [Visit("V-2", Spring).Harness("H-1", "A2", i => i.Cut())],
                    [Visit("V-3", "2026-08-01").Bridge("RB-9", "Q9").Renewed("H-1", "RB-9", null)],
                    [Visit("V-4", Autumn).Harness("H-1", "A1")],
                ],
                Must = ["H-1 undetermined U3"],
            },
            new Story(
                "A slip in the record that withdrew",
                "The same harness by its serial is found clear, and the one withdrawn since under its tag is nowhere: it is asked."
            )
            {
                Runs =
                [
                    [Visit("V-1", "2026-02-02").Harness("H-1", "A1")],
                    [Visit("V-2", Spring).Harness("H-1", "A2", i => i.Cut())],
                    [Visit("V-4", Autumn).Harness("H-1", "A1")],
                ],
                Must = ["H-1 undetermined U3"],
            },
            new Story(
                "Corrected from doubt to saw contact, and the doubt examined again",
                "The release reaches what its reason can end, and saw contact is not among it."
            )
            {
                Runs =
                [
                    [Visit("V-1", Spring).Bridge("RB-1", "Q100", i => i.Doubt())],
                    [Saw()],
                    [SecondBridge().Released("RB-1", Spring, "examined-again")],
                ],
                Must = ["RB-1 withdraw W10"],
            },
            new Story("An incomplete record completed", "An undetermined item may get better by a correction.")
            {
                Runs =
                [
                    [First(i => i.Forgotten())],
                    [First()],
                ],
                Must = ["C-1 fit"],
            },
            new Story("A correction for the worse", "A fit item may be withdrawn by a correction.")
            {
                Runs =
                [
                    [First()],
                    [First(i => i.Cut())],
                    [Second()],
                ],
                Must = ["C-1 withdraw W10"],
            },
            new Story("The very same record twice", "A record is no history of itself.")
            {
                Runs =
                [
                    [First()],
                    [First()],
                ],
                Must = ["C-1 fit"],
                IsSilent = true,
            },
            new Story("The very same withdrawal twice", "Withdrawn by what was found, once.")
            {
                Runs =
                [
                    [First(i => i.Cut())],
                    [First(i => i.Cut())],
                ],
                Must = ["C-1 withdraw W1"],
            },
            new Story("The same reference of another employer", "Another firm's V-1 corrects nothing here.")
            {
                Runs =
                [
                    [First(i => i.Cut())],
                    [Visit("V-1", Spring, "Beck Trees").Connector("C-5", "X5")],
                    [Second()],
                ],
                Must = ["C-1 withdraw W10"],
            },
        ];

    private static IEnumerable<Story> Gone() =>
        [
            new Story("Destroyed, and back", "What was destroyed cannot be fit.")
            {
                Runs =
                [
                    [First(i => i.Destroyed())],
                    [Second()],
                ],
                Must = ["C-1 withdraw W11"],
            },
            new Story("Destroyed by a disposal, and back", "The same, written in another list.")
            {
                Runs =
                [
                    [First(i => i.Cut()).Disposed("C-1", "destroyed")],
                    [Second()],
                ],
                Must = ["C-1 withdraw W11"],
            },
            new Story("Cut, destroyed, and later said to be made good", "What was destroyed is no longer there to be made good.")
            {
                Runs =
                [
                    [First(i => i.Cut()).Disposed("C-1", "destroyed")],
                    [Second().Repaired("C-1").Released("C-1", Spring, "made-good")],
                ],
                Must = ["C-1 withdraw W11"],
            },
            new Story("In doubt, destroyed, and later examined again", "What was destroyed is no longer there to be examined.")
            {
                Runs =
                [
                    [First(i => i.Doubt()).Disposed("C-1", "destroyed")],
                    [Second().Released("C-1", Spring, "examined-again")],
                ],
                Must = ["C-1 withdraw W11"],
            },
            new Story("Destroyed, and back under another spelling", "c 01 is C-1.")
            {
                Runs =
                [
                    [First(i => i.Destroyed())],
                    [Visit("V-2", Autumn).Connector("c 01", "B7")],
                ],
                Must = ["c 01 withdraw W11"],
            },
            new Story("Destroyed, and back at another firm", "Id, maker and serial agree.")
            {
                Runs =
                [
                    [First(i => i.Destroyed())],
                    [Visit("W-1", Autumn, "Beck Trees").Connector("C-1", "B7")],
                ],
                Must = ["C-1 withdraw W11"],
            },
            new Story("Destroyed in this record", "The record says it and the examination says otherwise.")
            {
                Runs =
                [
                    [First().Disposed("C-1", "destroyed")],
                ],
                Must = ["C-1 withdraw W11"],
            },
            new Story("Destroyed by mistake", "It was another one, and the release says how that is known.")
            {
                Runs =
                [
                    [First(i => i.Destroyed())],
                    [Second().Released("C-1", Spring, "recorded-in-error", grounds: "C-2 was cut up, this one lay in the van")],
                ],
                Must = ["C-1 fit"],
            },
            new Story("Destroyed by mistake, with a visit in between", "The visit in between withdrew it on account of the mistake alone.")
            {
                Runs =
                [
                    [First(i => i.Destroyed())],
                    [Visit("V-1b", "2026-07-01").Connector("C-1", "B7")],
                    [Second().Released("C-1", Spring, "recorded-in-error", grounds: "C-2 was cut up, this one lay in the van")],
                ],
                Must = ["C-1 fit"],
            },
            new Story("Destroyed, and examined again", "Looking again does not undo it.")
            {
                Runs =
                [
                    [First(i => i.Destroyed())],
                    [Second().Released("C-1", Spring, "examined-again")],
                ],
                Must = ["C-1 withdraw W11"],
            },
            new Story("Lost and found", "A loss says nothing about its state; found and examined it is fit.")
            {
                Runs =
                [
                    [First()],
                    [Visit("V-1b", "2026-07-01").Connector("C-1", "B7", i => i.NotLookedAt("lost"))],
                    [Second()],
                ],
                Must = ["C-1 fit"],
            },
            new Story("Withdrawn, lost and found", "Finding it repairs nothing.")
            {
                Runs =
                [
                    [First(i => i.Cut())],
                    [Visit("V-1b", "2026-07-01").Connector("C-1", "B7", i => i.NotLookedAt("lost"))],
                    [Second()],
                ],
                Must = ["C-1 withdraw W10"],
            },
            new Story("Undetermined, and then examined in full", "A hold ends with a complete examination.")
            {
                Runs =
                [
                    [First(i => i.Forgotten())],
                    [Second()],
                ],
                Must = ["C-1 fit"],
            },
            new Story("Undetermined, and another connector under its tag", "A held item is not to be lost behind its tag: it is asked.")
            {
                Runs =
                [
                    [First(i => i.Forgotten())],
                    [Visit("V-2", Autumn).Connector("C-1", "B99")],
                ],
                Must = ["C-1 undetermined U3"],
            },
        ];

    private static StoryVisit First(Func<StoryItem, StoryItem>? more = null) => Visit("V-1", Spring).Connector("C-1", "B7", more);

    private static StoryVisit Second() => Visit("V-2", Autumn).Connector("C-1", "B7");

    private static StoryVisit Saw() => Visit("V-1", Spring).Bridge("RB-1", "Q100", i => i.SawContact());

    private static StoryVisit SecondBridge() => Visit("V-2", Autumn).Bridge("RB-1", "Q100");
}
