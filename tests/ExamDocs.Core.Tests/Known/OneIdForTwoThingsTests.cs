using ExamDocs.Core.Known;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Tests.Known;

/// <summary>Two things may have one id; what is recorded of one of them does not count for the other.</summary>
public sealed class OneIdForTwoThingsTests
{
    private static readonly LocalDate June = new(2026, 6, 8),
        July = new(2026, 7, 8),
        October = new(2026, 10, 6);

    [Fact]
    public void A_renewal_of_one_thing_does_not_release_the_other()
    {
        var withdrawn = new KnownVisit(
            1,
            Visit("V-1", June, Item("RB 2", "Q100")),
            [Withdrawn("RB 2", June, "W8") with { Parts = ["H-1"] }]
        );
        var other = new KnownVisit(
            2,
            Visit("V-2", July, Item("RB-2", "Q555")) with
            {
                Renewals =
                [
                    new()
                    {
                        Item = "H-1",
                        RemovedPart = "RB-2",
                        DoneOn = July,
                    },
                ],
            },
            []
        );
        var history = WhatIsKnown.Of(Visit("V-3", October, Item("RB-2-B", "Q100") with { Formerly = "RB-2" }), [withdrawn, other]).History;
        Assert.Single(history.Withdrawals);
        Assert.DoesNotContain(history.Renewals, r => r.RemovedPart is "RB-2-B");
    }

    [Fact]
    public void An_older_visit_decided_later_counts_what_the_part_was_on_that_day()
    {
        var then = new KnownVisit(1, Visit("V-1", June, Item("RB-2", "Q100") with { FittedTo = "H-1" }), []);
        var moved = new KnownVisit(
            2,
            Visit("V-3", October, Item("H-1", "A9", "harness", "Hollin Forge"), Item("RB-2", "Q100") with { FittedTo = "H-1" }),
            [Withdrawn("RB-2", October, "W1")]
        );
        var parts = WhatIsKnown.Of(Visit("V-2", July, Item("H-1", "A1", "harness")), [then, moved]).History.Parts;
        Assert.Equal(("RB-2", Outcome.Withdraw), parts.Select(p => (p.Id, p.Outcome)).Single());
    }

    private static KnownOutcome Withdrawn(string id, LocalDate on, string code) => new(id, Outcome.Withdraw, [code]) { ExaminedOn = on };

    private static ExaminationRecord Visit(string reference, LocalDate on, params Item[] items) =>
        new()
        {
            Visit = new()
            {
                Reference = reference,
                ExaminedOn = on,
                Employer = new() { Name = "Alder Vale" },
            },
            Items = items,
        };

    private static Item Item(string id, string serial, string category = "rope-bridge", string maker = "Fennick Works") =>
        new()
        {
            Id = id,
            Category = category,
            Maker = maker,
            Model = "Long",
            Serial = serial,
        };
}
