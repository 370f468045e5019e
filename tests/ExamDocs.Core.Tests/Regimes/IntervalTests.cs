using System.Text.Json.Nodes;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Core.Tests.Determination;
using ExamDocs.Intake.Json;
using NodaTime;

namespace ExamDocs.Core.Tests.Regimes;

/// <summary>
/// The next date that each regime gives kit examined on 11 May 2026, and whether kit is overdue when it is examined the day before
/// the bound, on it and the day after.
/// </summary>
public sealed class IntervalTests
{
    private static readonly LocalDate Examined = new(2026, 5, 11);

    /// <summary>Regime, purpose, recorded use, months, days before the corresponding date.</summary>
    public static TheoryData<string, string?, string?, int, int> Table =>
        new()
        {
            // SI 1998/2307 reg 9(3)(a)(i) and (ii)
            { "gb-loler", "lifts-persons", null, 6, 0 },
            { "gb-loler", "accessory", null, 6, 0 },
            { "gb-loler", "other", null, 12, 0 },
            { "gb-loler", "fall-arrest-only", null, 6, 0 },
            { "gb-loler", null, null, 6, 0 },
            // SR 1999/304 reg 9(3)(a)(i) and (ii)
            { "ni-loler", "lifts-persons", null, 6, 0 },
            { "ni-loler", "accessory", null, 6, 0 },
            { "ni-loler", "other", null, 12, 0 },
            { "ni-loler", null, null, 6, 0 },
            // HSE press release E186:02
            { "gb-wah", "fall-arrest-only", "daily", 6, 0 },
            { "gb-wah", "fall-arrest-only", "Arduous, daily", 3, 0 },
            // EN 365:2004 4.4 (unofficial copy)
            { "eu-en365", "lifts-persons", null, 12, 0 },
            { "eu-en365", null, null, 12, 0 },
            // DGUV Regel 112-199 (unofficial copy), 112-198 (from memory)
            { "de", "lifts-persons", null, 12, 0 },
            // Arrêté of 19 March 1993 art 1: less than twelve months. Arrêté of 1 March 2004 arts 23 and 24
            { "fr", "fall-arrest-only", null, 12, -1 },
            { "fr", "lifts-persons", null, 12, -1 },
            { "fr", "lifts-persons", "hand-powered winch seat", 3, 0 },
            { "fr", "lifts-persons", "power-driven", 6, 0 },
            { "fr", "accessory", null, 12, -1 },
            { "fr", "accessory", "hand-powered", 12, -1 },
            { "fr", null, null, 12, -1 },
            // AS/NZS 1891.4:2009 Table 9.1 (unofficial copy)
            { "au-nz", "fall-arrest-only", null, 6, 0 },
            // California Title 8, twice a year (from memory), shorter than the yearly inspection of ANSI/ASSP Z359.2 (from memory)
            { "us", "fall-arrest-only", null, 6, 0 },
        };

    [Theory]
    [MemberData(nameof(Table))]
    public void The_next_date_is_the_last_day_of_the_interval(string regime, string? purpose, string? use, int months, int days) =>
        Assert.Equal(Examined.PlusMonths(months).PlusDays(days), Next(Record(regime, purpose, use)));

    [Theory]
    [MemberData(nameof(Table))]
    public void Kit_is_overdue_the_day_after_the_last_day_and_not_before(string regime, string? purpose, string? use, int months, int days)
    {
        var last = new LocalDate(2025, 3, 10);
        var due = last.PlusMonths(months).PlusDays(days);
        foreach (var (on, overdue) in new[] { (due.PlusDays(-1), false), (due, false), (due.PlusDays(1), true) })
        {
            var record = Record(regime, purpose, use);
            record["items"]![0]!["lastExamined"] = Iso(last);
            record["visit"]!["examinedOn"] = Iso(on);
            record["visit"]!["reportedOn"] = Iso(on);
            record["examinations"]![0]!["examinedOn"] = Iso(on);
            Assert.Equal(overdue, Visit(record).Findings.Any(f => f.Code == "DAT011"));
        }
    }

    /// <summary>Arrêté of 19 March 1993 art 1: kit verified exactly twelve months ago is no longer usable.</summary>
    [Fact]
    public void In_France_the_corresponding_date_itself_is_too_late() =>
        Assert.Equal(new LocalDate(2027, 5, 10), Next(Record("fr", "fall-arrest-only", null)));

    /// <summary>A basis may shorten the regime's interval and never lengthens it.</summary>
    [Theory]
    [InlineData("gb-loler", "lifts-persons", "scheme", 3, 3, 0)]
    [InlineData("gb-loler", "lifts-persons", "scheme", 9, 6, 0)]
    [InlineData("gb-loler", "lifts-persons", "six-month", 3, 6, 0)]
    [InlineData("gb-wah", "fall-arrest-only", "scheme", 3, 3, 0)]
    [InlineData("gb-wah", "fall-arrest-only", "scheme", 24, 6, 0)]
    [InlineData("de", "lifts-persons", "scheme", 4, 4, 0)]
    [InlineData("de", "lifts-persons", "scheme", 24, 12, 0)]
    [InlineData("de", "lifts-persons", "six-month", null, 6, 0)]
    [InlineData("fr", "fall-arrest-only", "six-month", null, 6, 0)]
    [InlineData("fr", "fall-arrest-only", "twelve-month", null, 12, -1)]
    [InlineData("fr", "fall-arrest-only", "scheme", 12, 12, -1)]
    [InlineData("eu-en365", "lifts-persons", "twelve-month", null, 12, 0)]
    [InlineData("us", "fall-arrest-only", "twelve-month", null, 6, 0)]
    public void A_basis_never_lengthens_an_interval(string regime, string purpose, string basis, int? scheme, int months, int days)
    {
        var record = Record(regime, purpose, null);
        record["examinations"]![0]!["basis"] = basis;
        if (scheme is { } every)
            record["examinations"]![0]!["scheme"] = new JsonObject
            {
                ["reference"] = "S-1",
                ["author"] = "Odile Farrowby",
                ["months"] = every,
            };
        Assert.Equal(Examined.PlusMonths(months).PlusDays(days), Next(record));
    }

    /// <summary>Of the regime's interval, the maker's and the examiner's own date, the earliest counts.</summary>
    [Fact]
    public void The_maker_and_the_examiner_may_ask_for_less_everywhere()
    {
        var record = Record("de", "lifts-persons", null);
        record["limits"]![0]!["intervalMonths"] = 9;
        Assert.Equal(Examined.PlusMonths(9), Next(record));
        record["examinations"]![0]!["nextBy"] = "2026-08-01";
        Assert.Equal(new LocalDate(2026, 8, 1), Next(record));
    }

    [Fact]
    public void An_unknown_regime_gives_no_date_and_is_an_error()
    {
        var visit = Visit(Record("gb-loller", "lifts-persons", null));
        Assert.Equal(Outcome.Undetermined, visit.Items[0].Outcome);
        Assert.Null(visit.Items[0].NextExaminationBy);
        Assert.Contains(visit.Findings, f => f.Code == "PAR026");
    }

    [Fact]
    public void The_interval_that_applies_is_passed_on_with_its_source()
    {
        var interval = Visit(Record("fr", "fall-arrest-only", null)).Items[0].Interval!;
        Assert.Equal(
            (12, Core.Regimes.Bound.LessThan, "arrêté of 19 March 1993 art 1"),
            (interval.Months, interval.Bound, interval.Source)
        );
    }

    private static LocalDate? Next(JsonObject record) => Visit(record).Items[0].NextExaminationBy;

    private static DeterminedVisit Visit(JsonObject record)
    {
        var read = JsonRecordReader.Read(System.Text.Encoding.UTF8.GetBytes(record.ToJsonString()), "record.json");
        return Determine.Visit(read.Record!, read.Findings, History.None, new LocalDate(2027, 12, 1));
    }

    private static JsonObject Record(string regime, string? purpose, string? use)
    {
        var record = GoodRecord.For("harness");
        record["visit"]!["regime"] = regime;
        var examination = record["examinations"]![0]!.AsObject();
        examination["regime"] = regime;
        examination["basis"] = "exceptional";
        examination["event"] = new JsonObject { ["what"] = "a long time out of use", ["on"] = "2025-03-01" };
        if (use is not null)
            examination["exposure"] = new JsonObject { ["use"] = use };
        if (purpose is null)
            record["items"]![0]!.AsObject().Remove("purpose");
        else
            record["items"]![0]!["purpose"] = purpose;
        if (regime is "gb-wah")
            record["items"]![0]!["purpose"] = "fall-arrest-only";
        return record;
    }

    private static string Iso(LocalDate day) => NodaTime.Text.LocalDatePattern.Iso.Format(day);
}
