using System.Text.Json.Nodes;
using ExamDocs.Core.Tests.Determination;
using NodaTime.Text;

namespace ExamDocs.Core.Tests.Cases;

/// <summary>The latest date for the next thorough examination.</summary>
public sealed class NextExaminationTests
{
    /// <summary>SI 1998/2307 reg 9(3)(a): lifts persons 6 months, accessory 6, other 12; not stated counts as 6.</summary>
    [Theory]
    [InlineData("lifts-persons", "six-month", "2026-11-11")]
    [InlineData("accessory", "six-month", "2026-11-11")]
    [InlineData("other", "twelve-month", "2027-05-11")]
    [InlineData("", "six-month", "2026-11-11")]
    [InlineData(null, "six-month", "2026-11-11")]
    public void By_purpose(string? purpose, string basis, string next)
    {
        var record = GoodRecord.For("pulley");
        record.Item()["purpose"] = purpose;
        if (purpose is null)
            record.Item().Remove("purpose");
        record.Exam()["basis"] = basis;

        Assert.Equal(("fit", next), Asked(record));
    }

    [Theory]
    [InlineData("lifts-persons")]
    [InlineData("accessory")]
    [InlineData(null)]
    public void A_twelve_month_basis_never_lengthens_what_the_purpose_gives(string? purpose)
    {
        var record = GoodRecord.For("pulley");
        record.Item()["purpose"] = purpose ?? "";
        record.Exam()["basis"] = "twelve-month";
        var next = Decided.From(record).Next();

        Assert.True(next is null or GoodRecord.NextBy, next);
    }

    [Theory]
    [InlineData("lifts-persons", 3, "2026-08-11")]
    [InlineData("lifts-persons", 8, "2026-11-11")]
    [InlineData("other", 3, "2026-08-11")]
    [InlineData("other", 8, "2027-01-11")]
    [InlineData("other", 18, "2027-05-11")]
    public void By_scheme_but_never_longer_than_the_purpose_gives(string purpose, int months, string next)
    {
        var record = GoodRecord.For("pulley");
        record.Item()["purpose"] = purpose;
        record
            .Exam()
            .With("basis", "scheme")
            .With(
                "scheme",
                new JsonObject
                {
                    ["reference"] = "S-1",
                    ["author"] = "Odile Farrowby",
                    ["months"] = months,
                }
            );

        Assert.Equal(next, Decided.From(record).Next() ?? next);
        if (months < 12)
            Assert.Equal(("fit", next), Asked(record));
    }

    [Theory]
    [InlineData("first-use")]
    [InlineData("installation")]
    [InlineData("exceptional")]
    public void Other_bases_count_by_purpose(string basis)
    {
        var record = GoodRecord.For("pulley");
        record.Exam()["basis"] = basis;
        if (basis is "exceptional")
            record.Exam()["event"] = new JsonObject { ["what"] = "a branch fell on it", ["on"] = "2026-05-02" };

        Assert.Equal(("fit", GoodRecord.NextBy), Asked(record));
    }

    [Theory]
    [InlineData(3, "2026-08-11")]
    [InlineData(6, "2026-11-11")]
    [InlineData(12, "2026-11-11")]
    public void The_makers_interval_only_shortens(int months, string next)
    {
        var record = GoodRecord.For("pulley");
        record.Limits()["intervalMonths"] = months;

        Assert.Equal(("fit", next), Asked(record));
    }

    [Theory]
    [InlineData("2026-08-11", "2026-08-11")]
    [InlineData("2026-11-11", "2026-11-11")]
    [InlineData("2026-12-31", "2026-11-11")]
    public void The_examiners_date_only_shortens(string nextBy, string next)
    {
        var record = GoodRecord.For("pulley");
        record.Exam()["nextBy"] = nextBy;

        Assert.Equal(("fit", next), Asked(record));
    }

    [Theory]
    [InlineData("2026-05-11")]
    [InlineData("2026-05-10")]
    public void An_examiners_date_not_after_the_examination_is_an_error(string nextBy)
    {
        var record = GoodRecord.For("pulley");
        record.Exam()["nextBy"] = nextBy;

        Assert.Equal(("undetermined", null), Asked(record));
    }

    [Fact]
    public void The_earliest_of_all_holds()
    {
        var record = GoodRecord.For("pulley");
        record.Limits()["intervalMonths"] = 4;
        record.Exam()["nextBy"] = "2026-09-10";
        Assert.Equal("2026-09-10", Decided.From(record).Next());

        record.Exam()["nextBy"] = "2026-09-12";
        Assert.Equal("2026-09-11", Decided.From(record).Next());
    }

    /// <summary>Six months under gb-wah (HSE press release E186:02).</summary>
    [Theory]
    [InlineData("helmet")]
    [InlineData("energy-absorber")]
    public void Fall_arrest_only_kit_and_helmets_under_gb_wah(string category)
    {
        var record = GoodRecord.For(category);
        record.Item()["purpose"] = "fall-arrest-only";
        record.Exam()["regime"] = "gb-wah";

        Assert.Equal(("fit", GoodRecord.NextBy), Asked(record));
    }

    [Fact]
    public void There_is_none_for_the_withdrawn_and_the_undetermined()
    {
        Assert.Null(Decided.From(GoodRecord.For("pulley").Answer("cracks", "doubt")).Next());
        Assert.Null(Decided.From(GoodRecord.For("pulley").Answer("cracks", "not-examined")).Next());
    }

    [Fact]
    public void Fit_until_keeps_its_next_date_apart_from_its_last_day()
    {
        var decided = Decided.From(GoodRecord.For("pulley").Later("", "2026-07-01"));

        Assert.Equal(("2026-06-30", GoodRecord.NextBy), (decided.Until(), decided.Next()));
    }

    /// <summary>
    /// Corresponding date, else the last day of the month, no rolling: Dodds v Walker [1981] 1 WLR 1027; Riley v
    /// Eurostile (23 March 1983); the rest computed by that rule.
    /// </summary>
    [Theory]
    [InlineData("1978-09-30", 4, "1979-01-30")]
    [InlineData("1983-03-23", 2, "1983-05-23")]
    [InlineData("2025-01-15", 6, "2025-07-15")]
    [InlineData("2025-08-31", 6, "2026-02-28")]
    [InlineData("2023-08-31", 6, "2024-02-29")]
    [InlineData("2025-08-30", 6, "2026-02-28")]
    [InlineData("2025-08-29", 6, "2026-02-28")]
    [InlineData("2025-03-31", 6, "2025-09-30")]
    [InlineData("2025-12-31", 6, "2026-06-30")]
    [InlineData("2025-02-28", 6, "2025-08-28")]
    [InlineData("2024-02-29", 6, "2024-08-29")]
    [InlineData("2024-02-29", 12, "2025-02-28")]
    [InlineData("2023-02-28", 12, "2024-02-28")]
    [InlineData("2025-11-30", 3, "2026-02-28")]
    [InlineData("2024-01-31", 1, "2024-02-29")]
    [InlineData("2025-01-31", 1, "2025-02-28")]
    [InlineData("2099-08-31", 6, "2100-02-28")]
    public void By_the_corresponding_date(string examined, int months, string next)
    {
        var record = GoodRecord.For("pulley");
        record.Item().Without("manufactured", "purchased", "firstUsed", "lastExamined", "declaration").With("purpose", "other");
        record.Limits().Without("maxUseYears", "maxStorageYears", "maxAgeYears").With("noLimit", true).With("intervalMonths", months);
        record["visit"]!.AsObject().With("examinedOn", examined).With("reportedOn", examined);
        record.Exam().With("examinedOn", examined).With("basis", "twelve-month");
        var asOf = LocalDatePattern.Iso.Parse(examined).Value;

        var decided = Decided.AsOfDay(record.ToJsonString(), asOf);
        Assert.Equal(("fit", next), (decided.Outcome(), decided.Next()));
    }

    private static (string, string?) Asked(JsonObject record)
    {
        var decided = Decided.From(record);
        return (decided.Outcome(), decided.Next());
    }
}
