using static ExamDocs.UseCases.Tests.BetweenRecords.Stories.Story;

namespace ExamDocs.UseCases.Tests.BetweenRecords.Stories;

/// <summary>What is fitted to what, over several files.</summary>
internal static class AssemblyStories
{
    private const string Spring = "2026-05-11";
    private const string Autumn = "2026-11-02";
    private const string NextSpring = "2027-04-20";

    public static IEnumerable<Story> All => [.. Fitted(), .. Renewed(), .. Split()];

    private static IEnumerable<Story> Fitted() =>
        [
            new Story("Bridges in one file, harnesses in another", "The harness hangs on a withdrawn bridge.")
            {
                Runs =
                [
                    [Visit("V-1a", Spring).Bridge("RB-1", "Q100", i => i.On("H-1").Cut()), Visit("V-1b", Spring).Harness("H-1", "A1")],
                ],
                Must = ["RB-1 withdraw W1", "H-1 withdraw W9"],
            },
            new Story("The harness examined alone at the next visit", "Nobody took the withdrawn bridge off.")
            {
                Runs =
                [
                    [Together(i => i.Cut())],
                    [Visit("V-2", Autumn).Harness("H-1", "A1")],
                ],
                Must = ["H-1 withdraw"],
            },
            new Story("The bridge in a file of its own, the harness half a year later", "The bridge's last word is that it is withdrawn.")
            {
                Runs =
                [
                    [Visit("V-1", Spring).Bridge("RB-1", "Q100", i => i.On("H-1").Cut()), Visit("V-1b", Spring).Harness("H-1", "A1")],
                    [Visit("V-2", Autumn).Harness("h 01", "A1")],
                ],
                Must = ["h 01 withdraw W9"],
            },
            new Story(
                "The withdrawn bridge said to be on another harness",
                "It stays on the first until a renewal takes it off, and is on the second as well."
            )
            {
                Runs =
                [
                    [Together(i => i.Cut())],
                    [Visit("V-2", Autumn).Bridge("RB-1", "Q100", i => i.On("H-2")).Harness("H-2", "A2").Harness("H-1", "A1")],
                ],
                Must = ["H-1 withdraw W9", "H-2 withdraw W9"],
            },
            new Story("The withdrawn bridge's fittedTo left empty", "An empty cell says nothing.")
            {
                Runs =
                [
                    [Together(i => i.Cut())],
                    [Visit("V-2", Autumn).Bridge("RB-1", "Q100").Harness("H-1", "A1")],
                ],
                Must = ["RB-1 withdraw W10", "H-1 withdraw W9"],
            },
            new Story("A sound bridge in one file, its harness in another", "A file boundary changes no outcome.")
            {
                Runs =
                [
                    [Visit("V-1a", Spring).Bridge("RB-1", "Q100", i => i.On("H-1")), Visit("V-1b", Spring).Harness("H-1", "A1")],
                ],
                Must = ["RB-1 fit", "H-1 fit"],
            },
            new Story("A sound bridge examined alone at the next visit", "What it is fitted to is known from the visit before.")
            {
                Runs =
                [
                    [Together()],
                    [Visit("V-2", Autumn).Bridge("RB-1", "Q100", i => i.On("H-1"))],
                ],
                Must = ["RB-1 fit"],
            },
            new Story("A bridge fitted to a harness that nobody knows", "A reference to nothing is an error.")
            {
                Runs =
                [
                    [Together()],
                    [Visit("V-2", Autumn).Bridge("RB-1", "Q100", i => i.On("H-77"))],
                ],
                Must = ["RB-1 undetermined U3"],
            },
            new Story(
                "Fitted in spring, removed in summer, both records in one go",
                "In spring it was on the harness, and the record of that visit is right."
            )
            {
                Runs =
                [
                    [Together(), Visit("V-2", "2026-07-01").Harness("H-1", "A1").Bridge("RB-1", "Q100").Renewed("H-1", "RB-1", null)],
                ],
                Must = ["RB-1 fit", "H-1 fit"],
            },
            new Story(
                "A sound bridge examined in spring, the harness alone in autumn",
                "The bridge's next examination was due by 11 November: in time."
            )
            {
                Runs =
                [
                    [Together()],
                    [Visit("V-2", Autumn).Harness("H-1", "A1")],
                ],
                Must = ["H-1 fit"],
            },
            new Story("A sound bridge past its next examination", "Nobody knows how it is now: undetermined, and so is the harness.")
            {
                Runs =
                [
                    [Together()],
                    [Visit("V-2", NextSpring).Harness("H-1", "A1")],
                ],
                Must = ["H-1 undetermined U6"],
            },
            new Story("A bridge that may be used until a day to come", "The harness may be used no longer than its bridge.")
            {
                Runs =
                [
                    [Together(i => i.LaterDefect("2026-12-24"))],
                    [Visit("V-2", Autumn).Harness("H-1", "A1")],
                ],
                Must = ["H-1 fit-until D3"],
            },
            new Story("A bridge on the list that nobody looked at, its fittedTo typed", "It is on the harness and has no outcome.")
            {
                Runs =
                [
                    [Together()],
                    [Visit("V-2", Autumn).Harness("H-1", "A1").Bridge("RB-1", "Q100", i => i.On("H-1").NotLookedAt())],
                ],
                Must = ["H-1 undetermined U6"],
            },
            new Story(
                "A bridge on the list that nobody looked at, its fittedTo empty",
                "An empty cell says nothing, so it is where it was: the same outcome as with fittedTo typed."
            )
            {
                Runs =
                [
                    [Together()],
                    [Visit("V-2", Autumn).Harness("H-1", "A1").Bridge("RB-1", "Q100", i => i.NotLookedAt())],
                ],
                Must = ["H-1 undetermined U6"],
            },
            new Story(
                "A bridge of a number not permitted, said to be fitted before its harness was known",
                "What it is fitted to was told, in whatever order the records came in."
            )
            {
                Runs =
                [
                    [Visit("V-1", Spring).Bridge("RB-1", "Q100", i => i.On("H-1").PartNumber("XX-9"))],
                    [Visit("V-2", Autumn).Harness("H-1", "A1").Bridge("RB-1", "Q100", i => i.PartNumber("XX-9"))],
                ],
                Must = ["RB-1 withdraw W8", "H-1 withdraw W9"],
            },
            new Story("A bridge that nobody ever examined", "A part is part of what is used.")
            {
                Runs =
                [
                    [Together(i => i.NotLookedAt())],
                    [Visit("V-2", Autumn).Harness("H-1", "A1")],
                ],
                Must = ["H-1 undetermined U6"],
            },
            new Story("A bridge that was undetermined", "It counts with its latest outcome.")
            {
                Runs =
                [
                    [Together(i => i.Forgotten())],
                    [Visit("V-2", Autumn).Harness("H-1", "A1")],
                ],
                Must = ["H-1 undetermined U6"],
            },
            new Story("A bridge that the maker does not permit, in another file", "W8 reaches the harness that is examined alone.")
            {
                Runs =
                [
                    [
                        Visit("V-1", Spring).Bridge("RB-1", "Q100", i => i.On("H-1").PartNumber("XX-9")),
                        Visit("V-1b", Spring).Harness("H-1", "A1"),
                    ],
                ],
                Must = ["RB-1 withdraw W8", "H-1 withdraw W9"],
            },
            new Story("A destroyed bridge on a harness examined alone", "Destroyed is withdrawn.")
            {
                Runs =
                [
                    [Together()],
                    [Visit("V-1c", "2026-06-01").Bridge("RB-1", "Q100", i => i.Destroyed())],
                    [Visit("V-2", Autumn).Harness("H-1", "A1")],
                ],
                Must = ["H-1 withdraw W9"],
            },
            new Story("The harness spelt otherwise in its part's row", "H-2 in the bridge's row is the H-002 beside it.")
            {
                Runs =
                [
                    [Visit("V-1", Spring).Harness("H-002", "A1").Bridge("RB-1", "Q100", i => i.On("H-2").Cut())],
                ],
                Must = ["H-002 withdraw W9"],
            },
            new Story(
                "The harness spelt otherwise in its part's row, and another firm has that very id",
                "The reference means the harness beside it."
            )
            {
                Runs =
                [
                    [Visit("W-1", Spring, "Beck Trees").Harness("H-2", "Z9")],
                    [Visit("V-1", Spring).Harness("H-002", "A1").Bridge("RB-1", "Q100", i => i.On("H-2").Cut())],
                ],
                Must = ["H-002 withdraw W9"],
            },
            new Story(
                "Two bridges of one id on one harness",
                "One of them was never looked at: what is said of the harness rests on the worse."
            )
            {
                Runs =
                [
                    [
                        Visit("V-1", Spring).Bridge("RB-1", "Q100", i => i.On("H-1").LaterDefect("2026-12-24")),
                        Visit("V-1b", Spring).Harness("H-1", "A1"),
                        Visit("V-1c", "2026-06-01").Bridge("RB-1", "Q555", i => i.On("H-1").NotLookedAt()),
                    ],
                    [Visit("V-2", Autumn).Harness("H-1", "A1")],
                ],
                Must = ["H-1 undetermined U6"],
            },
            new Story(
                "Another harness under the id that a bridge was fitted to",
                "The bridge was on H-1 of serial A1, and this is another H-1."
            )
            {
                Runs =
                [
                    [Together()],
                    [Visit("V-2", Autumn).Harness("H-1", "Z9", i => i.Maker("Hollin Forge")).Bridge("RB-1", "Q100", i => i.Cut())],
                ],
                Must = ["H-1 fit", "RB-1 withdraw W1"],
            },
            new Story("A bridge taken off another row that is spelt alike", "Of H-1 nothing was taken off.")
            {
                Runs =
                [
                    [Together(i => i.Cut())],
                    [
                        Visit("V-2", "2026-08-01")
                            .Harness("H1", "Z9", i => i.NotLookedAt())
                            .Harness("H-1", "A1", i => i.NotLookedAt())
                            .Renewed("H1", "RB-1", null),
                    ],
                    [Visit("V-3", Autumn).Harness("H-1", "A1")],
                ],
                Must = ["H-1 withdraw"],
            },
            new Story(
                "A bridge not permitted, taken off in a record that has another serial number for it",
                "Whether the bridge that was taken off is the one that was withdrawn is asked, and not answered."
            )
            {
                Runs =
                [
                    [Together(i => i.PartNumber("XX-9"))],
                    [
                        Visit("V-2", "2026-08-01")
                            .Bridge("RB-1", "Q108", i => i.PartNumber("XX-9").NotLookedAt())
                            .Harness("H-1", "A1", i => i.NotLookedAt())
                            .Renewed("H-1", "RB-1", null),
                    ],
                    [Visit("V-3", Autumn).Harness("H-1", "A1")],
                ],
                Must = ["H-1 withdraw"],
            },
            new Story(
                "A cut bridge, taken off in a record that has another serial number for it, destroyed under a new id",
                "The bridge of serial Q100 was on the harness, and only the one of serial Q108 was taken off."
            )
            {
                Runs =
                [
                    [Together(i => i.Cut())],
                    [
                        Visit("V-2", "2026-08-01")
                            .Bridge("RB-1", "Q108", i => i.NotLookedAt())
                            .Harness("H-1", "A1", i => i.NotLookedAt())
                            .Renewed("H-1", "RB-1", null),
                    ],
                    [Visit("V-3", Autumn).Bridge("RB-1-B", "Q100", i => i.Destroyed().Formerly("RB-1")).Harness("H-1", "A1")],
                ],
                Must = ["H-1 withdraw", "RB-1-B withdraw"],
            },
            new Story(
                "A cut bridge, taken off in a record that has another serial number for it, its harness newly listed",
                "The bridge of serial Q100 was on the harness, and only the one of serial Q108 was taken off."
            )
            {
                Runs =
                [
                    [Visit("V-1", Spring).Bridge("RB-1", "Q100", i => i.On("H-1").Cut())],
                    [Visit("V-2", "2026-08-01").Bridge("RB-1", "Q108", i => i.NotLookedAt()).Renewed("H-1", "RB-1", null)],
                    [Visit("V-3", Autumn).Bridge("RB-1-B", "Q100", i => i.Destroyed().Formerly("RB-1")).Harness("H-1", "A1")],
                ],
                Must = ["H-1 withdraw W9", "RB-1-B withdraw"],
            },
            new Story(
                "A bridge not permitted, taken off under another serial number, the harness in the same record",
                "The harness was withdrawn for the bridge of serial Q100."
            )
            {
                Runs =
                [
                    [Together(i => i.PartNumber("XX-9"))],
                    [
                        Visit("V-2", "2026-08-01")
                            .Bridge("RB-1", "Q108", i => i.PartNumber("XX-9").NotLookedAt())
                            .Harness("H-1", "A1")
                            .Renewed("H-1", "RB-1", null),
                    ],
                ],
                Must = ["H-1 withdraw", "RB-1 undetermined U3"],
            },
            new Story("A bridge not permitted, taken off under its own serial number", "It is off, and the harness is sound.")
            {
                Runs =
                [
                    [Together(i => i.PartNumber("XX-9"))],
                    [
                        Visit("V-2", "2026-08-01")
                            .Bridge("RB-1", "Q 100", i => i.PartNumber("XX-9").NotLookedAt())
                            .Harness("H-1", "A1")
                            .Renewed("H-1", "RB-1", null),
                    ],
                    [Visit("V-3", Autumn).Harness("H-1", "A1")],
                ],
                Must = ["H-1 fit"],
            },
            new Story(
                "A part not permitted, taken off a harness that may be another",
                "Whether this harness is the one that does not permit it is asked, and not answered."
            )
            {
                Runs =
                [
                    [
                        Visit("V-1a", Spring).Harness("H-0010", "A1"),
                        Visit("V-1b", Spring).Bridge("RB-1", "Q100", i => i.On("H-10").PartNumber("XX-9")),
                    ],
                    [
                        Visit("V-2", Autumn)
                            .Harness("H-010", "A1", i => i.Maker("Hollin Forge").NotLookedAt())
                            .Bridge("RB-1", "Q100", i => i.PartNumber("XX-9"))
                            .Renewed("H-010", "RB-1", null),
                    ],
                ],
                Must = ["RB-1 withdraw", "H-010 undetermined U3"],
            },
            new Story(
                "A cut bridge taken off under its old tag, and said to be on the harness still under its new one",
                "RB-1 is RB-77: taken off, it may not say that it is fitted."
            )
            {
                Runs =
                [
                    [Visit("V-1", Spring).Harness("H-1", "A1").Bridge("RB-1", "Q100", i => i.On("H-1"))],
                    [Visit("V-2", "2026-08-01").Bridge("RB-77", "Q100", i => i.Formerly("RB-1"))],
                    [Visit("V-3", Autumn).Harness("H-1", "A1").Bridge("RB-77", "Q100", i => i.On("H-1")).Renewed("H-1", "RB-1", null)],
                ],
                Must = ["RB-77 undetermined U3"],
            },
            new Story(
                "A part not permitted on an id that was only named, and that may be this harness",
                "Which H-1 was meant nobody knows: it may be this one."
            )
            {
                Runs =
                [
                    [Visit("V-0", "2026-02-02").Harness("H-1", "A1")],
                    [Visit("V-1", Spring).Bridge("RB-1", "Q100", i => i.On("H-1").PartNumber("XX-9"))],
                    [
                        Visit("V-2", Autumn)
                            .Harness("H-1", null, i => i.Mark("M1").Maker("Hollin Forge"))
                            .Bridge("RB-1", "Q100", i => i.PartNumber("XX-9")),
                    ],
                ],
                Must = ["H-1 withdraw W9", "RB-1 withdraw"],
            },
            new Story(
                "A sound bridge, taken off in a record that has another serial number for it",
                "The bridge of serial Q100 is still on the harness, and past its next examination."
            )
            {
                Runs =
                [
                    [Together()],
                    [Visit("V-2", "2026-08-01").Bridge("RB-1", "Q108", i => i.NotLookedAt()).Renewed("H-1", "RB-1", null)],
                    [Visit("V-3", NextSpring).Harness("H-1", "A1")],
                ],
                Must = ["H-1 undetermined U6"],
            },
            new Story(
                "A part taken off another harness, whose id is spelt otherwise in the renewal",
                "-H-1- is the H-001 beside it, and the bridge was on the other H-1, which does not permit it."
            )
            {
                Runs =
                [
                    [Visit("V-0", "2026-02-02").Harness("h-1", "A1"), Visit("V-1", Spring).Bridge("RB-1", "Q100", i => i.On("H-1"))],
                    [
                        Visit("V-2", Autumn)
                            .Bridge("RB-1", "Q100", i => i.PartNumber("XX-9"))
                            .Harness("H-001", "Z9", i => i.Maker("Hollin Forge"))
                            .Renewed("-H-1-", "RB-1", null),
                    ],
                ],
                Must = ["RB-1 withdraw W8"],
            },
            new Story(
                "A cut bridge that is fitted to its harness's old tag, the harness beside it under its new one",
                "H-1 is H-2 now: the harness hangs on the cut bridge."
            )
            {
                Runs =
                [
                    [Visit("V-1", Spring).Harness("H-1", "A1")],
                    [Visit("V-2", Autumn).Bridge("RB-1", "Q100", i => i.On("H-1").Cut()).Harness("H-2", "A1", i => i.Formerly("H-1"))],
                ],
                Must = ["H-2 withdraw W9"],
            },
            new Story(
                "A bridge that is not permitted on its harness, whose old tag it names",
                "H-1 is H-2 now, and its maker does not permit the bridge."
            )
            {
                Runs =
                [
                    [Visit("V-1", Spring).Harness("H-1", "A1")],
                    [
                        Visit("V-2", Autumn)
                            .Bridge("RB-1", "Q100", i => i.On("H-1").PartNumber("XX-9"))
                            .Harness("H-2", "A1", i => i.Formerly("H-1")),
                    ],
                ],
                Must = ["RB-1 withdraw W8", "H-2 withdraw W9"],
            },
            new Story(
                "A part taken off one of two harnesses of the record that have one id",
                "It was on H-1, and the renewal names h-01 letter by letter: it may be on H-1 still, which does not permit it."
            )
            {
                Runs =
                [
                    [Visit("V-1", Spring).Bridge("RB-1", "Q100", i => i.On("H-1").PartNumber("XX-9").NotLookedAt())],
                    [
                        Visit("V-2", Autumn)
                            .Bridge("RB-1", "Q100", i => i.PartNumber("XX-9"))
                            .Harness("h-01", "A1")
                            .Harness("H-1", "Z9", i => i.Made("2023-05"))
                            .Renewed("h-01", "RB-1", null),
                    ],
                ],
                Must = ["RB-1 withdraw W8"],
            },
            new Story(
                "A cut bridge on a harness's old tag, which another harness bore as well",
                "H-1 may be the harness that is H-2 now: it hangs on the cut bridge until somebody says which."
            )
            {
                Runs =
                [
                    [Visit("V-0", "2026-02-02").Harness("H-1", "Z9", i => i.Maker("Hollin Forge").NotLookedAt())],
                    [Visit("V-1", Spring).Harness("H-1", "A1", i => i.Not("H-1", "the plate on this one says so"))],
                    [
                        Visit("V-2", Autumn)
                            .Bridge("RB-1", "Q100", i => i.On("H-1").Cut())
                            .Harness("H-2", "A1", i => i.Formerly("H-1").Not("H-1", "the plate on this one says so")),
                    ],
                ],
                Must = ["H-2 withdraw W9"],
            },
            new Story(
                "A held bridge on a harness, and a later one said to be it with another serial number",
                "What contradicts does not make up for what the bridge itself was held for."
            )
            {
                Runs =
                [
                    [Visit("V-1", Spring).Harness("H-1", "A1").Bridge("RB-1", "Q100", i => i.On("H-1").Forgotten())],
                    [Visit("V-2", "2026-09-01").Harness("H-1", "A1"), Visit("V-3", Autumn).Bridge("RB-9", "Q777", i => i.Formerly("RB-1"))],
                    [Visit("V-4", NextSpring).Harness("H-1", "A1")],
                ],
                Must = ["H-1 undetermined U6"],
            },
            new Story("A harness withdrawn does not withdraw its bridge", "Never the other way round.")
            {
                Runs =
                [
                    [Visit("V-1", Spring).Harness("H-1", "A1", i => i.Cut()).Bridge("RB-1", "Q100", i => i.On("H-1"))],
                    [Visit("V-2", Autumn).Bridge("RB-1", "Q100")],
                ],
                Must = ["RB-1 fit"],
            },
        ];

    private static IEnumerable<Story> Renewed() =>
        [
            new Story("Bridge swapped in the same record", "The withdrawn bridge is off and the new one is sound.")
            {
                Runs =
                [
                    [Together(i => i.Cut())],
                    [
                        Visit("V-2", Autumn)
                            .Harness("H-1", "A1")
                            .Bridge("RB-1", "Q100", i => i.Concluded())
                            .Bridge("RB-2", "Q200", i => i.On("H-1"))
                            .Renewed("H-1", "RB-1", "RB-2"),
                    ],
                ],
                Must = ["H-1 fit", "RB-1 withdraw", "RB-2 fit"],
            },
            new Story("Bridge swapped, the old one spelt otherwise", "rb 01 is RB-1, and it is off.")
            {
                Runs =
                [
                    [Visit("V-0", "2026-02-02").Bridge("RB-1", "Q100", i => i.On("H-1").Cut())],
                    [Visit("V-2", Autumn).Harness("H-1", "A1").Bridge("RB-2", "Q200", i => i.On("H-1")).Renewed("H-1", "rb 01", "RB-2")],
                ],
                Must = ["H-1 fit", "RB-2 fit"],
            },
            new Story("Bridge swapped, the old one spelt with l for 1", "RB-l is RB-1, and it is off.")
            {
                Runs =
                [
                    [Visit("V-0", "2026-02-02").Bridge("RB-1", "Q100", i => i.On("H-1").Cut())],
                    [Visit("V-2", Autumn).Harness("H-1", "A1").Bridge("RB-2", "Q200", i => i.On("H-1")).Renewed("H-1", "RB-l", "RB-2")],
                ],
                Must = ["H-1 fit", "RB-2 fit"],
            },
            new Story(
                "Bridge taken off in one record, the harness looked at again in the next, both in one go",
                "The renewal was there before the second look."
            )
            {
                Runs =
                [
                    [Visit("V-0", "2026-02-02").Bridge("RB-1", "Q100", i => i.On("H-1").Cut())],
                    [
                        Visit("V-2", "2026-10-02").Harness("H-1", "A1").Renewed("H-1", "RB-1", null),
                        Visit("V-3", Autumn).Harness("H-1", "A1"),
                    ],
                ],
                Must = ["H-1 fit"],
            },
            new Story("Bridge renewed in another file", "The renewal is on record, whichever file has it.")
            {
                Runs =
                [
                    [Together(i => i.Cut())],
                    [Visit("V-2a", Autumn).Harness("H-1", "A1").Bridge("RB-2", "Q200", i => i.On("H-1")).Renewed("H-1", "RB-1", "RB-2")],
                    [Visit("V-3", NextSpring).Harness("H-1", "A1").Bridge("RB-2", "Q200", i => i.On("H-1"))],
                ],
                Must = ["H-1 fit", "RB-2 fit"],
            },
            new Story("Bridge renewed in one file, harness examined in another of the same run", "A file boundary changes no outcome.")
            {
                Runs =
                [
                    [Together(i => i.Cut())],
                    [
                        Visit("V-2a", Autumn).Bridge("RB-2", "Q200", i => i.On("H-1")).Renewed("H-1", "RB-1", "RB-2"),
                        Visit("V-2b", Autumn).Harness("H-1", "A1"),
                    ],
                ],
                Must = ["RB-2 fit", "H-1 fit"],
            },
            new Story(
                "The old bridge on a harness again after its removal",
                "A part that a renewal took off and that says it is still there makes both uncertain."
            )
            {
                Runs =
                [
                    [Together()],
                    [
                        Visit("V-2", Autumn)
                            .Harness("H-1", "A1")
                            .Bridge("RB-1", "Q100", i => i.On("H-1").NotLookedAt())
                            .Renewed("H-1", "RB-1", null),
                    ],
                ],
                Must = ["H-1 undetermined U3", "RB-1 undetermined U3"],
            },
            new Story("Removed in autumn, and said to be fitted in spring", "Only a renewal puts it back.")
            {
                Runs =
                [
                    [Together()],
                    [Visit("V-2", Autumn).Harness("H-1", "A1").Bridge("RB-1", "Q100").Renewed("H-1", "RB-1", null)],
                    [Visit("V-3", NextSpring).Harness("H-1", "A1").Bridge("RB-1", "Q100", i => i.On("H-1"))],
                ],
                Must = ["H-1 undetermined U3", "RB-1 undetermined U3"],
            },
            new Story("Removed in one file, said to be fitted in another of the same run", "A file boundary changes no outcome.")
            {
                Runs =
                [
                    [Together()],
                    [
                        Visit("V-2a", Autumn).Harness("H-1", "A1").Renewed("H-1", "RB-1", null),
                        Visit("V-2b", Autumn).Bridge("RB-1", "Q100", i => i.On("H-1")),
                    ],
                ],
                Must = ["RB-1 undetermined U3"],
            },
            new Story("Removed under another spelling, and still said to be fitted", "rb 1 is RB-1.")
            {
                Runs =
                [
                    [Together()],
                    [Visit("V-2", Autumn).Harness("H-1", "A1").Bridge("RB-1", "Q100").Renewed("H-1", "RB-1", null)],
                    [Visit("V-3", NextSpring).Harness("H-1", "A1").Bridge("rb 01", "Q100", i => i.On("H-1"))],
                ],
                Must = ["H-1 undetermined U3", "rb 01 undetermined U3"],
            },
            new Story("Removed, and its row says that it is on the harness in another spelling", "h 01 is the H-1 that it was taken off.")
            {
                Runs =
                [
                    [Together()],
                    [
                        Visit("V-2", Autumn)
                            .Harness("H-1", "A1")
                            .Bridge("RB-1", "Q100", i => i.On("h 01").NotLookedAt())
                            .Renewed("H-1", "RB-1", null),
                    ],
                ],
                Must = ["H-1 undetermined U3", "RB-1 undetermined U3"],
            },
            new Story("A removal after the examination", "On the day of the examination the bridge that is not permitted was on it.")
            {
                Runs =
                [
                    [Visit("V-0", "2026-02-02").Harness("H-1", "A1")],
                    [
                        Visit("V-1", Spring).Bridge("RB-1", "Q100", i => i.On("H-1").PartNumber("XX-9")),
                        Visit("V-2", Autumn).Connector("C-1", "B7").Renewed("H-1", "RB-1", null),
                    ],
                ],
                Must = ["RB-1 withdraw W8"],
            },
            new Story("Put back by a renewal", "Taken off for washing and fitted again, and both are on record.")
            {
                Runs =
                [
                    [Together()],
                    [Visit("V-2", Autumn).Harness("H-1", "A1").Bridge("RB-1", "Q100").Renewed("H-1", "RB-1", null)],
                    [Visit("V-3", NextSpring).Harness("H-1", "A1").Bridge("RB-1", "Q100", i => i.On("H-1")).Renewed("H-1", null, "RB-1")],
                ],
                Must = ["H-1 fit", "RB-1 fit"],
            },
            new Story("A sound bridge moved to another harness", "A move is a warning; both are sound.")
            {
                Runs =
                [
                    [Together()],
                    [Visit("V-2", Autumn).Harness("H-1", "A1").Harness("H-2", "A2").Bridge("RB-1", "Q100", i => i.On("H-2"))],
                ],
                Must = ["H-1 fit", "H-2 fit", "RB-1 fit"],
            },
        ];

    private static IEnumerable<Story> Split() =>
        [
            new Story("A visit split between two days, in one run", "The harness of the first day hangs on the bridge of the second.")
            {
                Runs =
                [
                    [Visit("V-1", Spring).Harness("H-1", "A1"), Visit("V-2", "2026-05-12").Bridge("RB-1", "Q100", i => i.On("H-1").Cut())],
                ],
                Must = ["H-1 withdraw W9", "RB-1 withdraw W1"],
            },
            new Story(
                "A visit split between two days, in two runs",
                "The bridge withdrawn on the second day is on the harness examined alone since."
            )
            {
                Runs =
                [
                    [Visit("V-1", Spring).Harness("H-1", "A1")],
                    [Visit("V-2", "2026-05-12").Bridge("RB-1", "Q100", i => i.On("H-1").Cut())],
                    [Visit("V-3", "2026-05-13").Harness("H-1", "A1")],
                ],
                Must = ["H-1 withdraw W9"],
            },
            new Story("Two examiners of one day, in one run", "One withdrew it: the other's clear examination does not undo that.")
            {
                Runs =
                [
                    [
                        Visit("V-1", Spring).By("Ada Fenn").Bridge("RB-1", "Q100", i => i.Cut()),
                        Visit("V-2", Spring).By("Tom Rusk").Bridge("RB-1", "Q100"),
                    ],
                ],
                Must = ["RB-1 withdraw"],
            },
            new Story("Two examiners of one day, in two runs", "The same, whichever came in first.")
            {
                Runs =
                [
                    [Visit("V-2", Spring).By("Tom Rusk").Bridge("RB-1", "Q100", i => i.Cut())],
                    [Visit("V-1", Spring).By("Ada Fenn").Bridge("RB-1", "Q100")],
                ],
                Must = ["RB-1 withdraw W10"],
            },
            new Story("Two sheets of one reference in one run", "They are one visit and are decided together.")
            {
                Runs =
                [
                    [Visit("V-1", Spring).Bridge("RB-1", "Q100", i => i.On("H-1").Cut()), Visit("V-1", Spring).Harness("H-1", "A1")],
                ],
                Must = ["H-1 withdraw W9"],
            },
        ];

    private static StoryVisit Together(Func<StoryItem, StoryItem>? bridge = null) =>
        Visit("V-1", Spring).Harness("H-1", "A1").Bridge("RB-1", "Q100", i => bridge is null ? i.On("H-1") : bridge(i.On("H-1")));
}
