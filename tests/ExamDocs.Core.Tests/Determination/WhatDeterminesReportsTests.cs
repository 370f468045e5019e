using System.Text;
using System.Text.Json.Nodes;
using ExamDocs.Core.Cases;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Json;
using NodaTime;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>What a determined visit holds for printing, in addition to the outcomes.</summary>
public sealed class WhatDeterminesReportsTests
{
    private static readonly LocalDate AsOf = new(2026, 5, 12);

    [Fact]
    public void A_defect_under_an_unknown_id_comes_after_the_items()
    {
        var record = GoodRecord.For("pulley").Answer("cracks", "defect");
        record.Exam()["item"] = "SLIP";
        var visit = Visit(record);
        var stray = Assert.Single(visit.Unlisted);
        Assert.Equal(("SLIP", Outcome.Withdraw), (stray.Item.Id, stray.Outcome));
        Assert.Contains(stray.Reasons, r => r.Code == "W1");
        Assert.Equal([GoodRecord.Id, "SLIP"], visit.Everything.Select(i => i.Item.Id));
    }

    [Fact]
    public void A_finding_names_the_one_item_it_reaches_unless_it_names_another()
    {
        var record = GoodRecord.Of(("A", "pulley", null), ("B", "pulley", null));
        record.Item("B").Remove("description");
        Assert.All(Visit(record).Findings.Where(f => f.Path.StartsWith("/items/1", StringComparison.Ordinal)), f =>
            Assert.Equal("B", f.Item)
        );
        Finding typed = new("INT999", Severity.Warning, "/items/1/serial", $"planted", $"none", "none") { Item = "A" };
        Finding nameless = typed with { Item = null };
        var found = Visit(record, typed, nameless).Findings.Where(f => f.Code == "INT999").Select(f => f.Item);
        Assert.Equal(["A", "B"], found);
    }

    /// <summary>A report may have only items that were examined and decided and have no error.</summary>
    [Fact]
    public void Only_an_examined_and_decided_item_without_errors_may_be_reported()
    {
        Assert.True(One(GoodRecord.For("pulley")).MayBeReported);
        Assert.True(
            One(GoodRecord.For("pulley").Answer("cracks", "defect").Conclude("withdraw").Later("cracks", "2026-08-01")).MayBeReported
        );

        var unexamined = GoodRecord.For("pulley");
        unexamined["examinations"] = new JsonArray();
        Assert.False(One(unexamined).MayBeReported);

        var undetermined = GoodRecord.For("pulley").Answer("cracks", "not-examined");
        Assert.Equal(Outcome.Undetermined, One(undetermined).Outcome);
        Assert.DoesNotContain(One(undetermined).Findings, f => f.Severity is Severity.Error);
        Assert.False(One(undetermined).MayBeReported);

        var withdrawnWithErrors = GoodRecord.For("pulley").Answer("cracks", "defect").Conclude("fit");
        Assert.Equal(Outcome.Withdraw, One(withdrawnWithErrors).Outcome);
        Assert.Contains(One(withdrawnWithErrors).Findings, f => f.Severity is Severity.Error);
        Assert.False(One(withdrawnWithErrors).MayBeReported);
    }

    [Fact]
    public void A_warning_does_not_hold_back_the_report()
    {
        var warned = GoodRecord.For("pulley");
        warned.Item().Without("lastExamined");
        Assert.Contains(One(warned).Findings, f => f.Severity is Severity.Warning);
        Assert.True(One(warned).MayBeReported);
    }

    [Fact]
    public void Withdrawn_kit_that_was_never_examined_is_not_reported()
    {
        var record = GoodRecord.For("pulley");
        record["examinations"] = new JsonArray();
        var item = Visit(
            record,
            new History([new PastWithdrawal(GoodRecord.Id, "Q-2025-000007", new LocalDate(2025, 11, 20), ["W1"], NeverReleasable: false)])
        ).Items[0];
        Assert.Equal(Outcome.Withdraw, item.Outcome);
        Assert.False(item.MayBeReported);
    }

    [Theory]
    [InlineData("ex1", "Odile Farrowby")]
    [InlineData("nobody", null)]
    [InlineData(null, null)]
    public void A_person_is_found_by_id(string? id, string? name)
    {
        var record = GoodRecord.For("pulley");
        record.Row("people", """{"name":"Without an id"}""");
        Assert.Equal(name, Visit(record).Person(id)?.Name);
    }

    /// <summary>Without a known regime there is no interval, whatever else is known.</summary>
    [Theory]
    [InlineData(false, true)]
    [InlineData(true, false)]
    public void No_next_date_without_a_known_regime(bool unknownRegime, bool expected)
    {
        var record = GoodRecord.For("pulley");
        record.Exam()["nextBy"] = "2026-08-01";
        if (unknownRegime)
            record.Exam()["regime"] = "nowhere";
        Assert.Equal(expected, NextExamination.LatestFor(Cases(record).Items[0]) is not null);
    }

    [Fact]
    public void No_next_date_where_one_of_two_deciding_examinations_has_no_known_regime()
    {
        var record = GoodRecord.For("pulley");
        record["examinations"]!.AsArray().Add(GoodRecord.Examination(GoodRecord.Id, "pulley").With("regime", "nowhere"));
        var item = Cases(record).Items[0];
        Assert.Equal(2, item.Deciding.Count());
        Assert.Null(NextExamination.LatestFor(item));
    }

    /// <summary>Each part is asked once, also where parts are fitted in a circle or to two wholes.</summary>
    [Fact]
    public void Parts_in_a_circle_have_an_earliest_date()
    {
        var record = GoodRecord.Of(("A", "pulley", "B"), ("B", "pulley", "A"));
        record.Exam("B")["nextBy"] = "2026-08-01";
        Assert.Equal(new LocalDate(2026, 8, 1), NextExamination.LatestForAssembly(Cases(record).Items[0]));
    }

    private static DeterminedItem One(JsonObject record) => Visit(record).Items[0];

    private static DeterminedVisit Visit(JsonObject record, params Finding[] more) => Visit(record, History.None, more);

    private static DeterminedVisit Visit(JsonObject record, History history, params Finding[] more)
    {
        var read = JsonRecordReader.Read(Encoding.UTF8.GetBytes(record.ToJsonString()), "visit.json");
        return Determine.Visit(read.Record!, [.. read.Findings, .. more], history, AsOf);
    }

    private static RecordContext Cases(JsonObject record) =>
        new(JsonRecordReader.Read(Encoding.UTF8.GetBytes(record.ToJsonString()), "visit.json").Record!, History.None, AsOf);
}
