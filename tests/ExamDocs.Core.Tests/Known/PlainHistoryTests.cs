using ExamDocs.Core.Known;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Tests.Known;

/// <summary>Only what nothing more could be found out about is plain: whatever says more is asked about as a whole.</summary>
public sealed class PlainHistoryTests
{
    private static readonly Item Row = new()
    {
        Id = "C-1",
        Category = "connector",
        Maker = "Fennick Works",
        Serial = "Q1",
    };

    public static TheoryData<string> Changes =>
        [
            "another id",
            "the id spelt otherwise",
            "another owner",
            "another serial number",
            "another maker",
            "it was formerly another",
            "it is not another",
            "it is fitted to something",
            "it was destroyed",
            "a second row",
            "no row",
            "withdrawn",
            "another item is decided on",
            "another item is examined",
            "a renewal",
            "a remedy",
            "a release",
            "a disposal",
            "a visit that is not decided",
        ];

    [Fact]
    public void The_same_row_again_and_again_is_plain() => Assert.True(PlainHistory.Is(Asked(Row), [Visit(1), Visit(2)]));

    [Fact]
    public void A_particular_that_is_left_out_contradicts_nothing() =>
        Assert.True(PlainHistory.Is(Asked(Row), [Visit(1), Visit(2) with { Record = Record(Row with { Serial = null }) }]));

    [Theory]
    [MemberData(nameof(Changes))]
    public void Whatever_says_more_is_not(string change) => Assert.False(PlainHistory.Is(Asked(Row), [Visit(1), Changed(change)]));

    [Theory]
    [InlineData(" ")]
    [InlineData("--")]
    public void An_id_without_letters_and_digits_is_not(string id) => Assert.False(PlainHistory.Is(Asked(Row with { Id = id }), []));

    private static KnownVisit Changed(string change)
    {
        var visit = Visit(2);
        var record = visit.Record;
        return change switch
        {
            "another id" => With(record, Row with { Id = "C-2" }),
            "the id spelt otherwise" => With(record, Row with { Id = "c 1" }),
            "another owner" => visit with
            {
                Record = record with { Visit = record.Visit with { Employer = new() { Name = "Birch Lane" } } },
            },
            "another serial number" => With(record, Row with { Serial = "Q2" }),
            "another maker" => With(record, Row with { Maker = "Another" }),
            "it was formerly another" => With(record, Row with { Formerly = "C-9" }),
            "it is not another" => With(record, Row with { NotTheSameAs = [new() { Id = "C-9", Because = "serial Q9 on that one" }] }),
            "it is fitted to something" => With(record, Row with { FittedTo = "H-1" }),
            "it was destroyed" => With(record, Row with { Status = ItemStatus.Destroyed }),
            "a second row" => With(record, Row, Row with { Id = "C-2", Serial = "Q2" }),
            "no row" => With(record),
            "withdrawn" => visit with { Outcomes = [new("C-1", Outcome.Withdraw, ["W1"])] },
            "another item is decided on" => visit with { Outcomes = [.. visit.Outcomes, new("C-2", Outcome.Fit, [])] },
            "another item is examined" => visit with { Record = record with { Examinations = [new() { Item = "C-2" }] } },
            "a renewal" => visit with { Record = record with { Renewals = [new() { Item = "C-1" }] } },
            "a remedy" => visit with { Record = record with { Remedies = [new() { Item = "C-1" }] } },
            "a release" => visit with { Record = record with { Releases = [new() { Item = "C-1" }] } },
            "a disposal" => visit with { Record = record with { Disposals = [new() { Item = "C-1" }] } },
            "a visit that is not decided" => visit with { IsUndecided = true },
            _ => throw new ArgumentException("no such change", nameof(change)),
        };

        KnownVisit With(ExaminationRecord of, params Item[] rows) => visit with { Record = of with { Items = rows } };
    }

    private static KnownVisit Visit(int number) => new(number, Record(Row), [new KnownOutcome("C-1", Outcome.Fit, [])]);

    private static ExaminationRecord Asked(Item row) => Record(row) with { Examinations = [] };

    private static ExaminationRecord Record(Item row) =>
        new()
        {
            Visit = new Visit
            {
                Employer = new() { Name = "Alder Vale Ltd" },
                ExaminedOn = new LocalDate(2026, 5, 11),
            },
            Items = [row],
            Examinations = [new Examination { Item = row.Id }],
        };
}
