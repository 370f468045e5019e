using ExamDocs.Core.Records;
using ExamDocs.Templates.Lessons;
using ExamDocs.UseCases.Registered;
using ExamDocs.UseCases.Teaching;
using NodaTime;

namespace ExamDocs.UseCases.Tests.Teaching;

public sealed class ReadLessonsTests
{
    private static readonly LocalDate One = new(2024, 6, 1);
    private static readonly LocalDate Two = new(2024, 12, 1);
    private static readonly LocalDate Three = new(2025, 6, 1);

    [Fact]
    public void Rates_count_items_and_not_examinations()
    {
        var rates = Lessons(
            ItemLives.Seen("A", One),
            ItemLives.Seen("A", Two, "W1"),
            ItemLives.Seen("B", One),
            ItemLives.Seen("B", Two)
        ).Rates;

        var group = Assert.Single(rates.Single(r => r.By is GroupedBy.Category).Groups);
        Assert.Equal(("rope-bridge", 1, 2), (group.Name, group.Withdrawn.Count, group.Withdrawn.Total));
    }

    [Fact]
    public void An_item_is_withdrawn_in_the_one_age_in_which_it_was()
    {
        var ages = Lessons(ItemLives.Seen("A", One), ItemLives.Seen("A", Two), ItemLives.Seen("A", Three, "W1")).Rates[^1].Groups;

        Assert.Equal([("0 – 1", 0, 1), ("1 – 2", 1, 1)], ages.Select(a => (a.Name, a.Withdrawn.Count, a.Withdrawn.Total)));
    }

    [Fact]
    public void Hardware_is_compared_among_bridges_alone_and_however_it_is_spelt()
    {
        var rates = Lessons(
            ItemLives.Seen("A", One, hardware: "Ring"),
            ItemLives.Seen("B", One, hardware: " ring"),
            ItemLives.Seen("C", One, hardware: null),
            ItemLives.Seen("L", One, category: "lanyard")
        ).Rates;

        var groups = rates.Single(r => r.By is GroupedBy.Hardware).Groups;
        Assert.Equal([("ring", 2), (null, 1)], groups.Select(g => (g.Name, g.Withdrawn.Total)));
    }

    [Fact]
    public void Twenty_of_a_kind_are_compared_and_nineteen_are_too_few()
    {
        ItemEntry[] twenty =
        [
            .. Enumerable.Range(100, 20).Select(n => ItemLives.Seen(FormattableString.Invariant($"A-{n}"), One, hardware: "ring")),
        ];
        ItemEntry[] others =
        [
            .. Enumerable.Range(200, 20).Select(n => ItemLives.Seen(FormattableString.Invariant($"B-{n}"), One, hardware: "swivel")),
        ];

        Assert.False(Hardware([.. twenty, .. others]).IsTooFew);
        Assert.True(Hardware([.. twenty, .. others.Skip(1)]).IsTooFew);

        static RateTable Hardware(ItemEntry[] entries) => Lessons(entries).Rates.Single(r => r.By is GroupedBy.Hardware);
    }

    [Fact]
    public void Wear_is_how_fast_the_thinnest_place_gets_thinner()
    {
        var months = Period.Between(One, Two, PeriodUnits.Days).Days / 30.4375;
        var wear = Lessons(
            ItemLives.Seen("A", One, diameter: 11),
            ItemLives.Seen("A", Two, diameter: 11 - (0.02 * months)),
            ItemLives.Seen("A", Three, diameter: 11 - (0.02 * (months + (182 / 30.4375)))),
            ItemLives.Seen("B", One),
            ItemLives.Seen("B", Two)
        ).Wear;

        var group = Assert.Single(wear);
        Assert.Equal(0.02, Assert.Single(group.MmPerMonth), 1e-6);
    }

    [Fact]
    public void Reasons_are_the_criteria_of_the_examination_that_ended_it()
    {
        var reasons = Lessons(
            ItemLives.Seen("A", One, "W1", defect: "cover-cut"),
            ItemLives.Seen("B", One, "W1", defect: "cover-cut"),
            ItemLives.Seen("C", One, "W5")
        ).Reasons;

        Assert.Equal([new ReasonCount("rope-bridge", "cover-cut", 2)], reasons);
    }

    [Fact]
    public void Agreement_is_between_two_examiners_within_a_month_and_names_none()
    {
        var soon = One.PlusDays(31);
        var rows = Lessons(
            ItemLives.Seen("A", One, noted: "cover-abrasion"),
            ItemLives.Seen("A", soon, examiner: "ex2"),
            ItemLives.Seen("B", One),
            ItemLives.Seen("B", soon.PlusDays(1), examiner: "ex2"),
            ItemLives.Seen("C", One),
            ItemLives.Seen("C", soon)
        ).Agreement;

        Assert.Equal(
            [(null, 2, 1), ("cover-abrasion", 1, 0), ("cover-cut", 1, 1)],
            rows.Select(r => (r.Criterion, r.Kappa.Pairs, r.Kappa.Alike))
        );
    }

    /// <summary>A record has ids of its own for its people.</summary>
    [Fact]
    public void Examiners_are_told_apart_by_name_and_not_by_their_id_in_a_record()
    {
        var two = Lessons(
            ItemLives.Seen("A", One, examiner: "ex1", name: "Ada Fenn"),
            ItemLives.Seen("A", One.PlusDays(3), examiner: "ex1", name: "Bram Oake")
        );
        var one = Lessons(
            ItemLives.Seen("B", One, examiner: "ex1", name: "Ada Fenn"),
            ItemLives.Seen("B", One.PlusDays(3), examiner: "af", name: "ADA FENN")
        );

        Assert.Equal(2, two.Agreement[0].Kappa.Pairs);
        Assert.Empty(one.Agreement);
    }

    [Fact]
    public void A_criterion_answered_twice_is_one_answer_and_the_worse_counts()
    {
        var twice = ItemLives.Seen("A", One, noted: "cover-abrasion");
        var examination = twice.Record.Examinations[0];
        var record = twice.Record with
        {
            Examinations =
            [
                examination with
                {
                    Observations =
                    [
                        .. examination.Observations,
                        new Observation { Criterion = "cover-abrasion", State = ObservedState.Clear },
                        new Observation { Criterion = "cover-cut", State = ObservedState.Clear },
                    ],
                },
            ],
        };
        var rows = Lessons(
            new ItemEntry(twice.Visit, twice.Outcome, twice.Item, record) { HasRow = twice.HasRow },
            ItemLives.Seen("A", One.PlusDays(3), examiner: "ex2")
        ).Agreement;

        Assert.Equal(
            [(null, 2, 1), ("cover-abrasion", 1, 0), ("cover-cut", 1, 1)],
            rows.Select(r => (r.Criterion, r.Kappa.Pairs, r.Kappa.Alike))
        );
    }

    [Fact]
    public void A_corrected_visit_is_one_visit_and_counts_as_corrected()
    {
        var lessons = Lessons(
            ItemLives.Seen("A", One, "W1", defect: "cover-cut", visit: "V-A"),
            ItemLives.Seen("A", One, visit: "v-a"),
            ItemLives.Seen("B", One, visit: "V-A"),
            ItemLives.Seen("B", Two)
        );

        Assert.Equal((2, 2), (lessons.Visits, lessons.Items));
        Assert.Empty(lessons.Reasons);
    }

    [Fact]
    public void Kit_of_others_is_left_out_where_one_employer_is_asked_for()
    {
        ItemEntry[] entries = [ItemLives.Seen("A", One)];

        Assert.Equal(1, ReadLessons.Of(entries, "Harrowmere Tree Works Ltd")?.Items);
        Assert.Null(ReadLessons.Of(entries, "Somebody else"));
    }

    [Fact]
    public void A_register_without_examinations_teaches_nothing() => Assert.Null(ReadLessons.Of([], null));

    [Fact]
    public void Kit_without_bridges_has_no_survival() =>
        Assert.All(Lessons(ItemLives.Seen("L", One, category: "lanyard")).Survival, s => Assert.Empty(s.Groups));

    private static RecordLessons Lessons(params ItemEntry[] entries) => ReadLessons.Of(entries, null)!;
}
