using ExamDocs.Core.Calendar;
using NodaTime;
using NodaTime.Text;

namespace ExamDocs.Core.Tests.Calendar;

public sealed class CorrespondingDateTests
{
    private const string Dodds = "Dodds v Walker [1981] 1 WLR 1027 HL";
    private const string Riley = "E J Riley Investments v Eurostile Holdings";
    private const string Rule = "computed by the rule of Dodds v Walker";

    /// <summary>Start, months, last day, weekday, days from start to last day, source.</summary>
    public static TheoryData<string, int, string, IsoDayOfWeek, int, string> WorkedCases =>
        new()
        {
            { "1978-09-30", 4, "1979-01-30", IsoDayOfWeek.Tuesday, 122, Dodds },
            { "1983-03-23", 2, "1983-05-23", IsoDayOfWeek.Monday, 61, Riley },
            { "2025-01-15", 6, "2025-07-15", IsoDayOfWeek.Tuesday, 181, Rule },
            { "2025-08-31", 6, "2026-02-28", IsoDayOfWeek.Saturday, 181, Rule },
            { "2023-08-31", 6, "2024-02-29", IsoDayOfWeek.Thursday, 182, Rule },
            { "2025-08-30", 6, "2026-02-28", IsoDayOfWeek.Saturday, 182, Rule },
            { "2025-08-29", 6, "2026-02-28", IsoDayOfWeek.Saturday, 183, Rule },
            { "2025-03-31", 6, "2025-09-30", IsoDayOfWeek.Tuesday, 183, Rule },
            { "2025-12-31", 6, "2026-06-30", IsoDayOfWeek.Tuesday, 181, Rule },
            { "2025-02-28", 6, "2025-08-28", IsoDayOfWeek.Thursday, 181, Rule },
            { "2024-02-29", 6, "2024-08-29", IsoDayOfWeek.Thursday, 182, Rule },
            { "2024-02-29", 12, "2025-02-28", IsoDayOfWeek.Friday, 365, Rule },
            { "2023-02-28", 12, "2024-02-28", IsoDayOfWeek.Wednesday, 365, Rule },
            { "2025-11-30", 3, "2026-02-28", IsoDayOfWeek.Saturday, 90, Rule },
            { "2024-01-31", 1, "2024-02-29", IsoDayOfWeek.Thursday, 29, Rule },
            { "2025-01-31", 1, "2025-02-28", IsoDayOfWeek.Friday, 28, Rule },
            { "2028-02-29", 48, "2032-02-29", IsoDayOfWeek.Sunday, 1461, Rule },
            { "2099-08-31", 6, "2100-02-28", IsoDayOfWeek.Sunday, 181, Rule },
        };

    [Theory]
    [MemberData(nameof(WorkedCases))]
    public void A_period_ends_on_the_corresponding_date(
        string start,
        int months,
        string last,
        IsoDayOfWeek weekday,
        int days,
        string source
    )
    {
        Assert.NotEmpty(source);
        var end = CorrespondingDate.AddMonths(Day(start), months);
        Assert.Equal(Day(last), end);
        Assert.Equal(weekday, end.DayOfWeek);
        Assert.Equal(days, Period.DaysBetween(Day(start), end));
    }

    /// <summary>Dodds v Walker [1981] 1 WLR 1027 HL: notice on 31 January was one day late.</summary>
    [Fact]
    public void The_day_after_the_corresponding_date_is_too_late() =>
        Assert.True(Day("1979-01-31") > CorrespondingDate.AddMonths(Day("1978-09-30"), 4));

    /// <summary>Computed: counting from due dates drifts, so the count starts from the examination.</summary>
    [Fact]
    public void Twice_six_months_is_not_twelve()
    {
        var start = Day("2025-08-31");
        Assert.Equal(Day("2026-08-28"), CorrespondingDate.AddMonths(CorrespondingDate.AddMonths(start, 6), 6));
        Assert.Equal(Day("2026-08-31"), CorrespondingDate.AddMonths(start, 12));
    }

    [Fact]
    public void A_year_is_twelve_months()
    {
        Assert.Equal(Day("2025-02-28"), CorrespondingDate.AddYears(Day("2024-02-29"), 1));
        Assert.Equal(Day("2028-02-29"), CorrespondingDate.AddYears(Day("2024-02-29"), 4));
        Assert.Equal(Day("2034-05-20"), CorrespondingDate.AddYears(Day("2024-05-20"), 10));
    }

    [Fact]
    public void No_period_runs_backwards_or_past_the_calendar()
    {
        Assert.Equal(
            "months",
            Assert.Throws<ArgumentOutOfRangeException>(() => CorrespondingDate.AddMonths(Day("2024-01-01"), -1)).ParamName
        );
        Assert.Equal(
            "years",
            Assert.Throws<ArgumentOutOfRangeException>(() => CorrespondingDate.AddYears(Day("2024-01-01"), -1)).ParamName
        );
        Assert.Equal(
            "years",
            Assert.Throws<ArgumentOutOfRangeException>(() => CorrespondingDate.AddYears(Day("2024-01-01"), int.MaxValue)).ParamName
        );
        Assert.StartsWith(
            "The period ends after the year 9999.",
            Assert.Throws<ArgumentOutOfRangeException>(() => CorrespondingDate.AddMonths(Day("9999-12-01"), 1)).Message,
            StringComparison.Ordinal
        );
        Assert.Equal(Day("9999-12-31"), CorrespondingDate.AddMonths(Day("9999-11-30"), 1).PlusDays(1));
        Assert.Equal(Day("9999-12-31"), CorrespondingDate.AddMonths(Day("9999-11-30"), 1).PlusDays(1));
    }

    private static LocalDate Day(string iso) => LocalDatePattern.Iso.Parse(iso).Value;
}
