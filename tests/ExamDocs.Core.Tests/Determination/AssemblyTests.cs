using System.Text.Json.Nodes;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>A harness A with a bridge B on it and a ring C on the bridge: reasons pass upwards, never downwards.</summary>
public sealed class AssemblyTests
{
    [Theory]
    [InlineData("C", "withdraw", "withdraw", "withdraw")]
    [InlineData("B", "withdraw", "withdraw", "fit")]
    [InlineData("A", "withdraw", "fit", "fit")]
    public void W9_climbs_two_levels_and_never_descends(string bad, string a, string b, string c)
    {
        var decided = Decided.From(GoodRecord.Assembly().Answer("identity", "doubt", bad));

        Assert.Equal((a, b, c), (decided.Outcome("A"), decided.Outcome("B"), decided.Outcome("C")));
        Assert.All(Above(bad), id => Assert.Equal("W9", decided.Codes('W', id)));
        Assert.Equal("W2", decided.Codes('W', bad));
    }

    [Theory]
    [InlineData("C", "undetermined", "undetermined", "undetermined")]
    [InlineData("B", "undetermined", "undetermined", "fit")]
    [InlineData("A", "undetermined", "fit", "fit")]
    public void U6_climbs_two_levels_and_never_descends(string bad, string a, string b, string c)
    {
        var decided = Decided.From(GoodRecord.Assembly().Answer("identity", "not-examined", bad));

        Assert.Equal((a, b, c), (decided.Outcome("A"), decided.Outcome("B"), decided.Outcome("C")));
        Assert.All(Above(bad), id => Assert.Equal("U6", decided.Codes(id)));
        Assert.Equal("U1", decided.Codes(bad));
    }

    [Theory]
    [InlineData("C", "fit-until", "fit-until", "fit-until")]
    [InlineData("B", "fit-until", "fit-until", "fit")]
    [InlineData("A", "fit-until", "fit", "fit")]
    public void D3_climbs_two_levels_and_never_descends(string bad, string a, string b, string c)
    {
        var decided = Decided.From(GoodRecord.Assembly().Answer("marking", "defect", bad).Later("marking", "2026-08-01", bad));

        Assert.Equal((a, b, c), (decided.Outcome("A"), decided.Outcome("B"), decided.Outcome("C")));
        Assert.All(Above(bad), id => Assert.Equal(("D3", "2026-07-31"), (decided.Codes(id), decided.Until(id))));
        Assert.Equal(("D1", "2026-07-31"), (decided.Codes(bad), decided.Until(bad)));
    }

    [Fact]
    public void The_earliest_last_day_of_part_and_whole_holds()
    {
        var record = GoodRecord.Assembly().Later("", "2026-08-01", "C").Later("", "2026-07-01", "B").Later("", "2026-09-01", "A");
        var decided = Decided.From(record);

        Assert.Equal(("2026-06-30", "2026-06-30", "2026-07-31"), (decided.Until("A"), decided.Until("B"), decided.Until("C")));
    }

    [Fact]
    public void A_withdrawn_part_outweighs_an_undetermined_one()
    {
        var record = GoodRecord
            .Of(("A", "harness", null), ("B", "rope-bridge", "A"), ("C", "swivel-ring", "A"))
            .Answer("identity", "doubt", "B")
            .Answer("identity", "not-examined", "C");
        var decided = Decided.From(record);

        Assert.Equal("withdraw", decided.Outcome("A"));
        Assert.Equal("W9", decided.Codes('W', "A"));
        Assert.Contains("U6", decided.Codes("A"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_that_was_not_examined_leaves_its_whole_undetermined()
    {
        var record = GoodRecord.Assembly();
        record["examinations"]!.AsArray().Remove(record.Exam("C"));
        var decided = Decided.From(record);

        Assert.Equal(("U6", "U6", "U0"), (decided.Codes("A"), decided.Codes("B"), decided.Codes("C")));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_part_taken_off_in_a_renewal_no_longer_counts(bool stillSaysFitted)
    {
        var record = GoodRecord
            .Of(("A", "harness", null), ("B", "rope-bridge", "A"), ("N", "rope-bridge", "A"))
            .Answer("heat", "doubt", "B")
            .Conclude("withdraw", "B")
            .Renew("A", "B", "N");
        if (!stillSaysFitted)
            record.Item("B").Remove("fittedTo");
        var decided = Decided.From(record);

        Assert.Equal(
            (stillSaysFitted ? "undetermined" : "fit", "withdraw", "fit"),
            (decided.Outcome("A"), decided.Outcome("B"), decided.Outcome("N"))
        );
    }

    [Fact]
    public void A_part_removed_and_not_replaced_no_longer_counts()
    {
        var record = GoodRecord
            .Of(("A", "harness", null), ("B", "rope-bridge", null))
            .Answer("heat", "doubt", "B")
            .Conclude("withdraw", "B")
            .Renew("A", "B");

        Assert.Equal("fit", Decided.From(record).Outcome("A"));
    }

    [Fact]
    public void A_renewal_of_another_part_or_another_whole_does_not_count()
    {
        var other = GoodRecord
            .Of(("A", "harness", null), ("B", "rope-bridge", "A"), ("N", "rope-bridge", "A"))
            .Answer("heat", "doubt", "B")
            .Renew("A", "N");
        var elsewhere = GoodRecord
            .Of(("A", "harness", null), ("B", "rope-bridge", "A"), ("Z", "harness", null))
            .Answer("heat", "doubt", "B")
            .Renew("Z", "B");

        Assert.Equal("withdraw", Decided.From(other).Outcome("A"));
        Assert.Equal("withdraw", Decided.From(elsewhere).Outcome("A"));
    }

    [Fact]
    public void A_bad_part_fitted_in_the_renewal_counts()
    {
        var record = GoodRecord
            .Of(("A", "harness", null), ("B", "rope-bridge", null), ("N", "rope-bridge", "A"))
            .Answer("heat", "doubt", "N")
            .Renew("A", "B", "N");

        Assert.Equal("withdraw", Decided.From(record).Outcome("A"));
    }

    /// <summary>The row of the new part does not say what it is fitted to; the renewal does.</summary>
    [Fact]
    public void A_bad_part_counts_where_only_the_renewal_says_that_it_is_fitted()
    {
        var record = GoodRecord
            .Of(("A", "harness", null), ("B", "rope-bridge", null), ("N", "rope-bridge", null))
            .Answer("heat", "doubt", "N")
            .Renew("A", "B", "N");

        Assert.NotInRange(Decided.From(record).Rank("A"), 0, 1);
    }

    [Theory]
    [InlineData("PN-B", "fit", "")]
    [InlineData("PN-X", "withdraw", "W8")]
    [InlineData("pn-b", "withdraw", "W8")]
    [InlineData("PN-B2", "withdraw", "W8")]
    [InlineData("", "withdraw", "W8")]
    [InlineData(null, "withdraw", "W8")]
    public void W8_by_the_part_number(string? partNumber, string outcome, string codes)
    {
        var record = GoodRecord.Of(("A", "harness", null), ("B", "rope-bridge", "A"));
        record.Limits("A")["permittedParts"] = new JsonArray("PN-B", "PN-C");
        record.Limits("B").Remove("partNumber");
        record.Item("B").With("partNumber", partNumber);
        if (partNumber is null)
            record.Item("B").Remove("partNumber");
        var decided = Decided.From(record);

        Assert.Equal((outcome, codes), (decided.Outcome("B"), decided.Codes('W', "B")));
        Assert.Equal(outcome is "fit" ? "" : "W9", decided.Codes('W', "A"));
    }

    [Theory]
    [InlineData("A", "B", true)]
    [InlineData("A", "N", false)]
    public void A_withdrawal_for_a_part_not_permitted_ends_with_the_renewal_that_takes_it_off(string whole, string removed, bool ends)
    {
        var record = GoodRecord.Of(("A", "harness", null), ("B", "rope-bridge", null), ("N", "rope-bridge", null)).Renew(whole, removed);
        var decided = Decided.From(record, Past("B", "W8"), Past("A", "W9"));

        Assert.Equal(ends ? "fit" : "withdraw", decided.Outcome("B"));
        Assert.Equal(ends ? "" : "W10", decided.Codes('W', "B"));
        if (ends)
            Assert.Equal("fit", decided.Outcome("A"));
    }

    [Theory]
    [InlineData("W9", "fit")]
    [InlineData("W9 W1", "withdraw")]
    [InlineData("W6 W9", "withdraw")]
    [InlineData("W1", "withdraw")]
    [InlineData("W5", "withdraw")]
    [InlineData("", "withdraw")]
    public void Only_a_withdrawal_that_was_for_parts_alone_ends_with_the_renewal(string codes, string outcome)
    {
        var record = GoodRecord.Of(("A", "harness", null), ("B", "rope-bridge", null), ("N", "rope-bridge", "A")).Renew("A", "B", "N");
        var past = Past("A", codes.Split(' ', StringSplitOptions.RemoveEmptyEntries));

        Assert.Equal(outcome, Decided.From(record, past).Outcome("A"));
    }

    /// <summary>A part fitted and nothing taken off: the part that caused the withdrawal may still be on.</summary>
    [Fact]
    public void A_renewal_that_takes_nothing_off_ends_nothing()
    {
        var record = GoodRecord.Of(("A", "harness", null), ("N", "rope-bridge", "A")).Renew("A", "", "N");

        Assert.Equal("withdraw", Decided.From(record, Past("A", "W9")).Outcome("A"));
    }

    [Theory]
    [InlineData(true, true, "fit")]
    [InlineData(true, false, "withdraw")]
    [InlineData(false, true, "withdraw")]
    public void A_part_withdrawn_for_W8_and_W9_needs_both_renewals(bool own, bool below, string outcome)
    {
        var record = GoodRecord.Of(("A", "harness", null), ("B", "rope-bridge", null), ("C", "swivel-ring", null));
        if (own)
            record.Renew("A", "B");
        if (below)
            record.Renew("B", "C");

        Assert.Equal(outcome, Decided.From(record, Past("B", "W8", "W9")).Outcome("B"));
    }

    [Fact]
    public void A_renewal_before_the_withdrawal_ends_nothing()
    {
        var record = GoodRecord
            .Of(("A", "harness", null), ("B", "rope-bridge", null), ("N", "rope-bridge", "A"))
            .Renew("A", "B", "N", "2025-06-01");

        Assert.Equal("withdraw", Decided.From(record, Past("A", "W9")).Outcome("A"));
    }

    private static string[] Above(string id) =>
        id switch
        {
            "C" => ["A", "B"],
            "B" => ["A"],
            _ => [],
        };

    private static PastWithdrawal Past(string id, params string[] codes) =>
        new(id, "Q-2025-000009", new LocalDate(2025, 11, 20), codes, NeverReleasable: false);
}
