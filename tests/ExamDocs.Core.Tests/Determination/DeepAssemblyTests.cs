using System.Text.Json.Nodes;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>Six items, each fitted to the next: a reason at the bottom reaches the top, and none passes downwards.</summary>
public sealed class DeepAssemblyTests
{
    private static readonly string[] Ids = ["P0", "P1", "P2", "P3", "P4", "P5"];

    public static TheoryData<int> Levels => [.. Enumerable.Range(0, Ids.Length)];

    [Theory, MemberData(nameof(Levels))]
    public void A_doubt_reaches_everything_above_and_nothing_below(int level)
    {
        var decided = Decided.From(Chain().Answer("identity", "doubt", Ids[level]));

        Assert.All(Ids[..level], id => Assert.Equal("W9", decided.Codes('W', id)));
        Assert.Equal("W2", decided.Codes('W', Ids[level]));
        Assert.All(Ids[(level + 1)..], id => Assert.Equal("fit", decided.Outcome(id)));
    }

    [Theory, MemberData(nameof(Levels))]
    public void An_unexamined_item_leaves_everything_above_undetermined_and_nothing_below(int level)
    {
        var decided = Decided.From(Chain().Answer("identity", "not-examined", Ids[level]));

        Assert.All(Ids[..level], id => Assert.Equal("U6", decided.Codes(id)));
        Assert.Equal("U1", decided.Codes(Ids[level]));
        Assert.All(Ids[(level + 1)..], id => Assert.Equal("fit", decided.Outcome(id)));
    }

    [Theory, MemberData(nameof(Levels))]
    public void A_last_day_reaches_everything_above_and_nothing_below(int level)
    {
        var decided = Decided.From(Chain().Later("", "2026-08-01", Ids[level]));

        Assert.All(Ids[..level], id => Assert.Equal(("D3", "2026-07-31"), (decided.Codes(id), decided.Until(id))));
        Assert.All(Ids[(level + 1)..], id => Assert.Null(decided.Until(id)));
    }

    /// <summary>An assembly is due when its first part is due; a part is not due because its whole is.</summary>
    [Theory, MemberData(nameof(Levels))]
    public void The_earliest_next_date_reaches_everything_above_and_nothing_below(int level)
    {
        var record = Chain();
        record.Exam(Ids[level])["nextBy"] = "2026-07-15";
        var decided = Decided.From(record);

        Assert.All(Ids[..(level + 1)], id => Assert.Equal("2026-07-15", decided.Next(id)));
        Assert.All(Ids[(level + 1)..], id => Assert.Equal(GoodRecord.NextBy, decided.Next(id)));
    }

    /// <summary>D2 compares the end of service with the item's own next date; the earlier date of a part does not matter.</summary>
    [Fact]
    public void End_of_service_is_compared_with_the_items_own_next_date()
    {
        var record = Chain();
        record.Item("P0")["obsoleteOn"] = "2026-09-01";
        record.Exam("P1")["nextBy"] = "2026-07-15";
        var decided = Decided.From(record);

        Assert.Equal(("D2", "2026-09-01", "2026-07-15"), (decided.Codes("P0"), decided.Until("P0"), decided.Next("P0")));
    }

    /// <summary>A renewal ends a withdrawal that was for the part it took off, and no other.</summary>
    [Theory]
    [InlineData("B", "fit")]
    [InlineData("C", "withdraw")]
    [InlineData("B,C", "withdraw")]
    public void A_renewal_ends_exactly_what_was_for_the_part_taken_off(string parts, string outcome)
    {
        var record = GoodRecord
            .Of(("A", "harness", null), ("B", "rope-bridge", null), ("C", "swivel-ring", "A"), ("N", "rope-bridge", "A"))
            .Renew("A", "B", "N");
        var past = new PastWithdrawal("A", "Q-2025-000001", new LocalDate(2025, 11, 20), ["W9"], false) { Parts = parts.Split(',') };

        Assert.Equal(outcome, Decided.From(record, past).Outcome("A"));
    }

    private static JsonObject Chain() => GoodRecord.Of([.. Ids.Select((id, n) => (id, "swivel-ring", n == 0 ? null : Ids[n - 1]))]);
}
