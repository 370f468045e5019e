using ExamDocs.Core.Known;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Tests.Known;

/// <summary>Rows that share a key stay together, over any number of others between; rows that share none are told apart.</summary>
public sealed class KnownGroupsTests
{
    [Fact]
    public void Rows_that_share_nothing_are_given_alone() =>
        Assert.Equal("1: A; 2: A", Touching(Item("A"), Visit(1, Item("A"), Item("B")), Visit(2, Item("A")), Visit(3, Item("B"))));

    [Fact]
    public void A_serial_number_a_former_id_and_an_answer_hold_rows_together() =>
        Assert.Equal(
            "1: A C; 2: D; 3: E",
            Touching(
                Item("A"),
                Visit(1, Item("A", "S1"), Item("B"), Item("C", "s-1")),
                Visit(2, Item("D") with { Formerly = "C" }),
                Visit(3, Item("E") with { NotTheSameAs = [new() { Id = "d" }] }, Item("F"))
            )
        );

    [Fact]
    public void An_assembly_stays_together_by_its_rows_and_by_its_renewals() =>
        Assert.Equal(
            "1: H P; 2: Q",
            Touching(
                Item("H"),
                Visit(1, Item("H"), Item("P") with { FittedTo = "H" }, Item("X")),
                Visit(2, Item("Q")) is var two
                    ? two with
                    {
                        Record = two.Record with
                        {
                            Renewals =
                            [
                                new()
                                {
                                    Item = "H",
                                    RemovedPart = "P",
                                    FittedPart = "Q",
                                },
                            ],
                        },
                    }
                    : null!
            )
        );

    [Fact]
    public void A_record_that_joins_groups_gets_their_visits_whole() =>
        Assert.Equal(
            "1: A X; 2: B",
            Said(
                new KnownGroups([Visit(1, Item("A"), Item("X")), Visit(2, Item("B")), Visit(3, Item("C"))]).Touching(
                    new ExaminationRecord { Items = [Item("A") with { Formerly = "B" }] }
                )
            )
        );

    [Fact]
    public void What_is_only_decided_or_done_goes_with_its_item()
    {
        var visit = Visit(1, Item("A"), Item("B")) with { Outcomes = [new("A", Outcome.Fit, []), new("B", Outcome.Withdraw, ["W1"])] };
        var record = visit.Record with { Examinations = [new() { Item = "A" }, new() { Item = "B" }], Disposals = [new() { Item = "B" }] };
        var found = Assert.Single(
            new KnownGroups([visit with { Record = record }]).Touching(new ExaminationRecord { Items = [Item("B")] })
        );
        Assert.Equal("B", Assert.Single(found.Outcomes).Item);
        Assert.Equal("B", Assert.Single(found.Record.Examinations).Item);
        Assert.Single(found.Record.Disposals);
    }

    [Fact]
    public void What_nobody_named_touches_nothing() => Assert.Equal("", Touching(Item("Z"), Visit(1, Item("A"))));

    private static string Touching(Item asked, params KnownVisit[] visits) =>
        Said(new KnownGroups(visits).Touching(new ExaminationRecord { Items = [asked] }));

    private static string Said(IEnumerable<KnownVisit> visits) =>
        string.Join(
            "; ",
            visits.Select(v => FormattableString.Invariant($"{v.Number}: {string.Join(' ', v.Record.Items.Select(i => i.Id))}"))
        );

    private static Item Item(string id, string? serial = null) => new() { Id = id, Serial = serial };

    private static KnownVisit Visit(int number, params Item[] items) => new(number, new ExaminationRecord { Items = items }, []);
}
