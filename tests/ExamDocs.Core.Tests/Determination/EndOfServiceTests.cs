using System.Text.Json.Nodes;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>The last day of service, by each limit alone and by several together.</summary>
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
        own.Limits().Without("maxUseYears", "maxStorageYears", "maxAgeYears")["unobtainable"] = new JsonObject
        {
            ["sought"] = "asked twice",
            ["useUntil"] = day,
        };
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

    /// <summary>The worst days count: the first of the manufacture date, the last of the date of first use.</summary>
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
        record.Item().Without("purchased", "lastExamined", "declaration").With("manufactured", manufactured).With("firstUsed", firstUsed);
        var decided = Decided.From(record);

        Assert.Equal((outcome, outcome is "withdraw" ? "W5" : ""), (decided.Outcome(), decided.Codes('W')));
    }

    [Theory]
    [InlineData("2024-05-10", "withdraw")]
    [InlineData("2024-05-11", "fit-until")]
    [InlineData("2024-11-11", "fit")]
    public void The_storage_limit_ends_the_service_of_kit_never_used(string manufactured, string outcome)
    {
        var record = GoodRecord.For("sling");
        record
            .Item()
            .Without("purchased", "lastExamined", "declaration", "firstUsed")
            .With("manufactured", manufactured)
            .With("neverUsed", true);

        Assert.Equal(outcome, Decided.From(record).Outcome());
    }

    [Fact]
    public void No_limit_removes_time_limits_only()
    {
        var record = GoodRecord.For("rope-bridge").Answer("heat", "doubt");
        record.Limits().Without("maxUseYears", "maxStorageYears", "maxAgeYears")["noLimit"] = true;
        Assert.Equal("withdraw", Decided.From(record).Outcome());

        record = GoodRecord.For("rope-bridge").Station(50, 8.0m, 8.0m);
        record
            .Limits()
            .Without("maxUseYears", "maxStorageYears", "maxAgeYears")
            .With("noLimit", true)
            .With("nominalDiameterMm", 11.0m)
            .With("diameterTolerancePercent", 10);
        Assert.Equal("W7", Decided.From(record).Codes('W'));
    }

    [Theory]
    [InlineData("maxUseYears")]
    [InlineData("maxAgeYears")]
    public void No_limit_beside_an_expired_limit_never_yields_fit(string limit)
    {
        var record = GoodRecord.For("sling");
        record.Limits().Without("maxUseYears", "maxStorageYears", "maxAgeYears").With("noLimit", true).With(limit, 1);

        Assert.NotInRange(Decided.From(record).Rank(), 0, 1);
    }

    /// <summary>The entry for the part number applies, whether it is kinder or stricter.</summary>
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

    /// <summary>The greatest number of cleanings is inside the limit; without a recorded number the limit cannot be counted.</summary>
    [Theory]
    [InlineData("cleanings=19", "fit", "")]
    [InlineData("cleanings=20", "fit", "")]
    [InlineData("cleanings=21", "withdraw", "W5")]
    [InlineData("cleanings=0", "fit", "")]
    [InlineData("", "undetermined", "U4")]
    public void Cleanings_are_counted(string item, string outcome, string codes)
    {
        var record = GoodRecord.For("sling");
        record.Limits()["maxCleanings"] = 20;
        if (item.Length > 0)
            record.Item()["cleanings"] = int.Parse(item.Split('=')[1], System.Globalization.CultureInfo.InvariantCulture);
        if (outcome is "withdraw")
            record.Exam()["conclusion"] = "withdraw";
        var decided = Decided.From(record);

        Assert.Equal(outcome, decided.Outcome());
        Assert.Equal(outcome is "withdraw" ? "W5 W6" : codes, decided.Codes());
        Assert.Equal(outcome is "withdraw", decided.Item().NeverReleasable);
    }

    /// <summary>Where the maker retires it after any exceptional event, an event on or before the day examined ends it for good.</summary>
    [Theory]
    [InlineData(true, "2026-05-11", true)]
    [InlineData(true, "2026-05-02", true)]
    [InlineData(true, null, true)]
    [InlineData(false, "2026-05-02", false)]
    public void An_exceptional_event_ends_service_where_the_maker_says_so(bool ends, string? on, bool withdrawn)
    {
        var record = GoodRecord.For("sling");
        record.Limits()["eventEndsService"] = ends;
        record.Exam()["basis"] = "exceptional";
        record.Exam()["event"] = new JsonObject { ["what"] = "arrested a fall", ["on"] = on };
        if (withdrawn)
            record.Exam()["conclusion"] = "withdraw";
        var decided = Decided.From(record);

        Assert.Equal(withdrawn ? "withdraw" : "fit", decided.Outcome());
        Assert.Equal(withdrawn, decided.Codes().Contains("W5", StringComparison.Ordinal));
        Assert.Equal(withdrawn, decided.Item().NeverReleasable);
    }

    /// <summary>An event found at an earlier examination is not forgotten at this one.</summary>
    [Fact]
    public void An_event_of_an_earlier_examination_counts_too()
    {
        var record = GoodRecord.For("sling");
        record.Limits()["eventEndsService"] = true;
        var earlier = GoodRecord.Examination(GoodRecord.Id, "sling", "2025-11-20");
        earlier["basis"] = "exceptional";
        earlier["event"] = new JsonObject { ["what"] = "arrested a fall", ["on"] = "2025-11-18" };
        record["examinations"]!.AsArray().Add(earlier);
        record.Exam()["conclusion"] = "withdraw";
        var decided = Decided.From(record);

        Assert.Equal("withdraw", decided.Outcome());
        Assert.Contains("W5", decided.Codes(), StringComparison.Ordinal);
        Assert.Contains("arrested a fall", decided.Item().Reasons.First(r => r.Code is "W5").Text, StringComparison.Ordinal);
    }

    /// <summary>The limit that ends first, in one sentence with its dates and the maker's document, revision and page.</summary>
    [Theory]
    [InlineData(
        "firstUsed=2024-05-20",
        "maxUseYears=6 maxAgeYears=12",
        "End of service 20 May 2030: 6 years in use from first use on 20 May 2024 (Instructions for M-IT-1, revision 2, page "
            + "7); later would be 10 Jan 2036, 12 years from manufacture on 10 Jan 2024 (Instructions for M-IT-1, revision 2, page "
            + "7)"
    )]
    [InlineData(
        "firstUsed=2024-05",
        "maxUseYears=1",
        "End of service 1 May 2025: 1 year in use from first use in May 2024 (Instructions for M-IT-1, revision 2, page 7)"
    )]
    [InlineData(
        "firstUsed=2024-05-20",
        "noLimit=true",
        "The maker states that there is no time limit (Instructions for M-IT-1, revision 2, page 7)"
    )]
    [InlineData(
        "firstUsed= neverUsed=true",
        "maxUseYears=6",
        "Never used: the time in use has not begun (Instructions for M-IT-1, revision 2, page 7)"
    )]
    [InlineData(
        "firstUsed= neverUsed=true manufactured=2025-01-10",
        "maxUseYears=6 maxStorageYears=2",
        "End of service 10 Jan 2027 unless taken into use before: 2 years of storage from manufacture on 10 Jan 2025 "
            + "(Instructions for M-IT-1, revision 2, page 7)"
    )]
    [InlineData("firstUsed=2024-05-20", "", "No time limit of the maker's is recorded")]
    public void The_limit_that_ends_first_is_named_in_one_sentence(string item, string limits, string sentence)
    {
        var record = GoodRecord.For("sling");
        record.Item().Without("purchased", "lastExamined", "declaration").With("manufactured", "2024-01-10");
        record.Limits().Without("maxUseYears", "maxStorageYears", "maxAgeYears");
        Set(record.Item(), item);
        Set(record.Limits(), limits);

        Assert.Equal(sentence, Decided.From(record).Item().ServiceLife.Text);
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
