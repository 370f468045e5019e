using static ExamDocs.UseCases.Tests.BetweenRecords.Stories.Story;

namespace ExamDocs.UseCases.Tests.BetweenRecords.Stories;

/// <summary>Which item is this: spellings, tags, owners.</summary>
internal static class IdentityStories
{
    private const string Spring = "2026-05-11";
    private const string Autumn = "2026-11-02";
    private const string NextSpring = "2027-04-20";

    public static IEnumerable<Story> All => [.. Spelt(), .. Tags(), .. Owners(), .. Marks()];

    /// <summary>RB-1 of serial Q100 is cut in spring; in autumn it is found clear under another spelling.</summary>
    private static IEnumerable<Story> Spelt()
    {
        (string How, string Id, string? Serial)[] spellings =
        [
            ("as before", "RB-1", "Q100"),
            ("in small letters", "rb-1", "Q100"),
            ("with a blank", "RB 1", "Q100"),
            ("with a leading zero", "RB-01", "Q100"),
            ("without the hyphen", "RB1", "Q100"),
            ("with a long dash", "RB–1", "Q100"),
            ("with l for 1", "RB-l", "Q100"),
            ("in wide letters", "ＲＢ-1", "Q100"),
            ("serial with a blank", "RB-1", "Q 100"),
            ("serial with O for 0", "RB-1", "Q1OO"),
            ("serial in small letters with a hyphen", "RB-1", "q-100"),
            ("serial left out", "RB-1", null),
            ("id and serial respelt at once", "rb 001", "q 100"),
        ];
        (string Was, string Is)[] ids =
        [
            ("RO-7", "R07"),
            ("HEL-01", "hel-0l"),
            ("LAN-51", "lan-5l"),
            ("GRØN-3", "GROEN-3"),
            ("ÅS-4", "AAS-4"),
            ("ÞOR-2", "THOR-2"),
        ];
        return
        [
            .. spellings.Select(s =>
                new Story($"Withdrawn, and back {s.How}", "A spelling is no repair: it is the same bridge.")
                    .Then(Visit("V-1", Spring).Bridge("RB-1", "Q100", i => i.Mark("M1").Cut()))
                    .Then(Visit("V-2", Autumn).Bridge(s.Id, s.Serial, i => i.Mark("M1")))
                    .Gives($"{s.Id} withdraw W10")
            ),
            .. ids.Select(id =>
                new Story($"Withdrawn as {id.Was}, and back as {id.Is}", "A spelling is no repair: it is the same bridge.")
                    .Then(Visit("V-1", Spring).Bridge(id.Was, null, i => i.Cut()))
                    .Then(Visit("V-2", Autumn).Bridge(id.Is, null))
                    .Gives($"{id.Is} withdraw W10")
            ),
            .. new[] { "SN Q100", "S/N: Q100", "Serial no. Q100" }.Select(serial =>
                new Story($"Withdrawn, and back under a new id with {serial}", "It may be that one: somebody has to say.")
                    .Then(Visit("V-1", Spring).Bridge("RB-1", "Q100", i => i.Cut()))
                    .Then(Visit("V-2", Autumn).Bridge("RB-9", serial))
                    .Gives("RB-9 undetermined U3")
            ),
        ];
    }

    private static IEnumerable<Story> Tags() =>
        [
            new Story(
                "Withdrawn, and back with the maker misspelt",
                "One letter may be a slip or another thing: the program asks, and until it is answered nobody uses it."
            )
            {
                Runs =
                [
                    [Cut()],
                    [Visit("V-2", Autumn).Bridge("RB-1", "Q100", i => i.Maker("Fenwick Works"))],
                ],
                Must = ["RB-1 undetermined U3"],
            },
            new Story("Withdrawn, and back with a legal form on the maker's name", "Fennick Works Ltd is Fennick Works.")
            {
                Runs =
                [
                    [Cut()],
                    [Visit("V-2", Autumn).Bridge("RB-1", "Q100", i => i.Maker("Fennick Works Ltd"))],
                ],
                Must = ["RB-1 withdraw W10"],
            },
            new Story(
                "Employer without Ltd, and another date of manufacture",
                "Id, maker and serial agree: a wrong date makes no other bridge of it."
            )
            {
                Runs =
                [
                    [Cut()],
                    [Visit("V-2", Autumn, "Alder Vale").Bridge("RB-1", "Q100", i => i.Made("2023-06"))],
                ],
                Must = ["RB-1 withdraw W10"],
            },
            new Story(
                "Old tag on a new bridge",
                "The tag is that of a withdrawn bridge and the serial is not: a slip or a new bridge, and the record does not say which."
            )
            {
                Runs =
                [
                    [Cut()],
                    [Visit("V-2", Autumn).Bridge("RB-1", "Q555")],
                ],
                Must = ["RB-1 undetermined U3"],
            },
            new Story(
                "Old tag on a new bridge, and the examiner says so",
                "The serials differ and the examiner gives the reason: one answer is enough."
            )
            {
                Runs =
                [
                    [Cut()],
                    [Visit("V-2", Autumn).Bridge("RB-1", "Q555", i => i.Not("RB-1", "serial Q555 on this one, bought in June"))],
                ],
                Must = ["RB-1 fit"],
            },
            new Story("The answer holds at the next visit", "It is the same bridge by its serial; nobody has to answer twice.")
            {
                Runs =
                [
                    [Cut()],
                    [Visit("V-2", Autumn).Bridge("RB-1", "Q555", i => i.Not("RB-1", "serial Q555 on this one, bought in June"))],
                    [Visit("V-3", NextSpring).Bridge("RB-1", "Q555")],
                ],
                Must = ["RB-1 fit"],
            },
            new Story("The answer was given before the other one was withdrawn", "Who they are was settled then.")
            {
                Runs =
                [
                    [Visit("V-0", "2026-01-15").Bridge("RB-1", "Q100", i => i.Forgotten())],
                    [Visit("V-1", "2026-02-02").Bridge("RB-1", "Q555", i => i.Not("RB-1", "serial Q555 on this one, bought in June"))],
                    [Visit("V-2", Spring).Bridge("RB-1", "Q100", i => i.Not("RB-1", "serial Q100, the old one").Cut())],
                    [Visit("V-3", Autumn).Bridge("RB-1", "Q555")],
                ],
                Must = ["RB-1 fit"],
            },
            new Story("Formerly a tag that two bridges bore", "The one withdrawn under that tag is the same until somebody says otherwise.")
            {
                Runs =
                [
                    [Visit("V-0", "2026-02-02").Bridge("RB-1", "Q555")],
                    [Cut()],
                    [Visit("V-2", Autumn).Bridge("RB-77", "Q555", i => i.Formerly("RB-1"))],
                ],
                Must = ["RB-77 withdraw W10"],
            },
            new Story("Told apart without a reason", "Without a reason it is no answer.")
            {
                Runs =
                [
                    [Cut()],
                    [Visit("V-2", Autumn).Bridge("RB-1", "Q555", i => i.Not("RB-1", null))],
                ],
                Must = ["RB-1 undetermined U3"],
            },
            new Story("Told apart although nothing differs", "Same id, same maker, and no marking that differs: it is the withdrawn one.")
            {
                Runs =
                [
                    [Cut()],
                    [Visit("V-2", Autumn).Bridge("RB-1", "Q100", i => i.Not("RB-1", "it looks newer to me"))],
                ],
                Must = ["RB-1 withdraw W10"],
            },
            new Story(
                "The question ignored once is asked again",
                "An entry that was itself held for want of an answer vouches for nothing."
            )
            {
                Runs =
                [
                    [Cut()],
                    [Visit("V-2", Autumn).Bridge("RB-1", "Q555")],
                    [Visit("V-3", NextSpring).Bridge("RB-1", "Q555")],
                ],
                Must = ["RB-1 undetermined U3"],
            },
            new Story(
                "The question left open by an entry that was in doubt itself",
                "Its own doubt is released; which bridge it is, nobody has said."
            )
            {
                Runs =
                [
                    [Cut()],
                    [Visit("V-2", Autumn).Bridge("RB-1", "Q555", i => i.Doubt())],
                    [Visit("V-3", NextSpring).Bridge("RB-1", "Q555").Released("RB-1", Autumn, "examined-again")],
                ],
                Must = ["RB-1 undetermined U3"],
            },
            new Story(
                "Told apart from a tag that the record names in passing",
                "Both would have to be in the record as items; a repair that names RB-1 shows nobody a second bridge."
            )
            {
                Runs =
                [
                    [Cut()],
                    [Visit("V-2", Autumn).Bridge("RB-77", "Q100", i => i.Not("RB-1", "the other one lies in the van")).Repaired("RB-1")],
                ],
                Must = ["RB-77 undetermined U3"],
            },
            new Story(
                "Told apart because both are in the record",
                "Two rows, two bridges: RB-1 stays withdrawn, RB-77 is another of the same stamped number."
            )
            {
                Runs =
                [
                    [Cut()],
                    [
                        Visit("V-2", Autumn)
                            .Bridge("RB-1", "Q100")
                            .Bridge("RB-77", "Q100", i => i.Not("RB-1", "both lay before me on the table")),
                    ],
                ],
                Must = ["RB-77 fit", "RB-1 withdraw W10"],
            },
            new Story("Tagged anew, and said so", "It is the withdrawn bridge under a new id and inherits all.")
            {
                Runs =
                [
                    [Cut()],
                    [Visit("V-2", Autumn).Bridge("RB-77", "Q100", i => i.Formerly("RB-1"))],
                ],
                Must = ["RB-77 withdraw W10"],
            },
            new Story("Tagged anew, and said so one visit before", "The answer is remembered: RB-77 was RB-1.")
            {
                Runs =
                [
                    [Cut()],
                    [Visit("V-2", Autumn).Bridge("RB-77", "Q100", i => i.Formerly("RB-1"))],
                    [Visit("V-3", NextSpring).Bridge("RB-77", "Q100")],
                ],
                Must = ["RB-77 withdraw W10"],
            },
            new Story("Tagged anew, and nothing said", "Same maker, kind and serial as a withdrawn bridge: it is asked.")
            {
                Runs =
                [
                    [Cut()],
                    [Visit("V-2", Autumn).Bridge("RB-77", "Q100")],
                ],
                Must = ["RB-77 undetermined U3"],
            },
            new Story("Tagged anew while in service", "It was fit and is fit; nobody needs to answer for sound kit.")
            {
                Runs =
                [
                    [Visit("V-1", Spring).Bridge("RB-1", "Q100")],
                    [Visit("V-2", Autumn).Bridge("RB-77", "Q100")],
                ],
                Must = ["RB-77 fit"],
                IsSilent = true,
            },
            new Story("Two ids of one record that are spelt alike", "What is said of the one is said of the other: neither can be passed.")
            {
                Runs =
                [
                    [Visit("V-1", Spring).Bridge("RB-1", "Q100").Bridge("rb 01", "Q200")],
                ],
                Must = ["RB-1 undetermined U3", "rb 01 undetermined U3"],
            },
            new Story("RB-1 withdrawn, RB-2 looked at", "Another bridge is another bridge.")
            {
                Runs =
                [
                    [Cut()],
                    [Visit("V-2", Autumn).Bridge("RB-2", "Q200")],
                ],
                Must = ["RB-2 fit"],
                IsSilent = true,
            },
            new Story("1-2 is not 12", "A separator between digits tells two items apart.")
            {
                Runs =
                [
                    [Visit("V-1", Spring).Bridge("RB 1-2", "Q100", i => i.Cut())],
                    [Visit("V-2", Autumn).Bridge("RB 12", "Q200")],
                ],
                Must = ["RB 12 fit"],
                IsSilent = true,
            },
            new Story("The same item, the same spelling, the next visit", "All is as it was: found without a word.")
            {
                Runs =
                [
                    [Visit("V-1", Spring).Bridge("RB-1", "Q100")],
                    [Visit("V-2", Autumn).Bridge("RB-1", "Q100")],
                ],
                Must = ["RB-1 fit"],
                IsSilent = true,
            },
        ];

    private static IEnumerable<Story> Owners() =>
        [
            new Story("Hired kit under two employers", "The owner is the hirer: whoever uses it, it is that bridge.")
            {
                Runs =
                [
                    [Visit("V-1", Spring, "Beck Trees").HiredFrom("Elm Hire Ltd").Bridge("RB-1", null, i => i.Mark("E1").Cut())],
                    [Visit("V-9", Autumn, "Corrie Arb").HiredFrom("Elm Hire").Bridge("RB-1", null, i => i.Mark("E1"))],
                ],
                Must = ["RB-1 withdraw W10"],
            },
            new Story("Hired kit back at its owner", "Employer and hirer are the same firm.")
            {
                Runs =
                [
                    [Visit("V-1", Spring, "Beck Trees").HiredFrom("Elm Hire Ltd").Bridge("RB-1", null, i => i.Mark("E1").Cut())],
                    [Visit("V-9", Autumn, "Elm Hire Ltd").Bridge("RB-1", null, i => i.Mark("E1"))],
                ],
                Must = ["RB-1 withdraw W10"],
            },
            new Story("Sold with its tag", "Id, maker and serial agree, so it is the same bridge, whoever owns it.")
            {
                Runs =
                [
                    [Cut()],
                    [Visit("W-1", Autumn, "Beck Trees").Bridge("RB-1", "Q100")],
                ],
                Must = ["RB-1 withdraw W10"],
            },
            new Story("Sold and tagged anew", "Maker, kind and serial are those of a withdrawn bridge: it is asked.")
            {
                Runs =
                [
                    [Cut()],
                    [Visit("W-1", Autumn, "Beck Trees").Bridge("BT-9", "Q100")],
                ],
                Must = ["BT-9 undetermined U3"],
            },
            new Story("Sold, tagged anew, and said so", "It inherits the withdrawal.")
            {
                Runs =
                [
                    [Cut()],
                    [Visit("W-1", Autumn, "Beck Trees").Bridge("BT-9", "Q100", i => i.Formerly("RB-1"))],
                ],
                Must = ["BT-9 withdraw W10"],
            },
            new Story("Two firms with a bridge RB-1 each", "Both give a serial, and the serials differ: nothing is asked.")
            {
                Runs =
                [
                    [Cut()],
                    [Visit("W-1", Autumn, "Beck Trees").Bridge("RB-1", "Q900")],
                ],
                Must = ["RB-1 fit"],
                IsSilent = true,
            },
            new Story("Two firms with a bridge RB-1 each and no serial", "Nothing tells it from the withdrawn one: it is asked.")
            {
                Runs =
                [
                    [Visit("V-1", Spring).Bridge("RB-1", null, i => i.Mark("M1").Cut())],
                    [Visit("W-1", Autumn, "Beck Trees").Bridge("RB-1", null, i => i.Mark("M1"))],
                ],
                Must = ["RB-1 undetermined U3"],
            },
            new Story("Firm renamed", "Id, maker and serial agree: a new name over the door repairs nothing.")
            {
                Runs =
                [
                    [Cut()],
                    [Visit("V-2", Autumn, "Oak Vale Tree Care").Bridge("RB-1", "Q100")],
                ],
                Must = ["RB-1 withdraw W10"],
            },
            new Story("Firm renamed, and the serial no longer legible", "Same tag, nothing that differs: it is asked.")
            {
                Runs =
                [
                    [Cut()],
                    [Visit("V-2", Autumn, "Oak Vale Tree Care").Bridge("RB-1", null, i => i.Mark("M1"))],
                ],
                Must = ["RB-1 undetermined U3"],
            },
            new Story("Legal form of the employer left out", "Alder Vale is Alder Vale Ltd.")
            {
                Runs =
                [
                    [Visit("V-1", Spring).Bridge("RB-1", null, i => i.Mark("M1").Cut())],
                    [Visit("V-2", Autumn, "ALDER VALE").Bridge("RB-1", null, i => i.Mark("M1"))],
                ],
                Must = ["RB-1 withdraw W10"],
            },
        ];

    private static IEnumerable<Story> Marks() =>
        [
            new Story("Batch serials", "Two ids of one visit bear it, so it is a batch number and tells nothing.")
            {
                Runs =
                [
                    [Visit("V-1", Spring).Connector("C-1", "B7", i => i.Cut()).Connector("C-2", "B7")],
                    [Visit("V-2", Autumn).Connector("C-2", "B7").Connector("C-3", "B7")],
                ],
                Must = ["C-2 fit", "C-3 fit"],
                IsSilent = false,
            },
            new Story(
                "Another maker's batch number",
                "That two of another maker's connectors bear B7 makes no batch number of it here: one of this maker's B7 is "
                    + "cut, and this may be it."
            )
            {
                Runs =
                [
                    [
                        Visit("V-0", "2026-02-02")
                            .Connector("K-1", "B7", i => i.Maker("Hollin Forge"))
                            .Connector("K-2", "B7", i => i.Maker("Hollin Forge")),
                    ],
                    [Visit("V-1", Spring).Connector("C-1", "B7", i => i.Cut())],
                    [Visit("V-2", Autumn).Connector("C-9", "B7")],
                ],
                Must = ["C-9 undetermined U3"],
            },
            new Story("Batch serials, and the withdrawn one itself", "Its id is its own.")
            {
                Runs =
                [
                    [Visit("V-1", Spring).Connector("C-1", "B7", i => i.Cut()).Connector("C-2", "B7")],
                    [Visit("V-2", Autumn).Connector("c 01", "B7")],
                ],
                Must = ["c 01 withdraw W10"],
            },
            new Story("No serial, known by the owner's mark", "Id and owner agree and nothing contradicts.")
            {
                Runs =
                [
                    [Visit("V-1", Spring).Connector("C-1", null, i => i.Mark("blue 4").Cut())],
                    [Visit("V-2", Autumn).Connector("C-1", null, i => i.Mark("Blue-4"))],
                ],
                Must = ["C-1 withdraw W10"],
            },
            new Story("No serial, another owner's mark", "The id is that of a withdrawn connector and the mark is not: it is asked.")
            {
                Runs =
                [
                    [Visit("V-1", Spring).Connector("C-1", null, i => i.Mark("blue 4").Cut())],
                    [Visit("V-2", Autumn).Connector("C-1", null, i => i.Mark("red 9"))],
                ],
                Must = ["C-1 undetermined U3"],
            },
            new Story("Month of manufacture where the year was known", "2024 and 2024-02 do not contradict each other.")
            {
                Runs =
                [
                    [Visit("V-1", Spring).Bridge("RB-1", "Q100", i => i.Made("2024").Cut())],
                    [Visit("V-2", Autumn).Bridge("RB-1", "Q100", i => i.Made("2024-02"))],
                ],
                Must = ["RB-1 withdraw W10"],
            },
            new Story("Part number emptied", "What is left out contradicts nothing.")
            {
                Runs =
                [
                    [Cut()],
                    [Visit("V-2", Autumn).Bridge("RB-1", "Q100", i => i.PartNumber(null))],
                ],
                Must = ["RB-1 withdraw W10"],
            },
            new Story(
                "An open defect, and the tag on another harness",
                "The defect that was dated has not been dealt with: which harness is this?"
            )
            {
                Runs =
                [
                    [Visit("V-1", Spring).Harness("H-1", "A1", i => i.LaterDefect("2027-01-31"))],
                    [Visit("V-2", Autumn).Harness("H-1", "A2")],
                ],
                Must = ["H-1 undetermined U3"],
            },
            new Story(
                "Old paper imported late",
                "The withdrawal of May came in after the clear visit of November: it holds from the next visit on."
            )
            {
                Runs =
                [
                    [Visit("V-2", Autumn).Bridge("RB-1", "Q100")],
                    [Cut()],
                    [Visit("V-3", NextSpring).Bridge("RB-1", "Q100")],
                ],
                Must = ["RB-1 withdraw W10"],
            },
            new Story(
                "Old paper in one go with the withdrawal, and later a release",
                "The old paper was withdrawn on account of the other alone: releasing that one is enough."
            )
            {
                Runs =
                [
                    [Visit("V-0", "2026-02-02").Bridge("RB-1", "Q100"), Visit("V-1", Spring).Bridge("RB-1", "Q100", i => i.Doubt())],
                    [Visit("V-2", Autumn).Bridge("RB-1", "Q100").Released("RB-1", Spring, "examined-again")],
                ],
                Must = ["RB-1 fit"],
            },
            new Story("Old paper under the old tag imported late", "RB-77 was RB-1, and is withdrawn: so is RB-1.")
            {
                Runs =
                [
                    [Visit("V-2", Autumn).Bridge("RB-77", "Q100", i => i.Formerly("RB-1").Cut())],
                    [Visit("V-1", Spring).Bridge("RB-1", "Q100")],
                    [Visit("V-3", NextSpring).Bridge("RB-1", "Q100")],
                ],
                Must = ["RB-1 withdraw W10"],
            },
            new Story("The old tag back on a bridge that was withdrawn under its new one", "RB-77 was RB-1, so RB-1 is RB-77.")
            {
                Runs =
                [
                    [Visit("V-1", Spring).Bridge("RB-1", null, i => i.Mark("M1"))],
                    [Visit("V-2", Autumn).Bridge("RB-77", "Q100", i => i.Formerly("RB-1").Cut())],
                    [Visit("V-3", NextSpring).Bridge("RB-1", null, i => i.Mark("M1"))],
                ],
                Must = ["RB-1 withdraw W10"],
            },
            new Story(
                "The old tag, recorded for the first time after the new one was withdrawn",
                "RB-77 was RB-1, whether or not a record of RB-1 was there."
            )
            {
                Runs =
                [
                    [Visit("V-1", Spring).Bridge("RB-77", "Q100", i => i.Formerly("RB-1").Cut())],
                    [Visit("V-2", Autumn).Bridge("RB-1", null, i => i.Mark("M1"))],
                ],
                Must = ["RB-1 withdraw W10"],
            },
            new Story("Old paper under the old tag, looked at late", "Every known withdrawal counts, whatever its day.")
            {
                Runs =
                [
                    [Visit("V-2", Autumn).Bridge("RB-77", "Q100", i => i.Formerly("RB-1").Cut())],
                    [Visit("V-1", Spring).Bridge("RB-1", null, i => i.Mark("M1"))],
                ],
                Must = ["RB-1 withdraw W10"],
            },
            new Story(
                "An answer about an item that nothing tells it from, whose id another record only names",
                "The marking is the same, and a name alone has nothing to differ from."
            )
            {
                Runs =
                [
                    [Visit("V-0", "2026-02-02").Harness("H-1", "A1"), Visit("V-1", Spring).Bridge("RB-14", "Q101", i => i.On("H-1"))],
                    [
                        Visit("V-2", Autumn)
                            .Bridge("RB-2", "A1", i => i.Not("H-1", "the plate on this one says so"))
                            .Harness("H-1", "Z9", i => i.Maker("Hollin Forge")),
                    ],
                ],
                Must = ["RB-2 undetermined U3"],
            },
            new Story(
                "Two things of one day and nearly one tag, one of them held",
                "Which of the two this is does not hang on the order in which they came in."
            )
            {
                Runs =
                [
                    [Visit("V-1a", Spring).Bridge("RB-1", null, i => i.Maker("Hollin Forge"))],
                    [Visit("V-1b", Spring).Bridge("RB-l", null, i => i.Mark("M1").NotLookedAt())],
                    [Visit("V-2", Autumn).Bridge("RB 1", null, i => i.Mark("M1"))],
                ],
                Must = ["RB 1 undetermined U3"],
            },
            new Story(
                "A withdrawn bridge's serial number under a new tag, said to be another bridge formerly",
                "It has the serial number of the withdrawn one, and not that of the one that it says it was."
            )
            {
                Runs =
                [
                    [Visit("V-1", Spring).Bridge("RB-1", "Q100", i => i.Cut())],
                    [Visit("V-1b", "2026-07-01").Bridge("RB-2", "Q555", i => i.NotLookedAt())],
                    [Visit("V-2", Autumn).Bridge("RB-77", "Q100", i => i.Formerly("RB-2"))],
                ],
                Must = ["RB-77 undetermined U3"],
            },
            new Story(
                "Two harnesses of one serial number, and a withdrawn third whose number is like it with I for 1 and O for 0",
                "IO077 may be IOO77, which is not the number that the two share."
            )
            {
                Runs =
                [
                    [Visit("V-1", Spring).Harness("H-14", "IO77").Harness("H-15", "IO77")],
                    [Visit("V-1b", "2026-07-01").Harness("H-20", "IOO77", i => i.Cut())],
                    [Visit("V-2", Autumn).Harness("H-16", "IO077")],
                ],
                Must = ["H-16 undetermined U3"],
            },
            new Story(
                "Withdrawn, released and held by two records of one day, and back with the maker misspelt",
                "The release ended the withdrawal and not what the other record of that day was held for."
            )
            {
                Runs =
                [
                    [Visit("V-1", Spring).Bridge("RB-1", "Q100", i => i.Doubt())],
                    [
                        Visit("V-1b", Spring)
                            .Bridge("RB-1", "Q100", i => i.Forgotten())
                            .Released("RB-1", Spring, "recorded-in-error", grounds: "the stain was paint, seen under the lens"),
                    ],
                    [Visit("V-2", Autumn).Bridge("RB-1", "Q100", i => i.Maker("Fenwick Works"))],
                ],
                Must = ["RB-1 undetermined U3"],
            },
            new Story(
                "The serial number of an earlier examination, and a slip in the part number taken for another bridge",
                "By its serial number it is the bridge of V-1, and that is the one withdrawn since: an answer about it takes nothing away."
            )
            {
                Runs =
                [
                    [Visit("V-1", Spring).Bridge("RB-1", "Q100")],
                    [Visit("V-1b", "2026-07-01").Bridge("RB-1", null, i => i.Mark("M1").Cut())],
                    [
                        Visit("V-2", Autumn)
                            .Bridge("RB-1", "Q100", i => i.PartNumber("SP-1l-B").Not("RB-1", "the plate on this one says so")),
                    ],
                ],
                Must = ["RB-1 withdraw W10"],
            },
            new Story(
                "Destroyed, and released by the very record that says so; then the tag on another maker's bridge",
                "A record cannot take back what it says itself: the bridge is destroyed, and the other is asked who it is."
            )
            {
                Runs =
                [
                    [
                        Visit("V-1", Spring)
                            .Bridge("RB-1", "Q100", i => i.Destroyed())
                            .Released("RB-1", Spring, "recorded-in-error", grounds: "the wrong line was ticked in the book"),
                    ],
                    [Visit("V-2", Autumn).Bridge("RB-1", "Q777", i => i.Maker("Hollin Forge"))],
                ],
                Must = ["RB-1 undetermined U3"],
            },
            new Story(
                "An old tag on a new bridge, beside the withdrawn one that bore it and has a new tag",
                "What was withdrawn under its new tag bore this one before: which of the two is which must be said."
            )
            {
                Runs =
                [
                    [Visit("V-1", Spring).Bridge("RB-1", "Q100", i => i.NotLookedAt())],
                    [Visit("V-1b", "2026-07-01").Bridge("RB-9", "Q100", i => i.Doubt())],
                    [
                        Visit("V-2", Autumn)
                            .Bridge("RB-1", "Q777", i => i.Maker("Hollin Forge"))
                            .Bridge("RB-9", "Q100", i => i.Formerly("RB-1").NotLookedAt()),
                    ],
                ],
                Must = ["RB-1 undetermined U3", "RB-9 withdraw W10"],
            },
            new Story(
                "A held bridge, and another said to be it although the maker contradicts; then the tag on a third",
                "That the other is fit says nothing of the one that was held."
            )
            {
                Runs =
                [
                    [Visit("V-1", Spring).Bridge("RB-1", "Q100", i => i.Maker("Hollin Forge").Forgotten())],
                    [Visit("V-1b", "2026-07-01").Bridge("RB-9", "Q100", i => i.Formerly("RB-1"))],
                    [Visit("V-2", Autumn).Bridge("RB-1", "Q777")],
                ],
                Must = ["RB-1 undetermined U3"],
            },
            new Story(
                "Old paper of a bridge that was destroyed under a later tag, by a row that says both: it was this one, it was not",
                "What a row says itself of its old id is not taken back by its own answer: the bridge is the destroyed one."
            )
            {
                Runs =
                [
                    [
                        Visit("V-2", Autumn)
                            .Bridge("RB-1-B", "Q100", i =>
                                i.Made("2021-11").Formerly("RB-1").Not("RB-1", "the plate on this one says so").Destroyed()
                            )
                            .Bridge("RB-OO1", "Q100", i => i.Made("2022").NotLookedAt()),
                    ],
                    [Visit("V-1", Spring).Bridge("RB-1", "qlO0", i => i.Made("2021-11"))],
                ],
                Must = ["RB-1 withdraw"],
            },
            new Story("Old paper and a new visit in one go", "The order in which they are named changes nothing.")
            {
                Runs =
                [
                    [Visit("V-2", Autumn).Bridge("RB-1", "Q100"), Cut()],
                ],
                Must = ["RB-1 withdraw"],
            },
        ];

    private static StoryVisit Cut() => Visit("V-1", Spring).Bridge("RB-1", "Q100", i => i.Cut());
}
