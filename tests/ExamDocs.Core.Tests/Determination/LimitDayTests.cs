using System.Globalization;
using System.Text.Json.Nodes;
using ExamDocs.Core.Determination;
using NodaTime;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>The day before a limit, the day itself, the day after; the last printed digit below, on and above.</summary>
public sealed class LimitDayTests
{
    /// <summary>SI 1998/2307 reg 10(3)(a): a defect that is a danger forbids use until it is rectified.</summary>
    [Fact]
    public void W4_for_a_danger_that_is_there_now()
    {
        var record = GoodRecord.For("harness").Answer("abrasion", "defect").Later("abrasion", "2026-12-01");
        Assert.Equal("fit-until", Decided.From(record).Outcome());
        record["examinations"]![0]!["defects"]![0]!["danger"] = "now";
        var decided = Decided.From(record);
        Assert.Equal("withdraw", decided.Outcome());
        Assert.Contains("W4", decided.Codes().Split(' '), StringComparer.Ordinal);
    }

    /// <summary>
    /// SI 1998/2307 reg 10(3)(b): not to be used after the stated time until rectified. We are stricter than "after": the day on which it
    /// could become a danger is no day of use; the day before is the last.
    /// </summary>
    [Theory]
    [InlineData("2026-05-10", "withdraw", "W4", null)]
    [InlineData("2026-05-11", "withdraw", "W4", null)]
    [InlineData("2026-05-12", "fit-until", "D1", "2026-05-11")]
    [InlineData("2026-11-12", "fit-until", "D1", "2026-11-11")]
    [InlineData("2027-03-01", "fit-until", "D1", "2027-02-28")]
    public void W4_and_D1_by_the_day_it_becomes_a_danger(string on, string outcome, string code, string? until)
    {
        foreach (var observed in new[] { true, false })
        {
            var record = GoodRecord.For("harness").Later(observed ? "abrasion" : "", on);
            if (observed)
                record.Answer("abrasion", "defect");
            var decided = Decided.From(record);

            Assert.Equal((outcome, until), (decided.Outcome(), decided.Until()));
            Assert.Contains(code, decided.Codes().Split(' '), StringComparer.Ordinal);
        }
    }

    [Fact]
    public void D1_takes_the_earliest_of_several()
    {
        var record = GoodRecord
            .For("harness")
            .Answer("abrasion", "defect")
            .Later("abrasion", "2026-09-01")
            .Answer("fading", "defect")
            .Later("fading", "2026-08-01")
            .Later("fading", "2026-10-01");

        Assert.Equal("2026-07-31", Decided.From(record).Until());
    }

    /// <summary>Six years of use; the last day of a limit is inside it; the next examination is due on 11 November.</summary>
    [Theory]
    [InlineData("2020-05-10", "withdraw", "W5", null)]
    [InlineData("2020-05-11", "fit-until", "D2", "2026-05-11")]
    [InlineData("2020-05-12", "fit-until", "D2", "2026-05-12")]
    [InlineData("2020-11-10", "fit-until", "D2", "2026-11-10")]
    [InlineData("2020-11-11", "fit", "", null)]
    [InlineData("2020-11-12", "fit", "", null)]
    public void W5_and_D2_by_the_end_of_service(string firstUsed, string outcome, string codes, string? until)
    {
        var record = GoodRecord.For("sling");
        record.Item().With("manufactured", "2019-05-20").With("purchased", "2020-04-15").With("firstUsed", firstUsed);
        var decided = Decided.From(record);

        Assert.Equal((outcome, until), (decided.Outcome(), decided.Until()));
        Assert.Equal(codes, codes.StartsWith('W') ? decided.Codes('W') : decided.Codes());
    }

    /// <summary>Two years in store at most before first use, the last day included.</summary>
    [Theory]
    [InlineData("2026-01-31", "fit")]
    [InlineData("2026-02-01", "fit")]
    [InlineData("2026-02-02", "withdraw")]
    public void W5_by_the_day_it_left_the_store(string firstUsed, string outcome)
    {
        var record = GoodRecord.For("sling");
        record.Item().With("firstUsed", firstUsed).Without("lastExamined");
        var decided = Decided.From(record);

        Assert.Equal(outcome, decided.Outcome());
        Assert.Equal(outcome is "withdraw" ? "W5" : "", decided.Codes('W'));
    }

    /// <summary>Nominal 11.0 mm, 10 per cent to either side: from 9.9 to 12.1 mm, both inside.</summary>
    [Theory]
    [InlineData("9.89 9.89", "withdraw")]
    [InlineData("9.90 9.90", "fit")]
    [InlineData("9.91 9.91", "fit")]
    [InlineData("9.9 9.89", "withdraw")]
    [InlineData("9.8 10.0", "fit")]
    [InlineData("9.8 9.9", "withdraw")]
    [InlineData("9.9 9.9 9.8", "withdraw")]
    [InlineData("9.89999 9.9", "withdraw")]
    [InlineData("12.09 12.09", "fit")]
    [InlineData("12.10 12.10", "fit")]
    [InlineData("12.11 12.11", "withdraw")]
    [InlineData("12.1 12.11", "withdraw")]
    [InlineData("12.0 12.2", "fit")]
    public void W7_by_the_last_printed_digit(string readings, string outcome)
    {
        var record = GoodRecord.For("rope-bridge");
        record.Limits().With("nominalDiameterMm", 11.0m).With("diameterTolerancePercent", 10);
        record.Station(50, 11.0m, 11.0m).Station(150, Numbers(readings)).Station(250, 11.0m, 11.0m);
        var decided = Decided.From(record);

        Assert.Equal(outcome, decided.Outcome());
        Assert.Equal(outcome is "withdraw" ? "W7" : "", decided.Codes('W'));
    }

    /// <summary>Nominal 11.7 mm, 7.5 per cent: from 10.8225 to 12.5775 mm, calculated without rounding.</summary>
    [Theory]
    [InlineData("10.8224", "withdraw")]
    [InlineData("10.8225", "fit")]
    [InlineData("12.5775", "fit")]
    [InlineData("12.5776", "withdraw")]
    public void W7_with_a_tolerance_that_has_many_digits(string reading, string outcome)
    {
        var record = GoodRecord.For("rope-bridge");
        record.Limits().With("nominalDiameterMm", 11.7m).With("diameterTolerancePercent", 7.5m);
        record.Station(50, Numbers(reading)[0], Numbers(reading)[0]);

        Assert.Equal(outcome, Decided.From(record).Outcome());
    }

    [Fact]
    public void Without_a_tolerance_a_diameter_withdraws_nothing()
    {
        var record = GoodRecord.For("rope-bridge");
        record.Limits().With("nominalDiameterMm", 11.0m);
        record.Station(50, 8.0m, 8.0m);
        var decided = Decided.From(record);

        Assert.Equal("fit", decided.Outcome());
        Assert.True(decided.Finds("MEA004"));
    }

    private static decimal[] Numbers(string text) => [.. text.Split(' ').Select(n => decimal.Parse(n, CultureInfo.InvariantCulture))];
}
