using System.Text.Json.Nodes;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>The last day of service by every limit recorded, alone and together.</summary>
public sealed class EndOfServiceTests
{
    /// <summary>Members of the item and of the limits, and the last day; every limit is in whole calendar years.</summary>
    [Theory]
    [InlineData("firstUsed=2024-05-20", "maxUseYears=6", "2030-05-20")]
    [InlineData("firstUsed=2024-05", "maxUseYears=6", "2030-05-01")]
    [InlineData("firstUsed=2024", "maxUseYears=6", "2030-01-01")]
    [InlineData("firstUsed=2024-02-29", "maxUseYears=6", "2030-02-28")]
    [InlineData("firstUsed=2024-02-29", "maxUseYears=4", "2028-02-29")]
    [InlineData("firstUsed=", "maxUseYears=6", "2030-01-10")]
    [InlineData("firstUsed= neverUsed=false", "maxUseYears=6", "2030-01-10")]
    [InlineData("firstUsed=2024-05-20", "maxAgeYears=12", "2036-01-10")]
    [InlineData("firstUsed=2024-05-20 manufactured=2024-01", "maxAgeYears=12", "2036-01-01")]
    [InlineData("firstUsed=2024-05-20 manufactured=2024", "maxAgeYears=12", "2036-01-01")]
    [InlineData("firstUsed= manufactured=2024", "maxUseYears=6", "2030-01-01")]
    [InlineData("firstUsed=2024-05-20", "maxUseYears=6 maxAgeYears=12", "2030-05-20")]
    [InlineData("firstUsed=2024-05-20", "maxUseYears=12 maxAgeYears=6", "2030-01-10")]
    [InlineData("firstUsed=2024-05-20", "maxUseYears=6 maxAgeYears=12 maxStorageYears=2", "2030-05-20")]
    [InlineData("firstUsed=2024-05-20 obsoleteOn=2029-01-31", "maxUseYears=6 maxAgeYears=12", "2029-01-31")]
    [InlineData("firstUsed=2024-05-20 obsoleteOn=2033-01-31", "maxUseYears=6 maxAgeYears=12", "2030-05-20")]
    [InlineData("firstUsed=2024-05-20 obsoleteOn=2029-03", "maxUseYears=6", "2029-03-01")]
    [InlineData("firstUsed=2024-05-20 obsoleteOn=2029", "maxUseYears=6", "2029-01-01")]
    [InlineData("firstUsed=2024-05-20 obsoleteOn=2029-01-31", "", "2029-01-31")]
    [InlineData("firstUsed=2024-05-20 obsoleteOn=2029-01-31", "noLimit=true", "2029-01-31")]
    [InlineData("firstUsed=2024-05-20", "noLimit=true", null)]
    [InlineData("firstUsed= neverUsed=true manufactured=2025-01-10", "maxUseYears=6 maxStorageYears=2", "2027-01-10")]
    [InlineData("firstUsed= neverUsed=true manufactured=2025-01-10", "maxUseYears=6 maxStorageYears=9 maxAgeYears=3", "2028-01-10")]
    [InlineData("firstUsed= neverUsed=true manufactured=2025-01", "maxStorageYears=2", "2027-01-01")]
    [InlineData("firstUsed= neverUsed=true manufactured=2025-01-10 obsoleteOn=2026-12-31", "maxStorageYears=2", "2026-12-31")]
    public void The_earliest_limit_holds(string item, string limits, string? end)
    {
        var record = GoodRecord.For("sling");
        record.Item().Without("purchased", "lastExamined", "declaration").With("manufactured", "2024-01-10");
        record.Limits().Without("maxUseYears", "maxStorageYears", "maxAgeYears");
        Set(record.Item(), item);
        Set(record.Limits(), limits);
        var decided = Decided.From(record);

        Assert.Equal(("fit", end), (decided.Outcome(), decided.EndOfService()));
    }

    [Theory]
    [InlineData("2026-05-10", "withdraw", null)]
    [InlineData("2026-05-11", "fit-until", "2026-05-11")]
    [InlineData("2026-11-10", "fit-until", "2026-11-10")]
    [InlineData("2026-11-11", "fit", null)]
    public void An_obsolescence_date_and_the_examiners_own_end_of_service(string day, string outcome, string? until)
    {
        var printed = GoodRecord.For("sling");
        printed.Item()["obsoleteOn"] = day;
        Assert.Equal((outcome, until), Asked(printed));

        var own = GoodRecord.For("sling");
        own.Limits().Without("maxUseYears", "maxStorageYears", "maxAgeYears")["unobtainable"] =
            new JsonObject { ["sought"] = "asked twice", ["useUntil"] = day };
        Assert.Equal((outcome, until), Asked(own));
    }

    [Theory]
    [InlineData("2026-05", "withdraw")]
    [InlineData("2026", "withdraw")]
    [InlineData("2026-06", "fit-until")]
    public void A_month_or_year_of_obsolescence_counts_from_its_first_day(string printed, string outcome)
    {
        var record = GoodRecord.For("sling");
        record.Item()["obsoleteOn"] = printed;

        Assert.Equal(outcome, Decided.From(record).Outcome());
    }

    /// <summary>The worst day: made on the first of its days, taken into use on the last.</summary>
    [Theory]
    [InlineData("2024-02-01", "2026-02-01", "fit")]
    [InlineData("2024-02", "2026-02-01", "fit")]
    [InlineData("2024-02", "2026-02-02", "withdraw")]
    [InlineData("2024-02", "2026-02", "withdraw")]
    [InlineData("2024-02", "2026-01", "fit")]
    [InlineData("2024", "2026-01-01", "fit")]
    [InlineData("2024", "2026-01-02", "withdraw")]
    [InlineData("2024", "2026", "withdraw")]
    [InlineData("2024", "2025", "fit")]
    public void Kept_in_store_too_long_before_first_use(string manufactured, string firstUsed, string outcome)
    {
        var record = GoodRecord.For("sling");
        record.Item().Without("purchased", "lastExamined", "declaration")
            .With("manufactured", manufactured).With("firstUsed", firstUsed);
        var decided = Decided.From(record);

        Assert.Equal((outcome, outcome is "withdraw" ? "W5" : ""), (decided.Outcome(), decided.Codes('W')));
    }

    [Theory]
    [InlineData("2024-05-10", "withdraw")]
    [InlineData("2024-05-11", "fit-until")]
    [InlineData("2024-11-11", "fit")]
    public void Never_used_kit_keeps_to_its_time_in_store(string manufactured, string outcome)
    {
        var record = GoodRecord.For("sling");
        record.Item().Without("purchased", "lastExamined", "declaration", "firstUsed")
            .With("manufactured", manufactured).With("neverUsed", true);

        Assert.Equal(outcome, Decided.From(record).Outcome());
    }

    [Fact]
    public void No_limit_removes_time_limits_only()
    {
        var record = GoodRecord.For("rope-bridge").Answer("heat", "doubt");
        record.Limits().Without("maxUseYears", "maxStorageYears", "maxAgeYears")["noLimit"] = true;
        Assert.Equal("withdraw", Decided.From(record).Outcome());

        record = GoodRecord.For("rope-bridge").Station(50, 8.0m, 8.0m);
        record.Limits().Without("maxUseYears", "maxStorageYears", "maxAgeYears").With("noLimit", true)
            .With("nominalDiameterMm", 11.0m).With("diameterTolerancePercent", 10);
        Assert.Equal("W7", Decided.From(record).Codes('W'));
    }

    [Theory]
    [InlineData("maxUseYears")]
    [InlineData("maxAgeYears")]
    public void No_limit_beside_a_limit_that_has_run_out_never_comes_out_fit(string limit)
    {
        var record = GoodRecord.For("sling");
        record.Limits().Without("maxUseYears", "maxStorageYears", "maxAgeYears").With("noLimit", true).With(limit, 1);

        Assert.NotInRange(Decided.From(record).Rank(), 0, 1);
    }

    /// <summary>The entry for the part number is the closer one, whether kinder or stricter.</summary>
    [Theory]
    [InlineData(1, 6, "fit")]
    [InlineData(6, 1, "withdraw")]
    public void The_most_specific_limits_win(int general, int particular, string outcome)
    {
        foreach (var first in new[] { true, false })
        {
            var record = GoodRecord.For("sling");
            record.Limits()["maxUseYears"] = particular;
            var other = record.Limits().Copy().Without("partNumber").With("maxUseYears", general);
            record["limits"]!.AsArray().Insert(first ? 0 : 1, other);

            Assert.Equal(outcome, Decided.From(record).Outcome());
        }
    }

    [Fact]
    public void Two_entries_equally_specific_are_an_error()
    {
        var record = GoodRecord.For("sling");
        record["limits"]!.AsArray().Add(record.Limits().Copy().With("maxUseYears", 5));

        Assert.Equal("undetermined", Decided.From(record).Outcome());
        Assert.True(Decided.From(record).Finds("CON009"));
    }

    private static (string, string?) Asked(JsonObject record)
    {
        var decided = Decided.From(record);
        return (decided.Outcome(), decided.Until());
    }

    private static void Set(JsonObject row, string members)
    {
        foreach (var pair in members.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(m => m.Split('=')))
        {
            row[pair[0]] = pair[1] switch
            {
                "true" => true,
                "false" => false,
                { Length: 1 or 2 } years => int.Parse(years, System.Globalization.CultureInfo.InvariantCulture),
                var text => text,
            };
        }
    }
}
