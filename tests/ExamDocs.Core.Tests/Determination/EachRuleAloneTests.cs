using System.Text.Json.Nodes;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>Each outcome rule alone: what is planted in the good record gives exactly its outcome and its code.</summary>
public sealed class EachRuleAloneTests
{
    private static readonly PastWithdrawal Open = new(
        GoodRecord.Id,
        "Q-2025-000007",
        new LocalDate(2025, 11, 20),
        ["W1"],
        NeverReleasable: false
    );

    private static readonly Dictionary<string, Func<JsonObject>> Withdrawn = new(StringComparer.Ordinal)
    {
        ["W1 decisive defect, dated"] = () => Bridge().Answer("cover-cut", "defect").Later("cover-cut", "2026-08-01"),
        ["W2 decisive doubt"] = () => Bridge().Answer("heat", "doubt"),
        ["W2 judged doubt"] = () => Bridge().Answer("marking", "doubt"),
        ["W2 advisory doubt"] = () => Bridge().Answer("pinch", "doubt"),
        ["W3 judged defect without an entry"] = () => Bridge().Answer("marking", "defect"),
        ["W3 advisory defect without an entry"] = () => Bridge().Answer("pinch", "defect"),
        ["W3 judged defect, an entry for another criterion"] = () =>
            Bridge().Answer("marking", "defect").Later("cover-abrasion", "2026-08-01"),
        ["W3 judged defect, a second one without an entry"] = () =>
            Bridge().Answer("marking", "defect").Later("marking", "2026-08-01").Answer("cover-abrasion", "defect"),
        ["W3 judged defect, no remedy"] = () => WithoutRemedy(Bridge().Answer("marking", "defect").Later("marking", "2026-08-01")),
        ["W4 a danger now"] = () => Bridge().Now("marking"),
        ["W4 imminent risk"] = () => Imminent(Bridge().Later("marking", "2026-08-01")),
        ["W4 later with no date"] = () => Bridge().Later("marking", null),
        ["W5 past its use life"] = () => Edit(Bridge(), r => Used(r, "2019-01-01", "2019-02-01", "2020-05-10")),
        ["W5 stored too long"] = () => Edit(Bridge(), r => Used(r, "2023-02-01", "2023-03-01", "2025-02-02")),
        ["W6 the examiner withdraws"] = () => Bridge().Conclude("withdraw"),
        ["W7 too thick"] = () => Measured(Bridge(), 12.11m),
        ["W7 too thin"] = () => Measured(Bridge(), 9.89m),
    };

    private static readonly Dictionary<string, Func<JsonObject>> Undetermined = new(StringComparer.Ordinal)
    {
        ["U0"] = () => Edit(Bridge(), r => r["examinations"] = new JsonArray()),
        ["U1"] = () => Bridge().Answer("heat", "not-examined"),
        ["U3"] = () => Edit(Bridge(), r => r.Item().Remove("description")),
        ["U4 age"] = () => Edit(Bridge(), r =>
            {
                r.Item().Without("manufactured");
                r.Limits().Without("maxUseYears", "maxStorageYears");
            }),
        ["U4 storage"] = () => Edit(Bridge(), r =>
            {
                r.Item().Without("manufactured");
                r.Limits().Without("maxAgeYears");
            }),
        ["U4 use"] = () => Edit(Bridge(), r =>
            {
                r.Item().Without("manufactured", "firstUsed");
                r.Limits().Without("maxAgeYears", "maxStorageYears");
            }),
        ["U5"] = () => Edit(Bridge(), r => r.Limits().Without("maxUseYears", "maxStorageYears", "maxAgeYears")),
        ["U5 no limits at all"] = () => Edit(Bridge(), r => r.Remove("limits")),
    };

    public static TheoryData<string> WithdrawnCases => [.. Withdrawn.Keys];

    public static TheoryData<string> UndeterminedCases => [.. Undetermined.Keys];

    [Theory]
    [MemberData(nameof(WithdrawnCases))]
    public void A_planted_reason_to_withdraw_is_the_only_reason(string name)
    {
        var decided = Decided.From(Withdrawn[name]());

        Assert.Equal("withdraw", decided.Outcome());
        Assert.Equal(Code(name), decided.Codes('W'));
        Assert.Null(decided.Until());
        Assert.Null(decided.Next());
    }

    [Theory]
    [MemberData(nameof(WithdrawnCases))]
    public void Agreeing_with_the_rule_adds_the_examiners_own_reason_and_nothing_else(string name)
    {
        var decided = Decided.From(Withdrawn[name]().Conclude("withdraw"));

        Assert.Equal("withdraw", decided.Outcome());
        Assert.Equal(
            Code(name) is "W6" ? "W6"
                : Code(name) is "W7" ? "W6 W7"
                : $"{Code(name)} W6",
            decided.Codes('W')
        );
        Assert.False(decided.Finds("CON001"));
    }

    [Theory]
    [MemberData(nameof(WithdrawnCases))]
    public void Concluding_fit_against_a_reason_to_withdraw_is_an_error(string name)
    {
        var decided = Decided.From(Withdrawn[name]());

        Assert.Equal(Code(name) is not "W6", decided.Finds("CON001"));
    }

    [Theory]
    [MemberData(nameof(UndeterminedCases))]
    public void A_planted_reason_not_to_determine_is_the_only_reason(string name)
    {
        var decided = Decided.From(Undetermined[name]());

        Assert.Equal("undetermined", decided.Outcome());
        Assert.Equal(Code(name), decided.Codes());
        Assert.Null(decided.Next());
    }

    [Fact]
    public void An_item_without_examination_is_a_warning_not_an_error() => Assert.Empty(Decided.From(Undetermined["U0"]()).Errors);

    [Theory]
    [InlineData("connector")]
    [InlineData("pulley")]
    public void Kit_of_metal_without_a_time_limit_stays_fit(string category)
    {
        var record = GoodRecord.For(category);
        record.Limits().Without("maxUseYears", "maxStorageYears", "maxAgeYears");

        Assert.Equal($"fit  {GoodRecord.NextBy} []", Decided.From(record).Line());
    }

    [Theory]
    [InlineData("noLimit")]
    [InlineData("unobtainable")]
    [InlineData("obsoleteOn")]
    public void Textile_kit_needs_no_duration_where_something_else_says_how_long(string instead)
    {
        var record = Bridge();
        var limits = record.Limits().Without("maxUseYears", "maxStorageYears", "maxAgeYears");
        if (instead is "noLimit")
            limits["noLimit"] = true;
        else if (instead is "unobtainable")
            limits["unobtainable"] = new JsonObject { ["sought"] = "asked the maker twice", ["useUntil"] = "2028-05-01" };
        else
            record.Item()["obsoleteOn"] = "2034-02-01";

        Assert.Equal($"fit  {GoodRecord.NextBy} []", Decided.From(record).Line());
    }

    [Fact]
    public void A_state_that_the_criterion_does_not_allow_is_undetermined()
    {
        var decided = Decided.From(Bridge().Answer("cover-cut", "noted"));

        Assert.Equal("undetermined", decided.Outcome());
        Assert.Contains("U2", decided.Codes(), StringComparison.Ordinal);
        Assert.Equal("", decided.Codes('W'));
    }

    [Fact]
    public void An_open_withdrawal_holds()
    {
        var decided = Decided.From(Bridge(), Open);

        Assert.Equal(("withdraw", "W10"), (decided.Outcome(), decided.Codes('W')));
    }

    private static JsonObject Bridge() => GoodRecord.For("rope-bridge");

    private static string Code(string name) => name.Split(' ')[0];

    private static JsonObject Edit(JsonObject record, Action<JsonObject> edit)
    {
        edit(record);
        return record;
    }

    private static JsonObject WithoutRemedy(JsonObject record) => Edit(record, r => r.Exam()["defects"]![0]!.AsObject().Remove("remedy"));

    private static JsonObject Imminent(JsonObject record) => Edit(record, r => r.Exam()["defects"]![0]!["imminentRisk"] = true);

    private static void Used(JsonObject record, string manufactured, string purchased, string firstUsed) =>
        record.Item().With("manufactured", manufactured).With("purchased", purchased).With("firstUsed", firstUsed);

    private static JsonObject Measured(JsonObject record, decimal mean)
    {
        record.Limits().With("nominalDiameterMm", 11.0m).With("diameterTolerancePercent", 10);
        return record.Station(50, mean, mean);
    }
}
