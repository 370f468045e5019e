using System.Text.Json.Nodes;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>W10: an earlier withdrawal stays open until it is released; some can only be released as recorded in error.</summary>
public sealed class WithdrawalReleaseTests
{
    private const string Number = "Q-2025-000007";

    public static TheoryData<string, string> NeverReleasable
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var category in Catalogue.All)
            {
                foreach (var criterion in category.Criteria.Where(c => c.Id is "saw-contact" or "severe-load"))
                    data.Add(category.Id, criterion.Id);
            }
            return data;
        }
    }

    [Fact]
    public void A_withdrawal_of_the_history_ends_with_its_release()
    {
        Assert.Equal("withdraw W10", Short(Decided.From(Record(), Past())));
        Assert.Equal("fit ", Short(Decided.From(Record().Release(Number), Past())));
    }

    [Theory]
    [InlineData("Q-2025-000008", GoodRecord.Id)]
    [InlineData("q-2025-000007", GoodRecord.Id)]
    [InlineData(null, GoodRecord.Id)]
    [InlineData(Number, "IT-2")]
    public void A_release_of_something_else_does_not_count(string? document, string item)
    {
        var record = GoodRecord.Of((GoodRecord.Id, "sling", null), ("IT-2", "sling", null)).Release(document, item);

        Assert.Equal("withdraw W10", Short(Decided.From(record, Past())));
    }

    [Fact]
    public void Each_of_two_withdrawals_needs_its_own_release()
    {
        var second = Past() with { Document = "Q-2025-000099" };

        Assert.Equal("withdraw W10", Short(Decided.From(Record().Release(Number), Past(), second)));
        Assert.Equal("fit ", Short(Decided.From(Record().Release(Number).Release("Q-2025-000099"), Past(), second)));
    }

    /// <summary>A release without a known person, a day or grounds does not count: the withdrawal stays open.</summary>
    [Theory]
    [InlineData("by", null)]
    [InlineData("by", "")]
    [InlineData("by", "ex9")]
    [InlineData("by", "EX1")]
    [InlineData("on", null)]
    [InlineData("on", "")]
    [InlineData("on", "2026-02-30")]
    [InlineData("grounds", null)]
    [InlineData("grounds", "  ")]
    public void An_incomplete_release_does_not_count(string member, string? value)
    {
        var record = Record().Release(Number);
        var release = record["releases"]![0]!.AsObject().Without(member);
        if (value is not null)
            release[member] = value;

        Assert.Equal("withdraw W10", Short(Decided.From(record, Past())));
    }

    /// <summary>A withdrawal in the same record has no document yet: a release that names one is of another withdrawal.</summary>
    [Theory]
    [InlineData(null, "fit ")]
    [InlineData("Q-2025-000123", "withdraw W10")]
    public void A_withdrawal_of_the_same_record_is_released_without_a_document(string? document, string expected)
    {
        var record = Record().Earlier("sling", "2025-11-20", e => e["observations"]![0]!["state"] = "doubt");
        record["examinations"]![1]!["observations"]![0]!["note"] = "seen";
        record["examinations"]![1]!["conclusion"] = "withdraw";
        Assert.Equal("withdraw W10", Short(Decided.From(record)));
        Assert.Equal(expected, Short(Decided.From(record.Release(document))));
    }

    /// <summary>A renewal ends a withdrawal for a part from the day of the withdrawal to the day examined, both inclusive.</summary>
    [Theory]
    [InlineData("2025-11-19", false)]
    [InlineData("2025-11-20", true)]
    [InlineData("2026-05-11", true)]
    [InlineData("2026-05-12", false)]
    public void A_renewal_ends_a_withdrawal_for_its_part_from_that_day_to_the_examination(string on, bool ends)
    {
        var record = GoodRecord.Of(("A", "harness", null), ("B", "rope-bridge", null), ("C", "rope-bridge", "A")).Renew("A", "B", "C", on);
        PastWithdrawal part = new("A", Number, new LocalDate(2025, 11, 20), ["W9"], NeverReleasable: false);
        Assert.Equal(!ends, Decided.From(record, part).Codes('W', "A").Contains("W10", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("2025-11-19")]
    [InlineData("2025-01-01")]
    public void A_release_dated_before_the_withdrawal_does_not_count(string on) =>
        Assert.Equal("withdraw", Decided.From(Record().Release(Number, on: on), Past()).Outcome());

    [Fact]
    public void What_is_never_releasable_stays_withdrawn()
    {
        var past = Past() with { NeverReleasable = true };

        Assert.Equal("withdraw W10", Short(Decided.From(Record().Release(Number), past)));
    }

    [Fact]
    public void A_withdrawal_of_another_item_does_not_count() =>
        Assert.Equal("fit ", Short(Decided.From(Record(), Past() with { ItemId = "IT-9" })));

    [Theory]
    [InlineData("cut", "defect")]
    [InlineData("cut", "doubt")]
    [InlineData("marking", "defect")]
    [InlineData("dirt", "doubt")]
    public void A_withdrawal_earlier_in_the_same_record_is_open_until_released(string criterion, string state)
    {
        var record = Record().Earlier("sling", "2026-02-10", e => Plant(e, criterion, state));

        Assert.Equal("withdraw W10", Short(Decided.From(record)));
        var released = record.Copy().Release(null);
        if (state is "defect")
        {
            Assert.Equal("withdraw W10", Short(Decided.From(released)));
            released.Row(
                "remedies",
                """{"item":"IT-1","what":"sewn anew","doneBy":"the maker","doneOn":"2026-03-01","evidence":"invoice"}"""
            );
        }
        Assert.Equal("fit ", Short(Decided.From(released)));
    }

    /// <summary>What each reason of a release can end; a mended item has a remedy on record between the two days.</summary>
    [Theory]
    [InlineData("W1", null, false, false)]
    [InlineData("W1", null, true, true)]
    [InlineData("W1", "made-good", false, false)]
    [InlineData("W1", "made-good", true, true)]
    [InlineData("W1", "examined-again", true, false)]
    [InlineData("W1", "recorded-in-error", false, true)]
    [InlineData("W2", null, false, true)]
    [InlineData("W2", "examined-again", false, true)]
    [InlineData("W2", "made-good", false, false)]
    [InlineData("W3", "made-good", true, true)]
    [InlineData("W4", "made-good", true, true)]
    [InlineData("W4", "examined-again", false, false)]
    [InlineData("W5", "made-good", true, false)]
    [InlineData("W5", "recorded-in-error", false, true)]
    [InlineData("W6", "examined-again", false, true)]
    [InlineData("W7", "made-good", true, false)]
    [InlineData("W7", "examined-again", true, false)]
    [InlineData("W7", "recorded-in-error", false, true)]
    [InlineData("W11", "made-good", true, false)]
    [InlineData("W11", "recorded-in-error", false, true)]
    [InlineData("W1 W2", "examined-again", false, false)]
    [InlineData("W2 W6", "examined-again", false, true)]
    [InlineData("W2 W10", "examined-again", false, true)]
    public void A_release_ends_what_its_reason_can_end(string codes, string? because, bool mended, bool ends)
    {
        var past = Past() with { Codes = codes.Split(' ') };
        var record = Record().Release(Number);
        if (because is not null)
            record["releases"]![0]!["because"] = because;
        if (mended)
            record.Row(
                "remedies",
                """{"item":"IT-1","what":"sewn anew","doneBy":"the maker","doneOn":"2026-03-01","evidence":"invoice"}"""
            );

        Assert.Equal(
            ends ? "fit "
                : codes is "W11" ? "withdraw W11"
                : "withdraw W10",
            Short(Decided.From(record, past))
        );
    }

    /// <summary>What can never be made good ends only where it should not have been recorded.</summary>
    [Theory]
    [InlineData("recorded-in-error", "fit ")]
    [InlineData("made-good", "withdraw W10")]
    [InlineData("examined-again", "withdraw W10")]
    public void Only_a_release_for_an_error_ends_what_is_never_releasable(string because, string expected)
    {
        var record = Record()
            .Release(Number)
            .Row("remedies", """{"item":"IT-1","what":"sewn anew","doneBy":"the maker","doneOn":"2026-03-01","evidence":"invoice"}""");
        record["releases"]![0]!["because"] = because;

        Assert.Equal(expected, Short(Decided.From(record, Past() with { NeverReleasable = true })));
    }

    [Theory]
    [InlineData("2025-11-20", "fit ")]
    [InlineData("2025-11-21", "withdraw W10")]
    public void A_release_may_name_the_day_of_the_withdrawal(string day, string expected)
    {
        var record = Record().Release(null);
        record["releases"]![0]!["withdrawnOn"] = day;

        Assert.Equal(expected, Short(Decided.From(record, Past())));
    }

    [Theory]
    [InlineData(".")]
    [InlineData("ok")]
    [InlineData("checked")]
    [InlineData("a b c d")]
    public void Grounds_that_nobody_can_follow_do_not_count(string grounds)
    {
        var record = Record().Release(Number);
        record["releases"]![0]!["grounds"] = grounds;

        Assert.Equal("withdraw W10", Short(Decided.From(record, Past())));
    }

    /// <summary>An examination cannot depend on a release of a later day.</summary>
    [Theory]
    [InlineData("2026-05-11", "fit ")]
    [InlineData("2026-05-12", "withdraw W10")]
    public void A_release_after_the_examination_comes_too_late_for_it(string on, string expected) =>
        Assert.Equal(expected, Short(Decided.From(Record().Release(Number, on: on), Past())));

    [Fact]
    public void The_examiners_own_earlier_withdrawal_is_open_until_released()
    {
        var record = Record().Earlier("sling", "2026-02-10", e => e["conclusion"] = "withdraw");

        Assert.Equal("withdraw W10", Short(Decided.From(record)));
        Assert.Equal("fit ", Short(Decided.From(record.Copy().Release(null))));
    }

    [Theory]
    [InlineData("now", null, false)]
    [InlineData("later", null, false)]
    [InlineData("later", "2026-02-10", false)]
    [InlineData("later", "2026-08-01", true)]
    public void An_earlier_danger_is_open_until_released(string danger, string? on, bool imminent)
    {
        var record = Record()
            .Earlier("sling", "2026-02-10", e => e["defects"] = new JsonArray(
                    new JsonObject
                    {
                        ["criterion"] = "cut",
                        ["part"] = "eye",
                        ["description"] = "cut",
                        ["danger"] = danger,
                        ["becomesDangerOn"] = on ?? "",
                        ["remedy"] = "destroy",
                        ["imminentRisk"] = imminent,
                    }
                ));

        Assert.Equal("withdraw W10", Short(Decided.From(record)));
    }

    [Theory]
    [MemberData(nameof(NeverReleasable))]
    public void Saw_contact_and_severe_loading_are_never_released(string category, string criterion)
    {
        foreach (var state in new[] { "defect", "doubt" })
        {
            var record = GoodRecord.For(category).Earlier(category, "2026-02-10", e => Plant(e, criterion, state)).Release(null);

            Assert.Equal("withdraw", Decided.From(record).Outcome());
        }
    }

    /// <summary>The day of first use is corrected after the service life had ended: the earlier withdrawal stays.</summary>
    [Fact]
    public void An_expired_life_is_never_released()
    {
        var past = Past("W5") with { NeverReleasable = true };

        Assert.Equal("withdraw W10", Short(Decided.From(Record().Release(Number), past)));
    }

    [Fact]
    public void An_earlier_examination_that_found_nothing_withdraws_nothing()
    {
        Assert.Equal("fit ", Short(Decided.From(Record().Earlier("sling", "2026-02-10"))));
        Assert.Equal("fit ", Short(Decided.From(Record().Earlier("sling", "2026-02-10", e => Plant(e, "cut", "not-examined")))));
    }

    [Fact]
    public void An_item_with_an_open_withdrawal_and_no_examination_now_is_withdrawn()
    {
        var record = Record();
        record["examinations"]!.AsArray().Clear();

        Assert.Equal("withdraw", Decided.From(record, Past()).Outcome());
        record.Earlier("sling", "2026-02-10", e => e["conclusion"] = "withdraw");
        Assert.Equal("withdraw", Decided.From(record).Outcome());
    }

    [Fact]
    public void An_item_examined_only_before_the_visit_is_not_determined()
    {
        var record = Record();
        record["examinations"]!.AsArray().Clear();

        Assert.Equal("undetermined", Decided.From(record.Earlier("sling", "2026-02-10")).Outcome());
    }

    private static JsonObject Record() => GoodRecord.For("sling");

    private static void Plant(JsonObject examination, string criterion, string state)
    {
        var observation = examination["observations"]!
            .AsArray()
            .First(o => string.Equals((string?)o!["criterion"], criterion, StringComparison.Ordinal))!;
        observation["state"] = state;
        observation["note"] = "seen";
        if (state is "defect" or "doubt")
            examination["conclusion"] = "withdraw";
    }

    private static PastWithdrawal Past(string code = "W2") =>
        new(GoodRecord.Id, Number, new LocalDate(2025, 11, 20), [code], NeverReleasable: false);

    private static string Short(Decided decided) => $"{decided.Outcome()} {decided.Codes('W')}";
}
