using ExamDocs.UseCases.Registered;
using ExamDocs.UseCases.Teaching;
using NodaTime;

namespace ExamDocs.UseCases.Tests.Teaching;

public sealed class ItemHistoryTests
{
    private static readonly LocalDate One = new(2024, 6, 1);
    private static readonly LocalDate Two = new(2024, 12, 1);
    private static readonly LocalDate Three = new(2025, 6, 1);

    [Theory]
    [InlineData("W1 W6")]
    [InlineData("W2")]
    [InlineData("W3")]
    [InlineData("W4")]
    [InlineData("W7")]
    public void What_is_found_on_an_item_ends_its_service(string codes) =>
        Assert.Equal(Two, History(ItemLives.Seen("B", One), ItemLives.Seen("B", Two, codes)).End?.Day);

    [Theory]
    [InlineData("W5")] // expired
    [InlineData("W8")] // not a part that its whole permits
    [InlineData("W9")] // a part of it
    [InlineData("W10")] // an earlier withdrawal
    [InlineData("W11")] // destroyed
    [InlineData("W6")] // nothing is recorded but the conclusion
    public void Other_reasons_are_no_wear(string codes) =>
        Assert.Null(History(ItemLives.Seen("B", One), ItemLives.Seen("B", Two, codes)).End);

    [Fact]
    public void An_item_that_came_back_was_not_ended_by_its_withdrawal() =>
        Assert.Null(History(ItemLives.Seen("B", One, "W2"), ItemLives.Seen("B", Two)).End);

    [Fact]
    public void What_nobody_could_decide_did_not_come_back() =>
        Assert.Equal(One, History(ItemLives.Seen("B", One, "W1"), ItemLives.Seen("B", Two, "U1")).End?.Day);

    [Fact]
    public void Without_a_serial_number_it_is_the_one_recorded_last_under_its_id()
    {
        var items = Histories(
            ItemLives.Seen("B", One, "W1", serial: "S-1"),
            ItemLives.Seen("B", Two, serial: "S-2"),
            ItemLives.Seen("B", Three)
        );

        Assert.Equal([(1, One), (2, null)], items.Select(i => (i.Examined.Count, i.End?.Day)));
    }

    [Fact]
    public void A_withdrawal_that_is_only_repeated_counts_on_its_first_day() =>
        Assert.Equal(
            One,
            History(ItemLives.Seen("B", One, "W1"), ItemLives.Seen("B", Two, "W1 W10"), ItemLives.Seen("B", Three, "W10")).End?.Day
        );

    [Fact]
    public void A_visit_that_a_later_withdrawal_ends_after_the_fact_is_not_its_day() =>
        Assert.Equal(Two, History(ItemLives.Seen("B", One, "W10"), ItemLives.Seen("B", Two, "W1")).End?.Day);

    [Fact]
    public void One_id_however_it_is_spelt_is_one_item_and_two_serial_numbers_are_two()
    {
        Assert.Single(Histories(ItemLives.Seen("RB-01", One), ItemLives.Seen("rb 1", Two)));
        Assert.Equal(2, Histories(ItemLives.Seen("RB-01", One, serial: "S-1"), ItemLives.Seen("RB-01", Two, serial: "S-2")).Count);
    }

    [Fact]
    public void A_life_runs_from_first_use_to_the_withdrawal()
    {
        var life = CountSurvival.LifeOf(
            History(ItemLives.Seen("A", new LocalDate(2023, 1, 1)), [ItemLives.Seen("B", One), ItemLives.Seen("B", Three, "W1")])
        )!;

        Assert.Equal(517 / 30.4375, life.Time, 1e-9);
        Assert.True(life.IsEvent);
        Assert.Equal(0, life.Entry);
    }

    [Fact]
    public void What_is_in_service_is_censored_at_its_last_examination()
    {
        var life = CountSurvival.LifeOf(History(ItemLives.Seen("B", One), ItemLives.Seen("B", Two)))!;

        Assert.Equal((335 / 30.4375, false), (life.Time, life.IsEvent));
    }

    [Fact]
    public void What_was_in_use_before_its_owner_was_on_record_is_watched_from_its_first_examination()
    {
        var life = CountSurvival.LifeOf(History(ItemLives.Seen("B", One), ItemLives.Seen("B", Two, "W1")))!;

        Assert.Equal(152 / 30.4375, life.Entry, 1e-9);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("2024")] // a year alone is too coarse
    [InlineData("2026-01-01")] // after the examination
    public void Without_a_first_use_there_is_no_life(string? firstUsed) =>
        Assert.Null(
            CountSurvival.LifeOf(History(ItemLives.Seen("B", One, firstUsed: firstUsed), ItemLives.Seen("B", Two, firstUsed: firstUsed)))
        );

    [Fact]
    public void One_withdrawn_at_the_examination_from_which_it_is_watched_is_left_out()
    {
        var items = Histories(ItemLives.Seen("B", One, "W1"));

        Assert.Null(CountSurvival.LifeOf(items[0]));
        Assert.Equal(1, CountSurvival.LeftOut(items));
    }

    private static ItemHistory History(params ItemEntry[] entries) => Assert.Single(Histories(entries));

    private static ItemHistory History(ItemEntry earlier, ItemEntry[] entries) => Histories([earlier, .. entries])[1];

    private static IReadOnlyList<ItemHistory> Histories(params ItemEntry[] entries) => ItemHistories.Of(entries, null);
}
