using ExamDocs.Core.Regimes;
using NodaTime;

namespace ExamDocs.Core.Tests.Regimes;

/// <summary>Invented periods: which entries are in force on which day.</summary>
public sealed class PeriodsTests
{
    private static readonly LocalDate Change = new(2020, 4, 6);

    private static readonly Period<string>[] Two =
    [
        new()
        {
            From = new(2010, 1, 1),
            Until = Change.PlusDays(-1),
            Entries = ["old"],
        },
        new()
        {
            From = Change,
            Until = new(2029, 12, 31),
            Entries = ["new"],
        },
    ];

    [Theory]
    [InlineData(2020, 4, 5, "old")]
    [InlineData(2020, 4, 6, "new")]
    [InlineData(2020, 4, 7, "new")]
    [InlineData(2009, 12, 31, "old")]
    [InlineData(1950, 1, 1, "old")]
    [InlineData(2030, 1, 1, "new")]
    public void The_entries_of_the_day_count_and_outside_all_periods_the_nearest(int year, int month, int day, string expected) =>
        Assert.Equal([expected], Two.InForce(new LocalDate(year, month, day)));

    [Fact]
    public void Without_a_day_the_newest_entries_count() => Assert.Equal(["new"], Two.InForce(null));

    [Fact]
    public void A_first_period_may_leave_its_day_open()
    {
        Period<string>[] open = [Two[0] with { From = null }, Two[1]];
        Assert.Equal(["old"], open.InForce(new LocalDate(1950, 1, 1)));
        Assert.True(open.FollowOneAnother());
    }

    [Fact]
    public void Gaps_overlaps_and_wrong_order_are_found()
    {
        Assert.True(Two.FollowOneAnother());
        Assert.False(new[] { Two[1], Two[0] }.FollowOneAnother());
        Assert.False(new[] { Two[0] with { Until = Change.PlusDays(-2) }, Two[1] }.FollowOneAnother());
        Assert.False(new[] { Two[0] with { Until = Change }, Two[1] }.FollowOneAnother());
        Assert.False(new[] { Two[0], Two[1] with { From = null } }.FollowOneAnother());
        Assert.False(new[] { Two[0] with { Until = new(2009, 1, 1) } }.FollowOneAnother());
    }
}
