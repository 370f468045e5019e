using System.Text;
using ExamDocs.Core.Records;
using ExamDocs.Register.Model;
using NodaTime;

namespace ExamDocs.Register.Tests;

/// <summary>
/// Which visits a record is decided with: those that name one of its items, however it is written, and what these are connected with.
/// </summary>
public sealed class TouchingTests : Workplace
{
    [Theory]
    [InlineData("HB-014", "HB-014", true)]
    [InlineData("HB-014", "hb 14", true)]
    [InlineData("HB-O14", "HB-014", true)]
    [InlineData("HB-014", "HB-015", false)]
    [InlineData("HB-1-2", "HB-12", false)]
    public void A_visit_is_found_by_the_id_of_its_item_however_it_is_written(string stored, string asked, bool isFound)
    {
        using var register = Open();
        register.Visits.Remember(Visit("V-1", new Item { Id = stored }));
        Assert.Equal(isFound ? [1] : (int[])[], Numbers(register.Visits.Touching(Record("V-2", new Item { Id = asked }))));
    }

    [Fact]
    public void A_visit_is_found_over_any_number_of_others_in_the_order_stored()
    {
        using var register = Open();
        register.Visits.Remember(Visit("V-1", new Item { Id = "A", Serial = "S1" }, new Item { Id = "unrelated 1" }));
        register.Visits.Remember(Visit("V-2", new Item { Id = "unrelated 2" }));
        register.Visits.Remember(
            Visit(
                "V-3",
                new Item
                {
                    Id = "B",
                    Serial = "S 1",
                    FittedTo = "C",
                }
            )
        );
        register.Visits.Remember(Visit("V-4", new Item { Id = "c", Formerly = "D" }));
        register.Visits.Remember(Visit("V-5", new Item { Id = "E", Serial = "S5" }, new Item { Id = "d" }));
        Assert.Equal([1, 3, 4, 5], Numbers(register.Visits.Touching(Record("V-6", new Item { Id = "a" }))));
        Assert.Equal([1, 3], Numbers(register.Visits.Touching(Record("V-6", new Item { Id = "a" }), upTo: 3)));
        Assert.Equal([1], Numbers(register.Visits.Touching(Record("V-6", new Item { Id = "a" }), upTo: 2)));
        Assert.Equal([5], Numbers(register.Visits.Touching(Record("V-6", new Item { Id = "E" }))).Where(n => n == 5));
        Assert.Equal([2], Numbers(register.Visits.Touching(Record("V-6", new Item { Id = "UNRELATED-2" }))));
    }

    [Fact]
    public void Items_without_an_id_in_two_visits_are_not_one()
    {
        using var register = Open();
        register.Visits.Remember(Visit("V-1", new Item { Serial = "S1" }));
        register.Visits.Remember(Visit("V-2", new Item { Serial = "S2" }));
        Assert.Equal([1], Numbers(register.Visits.Touching(Record("V-3", new Item { Id = "X", Serial = "s1" }))));
    }

    [Fact]
    public void All_that_was_decided_comes_with_the_visit()
    {
        using var register = Open();
        register.Visits.Remember(SampleVisit.Of("V-2026-031"));
        var touching = Assert.Single(register.Visits.Touching(Record("V-2", new Item { Id = "HB-014-B" })));
        Assert.Equal(
            ["HB-014 withdraw W9", "HB-014-B withdraw W1 W6"],
            touching.Outcomes.Select(o => $"{o.Item} {o.Outcome} {string.Join(' ', o.Codes)}")
        );
        Assert.Equal("V-2026-031", touching.Visit.Reference);
    }

    [Fact]
    public void A_key_longer_than_any_index_takes_is_found()
    {
        using var register = Open();
        var id = string.Concat(Enumerable.Range(0, 4000).Select(i => (char)('A' + (i * 7 % 26))));
        register.Visits.Remember(Visit("V-1", new Item { Id = id }));
        Assert.Equal([1], Numbers(register.Visits.Touching(Record("V-2", new Item { Id = id.ToLowerInvariant() }))));
    }

    [Fact]
    public void Thousands_of_items_are_found()
    {
        using var register = Open();
        var items = Enumerable
            .Range(0, 3000)
            .Select(i => new Item
            {
                Id = FormattableString.Invariant($"K-{i}"),
                Serial = FormattableString.Invariant($"S{i / 2}"),
                FittedTo = i % 3 == 0 ? null : FormattableString.Invariant($"K-{i - (i % 3)}"),
            })
            .ToArray();
        for (var n = 0; n < 4; n++)
            register.Visits.Remember(Visit(FormattableString.Invariant($"V-{n}"), items));
        Assert.Equal([1, 2, 3, 4], Numbers(register.Visits.Touching(Record("V-9", items))));
    }

    private static int[] Numbers(IReadOnlyList<TouchingVisit> visits) => [.. visits.Select(v => v.Visit.Visit)];

    private static ExaminationRecord Record(string reference, params Item[] items) =>
        new()
        {
            Visit = new() { Reference = reference, ExaminedOn = new LocalDate(2026, 5, 11) },
            Items = items,
        };

    private static VisitToRemember Visit(string reference, params Item[] items) =>
        new(Record(reference, items), Encoding.UTF8.GetBytes(reference), [.. items.Select(i => new RememberedOutcome(i.Id, "fit", []))]);
}
