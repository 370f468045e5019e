using System.Globalization;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Tests;

/// <summary>A record is refused where it has too many rows, or too many about the same thing; the limits are our own.</summary>
public sealed class RecordSizeLimitTests
{
    public static TheoryData<string, int, int> Limits =>
        new()
        {
            // What there is too much of, the largest number that is still decided, and the number of items in the record.
            { "more rows", 20_000, 0 },
            { "share one id", 316, 0 },
            { "about one item", 4_472, 1 },
            { "does not have", 2_000, 1_000 },
            { "renewals", 10_000, 2_000 },
            { "people", 4_472, 0 },
            { "limits", 1_414, 0 },
            { "depends on", 20_000, 1_000 },
            { "too many entries", 4_472, 0 },
            { "too many times over", 632, 0 },
        };

    [Theory]
    [MemberData(nameof(Limits))]
    public void The_largest_record_that_is_decided_and_the_smallest_that_is_not(string what, int most, int items)
    {
        Assert.Null(Said(what, most, items));
        Assert.Contains(what, Said(what, most + 1, items), StringComparison.Ordinal);
    }

    [Fact]
    public void A_ring_of_parts_comes_to_an_end() =>
        Assert.Null(
            RecordSizeLimit.Of(
                new()
                {
                    Items = [new() { Id = "A", FittedTo = "B" }, new() { Id = "B", FittedTo = "A" }, new() { Id = "C", FittedTo = "C" }],
                },
                []
            )
        );

    /// <summary>A visit far larger than any that we measure, with twenty years of examinations of every item.</summary>
    [Fact]
    public void A_large_visit_with_its_history_is_decided() =>
        Assert.Null(
            RecordSizeLimit.Of(
                new ExaminationRecord
                {
                    People = Many(10, n => new Person { Id = Id(n) }),
                    Items = Many(2_000, n => new Item
                    {
                        Id = Id(n),
                        FittedTo = n % 3 == 0 ? null : Id(n - (n % 3)),
                        Maker = "M",
                        Model = Id(n % 50),
                    }),
                    Limits = Many(60, n => new MakersLimits { Maker = "M", Model = Id(n) }),
                    Examinations = Many(20_000, n => new Examination { Item = Id(n % 2_000), Examiner = "0" }),
                    Renewals = Many(2_000, n => new Renewal { Item = Id(n - (n % 3)), FittedPart = Id(n) }),
                },
                []
            )
        );

    private static string? Said(string what, int count, int items)
    {
        var record = new ExaminationRecord { Items = Many(items, n => new Item { Id = Id(n) }) };
        return what switch
        {
            "more rows" => Of(record with { Items = Many(count, n => new Item()) }),
            "share one id" => Of(record with { Items = Many(count, _ => new Item { Id = "A" }) }),
            "about one item" => Of(record with { Examinations = Many(count, _ => new Examination { Item = "0" }) }),
            "does not have" => Of(record with { Examinations = Many(count, n => new Examination { Item = "Z" + Id(n) }) }),
            "renewals" => Of(record with { Releases = Many(count, n => new Release { Item = Id(n % items) }) }),
            "people" => Of(
                record with
                {
                    People = Many(count, n => new Person { Id = Id(n) }),
                    Examinations = Many(4_472, _ => new Examination()),
                }
            ),
            "limits" => Of(record with { Limits = Many(count, _ => new MakersLimits { Maker = "M", Model = "F" }), Items = [] }),
            "depends on" => RecordSizeLimit.Of(
                record,
                Many(count, n => new Finding("INT001", Severity.Error, "/visit/x", Message.None, Message.None, ""))
            ),
            "too many entries" => Of(record with { Examinations = [new() { Observations = Many(count, _ => new Observation()) }] }),
            _ => Of(record with { Items = Many(count, n => new Item { Id = Id(n), FittedTo = n == 0 ? null : Id(n - 1) }) }),
        };
    }

    private static string? Of(ExaminationRecord record) => RecordSizeLimit.Of(record, []);

    private static string Id(int n) => n.ToString(CultureInfo.InvariantCulture);

    private static T[] Many<T>(int count, Func<int, T> one) => [.. Enumerable.Range(0, count).Select(one)];
}
