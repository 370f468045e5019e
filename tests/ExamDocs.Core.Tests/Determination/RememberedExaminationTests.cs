using System.Text;
using System.Text.Json.Nodes;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Determination.CaseForService;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Json;
using NodaTime;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>Earlier examinations from a store count for the trend and the evidence, and are not judged again.</summary>
public sealed class RememberedExaminationTests
{
    private static readonly LocalDate First = new(2024, 11, 11),
        Second = new(2025, 5, 11),
        Third = new(2025, 11, 11);

    [Fact]
    public void The_trend_is_the_same_whether_the_record_or_the_store_holds_the_earlier_diameters()
    {
        var own = Bridge();
        foreach (var (on, mm) in new[] { (First, 11.0m), (Second, 10.8m), (Third, 10.6m) })
            own["examinations"]!.AsArray().Add(Measured(GoodRecord.Examination(GoodRecord.Id, "rope-bridge", Iso(on)), mm));
        var remembered = Determined(Bridge(), [Past(First, 11.0m), Past(Second, 10.8m), Past(Third, 10.6m)]);
        Assert.NotNull(remembered.Trend?.Proposed);
        Assert.Equal(Determined(own, []).Trend!.Proposed, remembered.Trend.Proposed);
        Assert.Equal(First, remembered.Profile!.SinceFirst!.FirstOn);
        Assert.Null(Determined(Bridge(), [Past(First, 11.0m), Past(Second, 10.8m)]).Trend);
    }

    [Fact]
    public void An_examination_in_both_record_and_store_counts_once_as_the_record_has_it()
    {
        var own = Bridge();
        own["examinations"]!.AsArray().Add(Measured(GoodRecord.Examination(GoodRecord.Id, "rope-bridge", Iso(First)), 11.0m));
        var item = Determined(own, [Past(First, 9.0m), Past(Second, 10.8m), Past(Third, 10.6m)]);
        Assert.Equal(11.0, item.Trend!.Smallest.Points[0].Mm, 9);
    }

    [Fact]
    public void An_examination_on_the_day_or_later_is_not_history()
    {
        var item = Determined(
            Bridge(),
            [Past(First, 11.0m), Past(Second, 10.8m), Past(new(2026, 5, 11), 9.0m), Past(new(2026, 6, 1), 9.0m)]
        );
        Assert.Null(item.Trend);
        Assert.DoesNotContain(item.Findings, f => f.Code is "DAT017");
    }

    [Fact]
    public void A_remembered_examination_does_not_withdraw_by_itself()
    {
        var past = Past(Third, 9.0m);
        past = past with
        {
            Examination = past.Examination with
            {
                Conclusion = Conclusion.Withdraw,
                Observations =
                [
                    new Observation
                    {
                        Criterion = "cover-cut",
                        State = ObservedState.Defect,
                        StateAsTyped = "defect",
                        Note = "cut",
                    },
                ],
            },
        };
        Assert.Equal(Outcome.Fit, Determined(Bridge(), [past]).Outcome);
    }

    [Fact]
    public void A_remembered_dated_defect_needs_an_answer_until_a_later_record_gives_one()
    {
        var found = Past(Second, 11.0m);
        found = found with { Examination = found.Examination with { Defects = [Later] } };
        Assert.Contains(Determined(Bridge(), [found]).Findings, f => f.Code is "CON022");
        var remedied = Past(Third, 11.0m) with
        {
            Remedies =
            [
                new Remedy
                {
                    Item = GoodRecord.Id,
                    What = "cover bound",
                    DoneOn = Third.PlusDays(-2),
                },
            ],
        };
        var answered = Determined(Bridge(), [remedied, found]);
        Assert.DoesNotContain(answered.Findings, f => f.Code is "CON022");
        Assert.Contains(answered.CaseForService, e =>
            e.Heading is Heading.Doubts && e.Text.Contains("cover bound", StringComparison.Ordinal)
        );
        var tooEarly = remedied with { Remedies = [remedied.Remedies[0] with { DoneOn = Second.PlusDays(-1) }] };
        Assert.Contains(Determined(Bridge(), [found, tooEarly]).Findings, f => f.Code is "CON022");
    }

    [Fact]
    public void The_case_for_service_names_each_day_once()
    {
        var lines = Determined(Bridge(), [Past(First, 11.0m), Past(First, 11.0m) with { Document = "R-2024-000009" }, Past(Third, 11.0m)])
            .CaseForService.Where(e => e.Text.StartsWith("examined on", StringComparison.Ordinal))
            .Select(e => e.Text);
        Assert.Equal(["examined on 11 Nov 2024, conclusion fit", "examined on 11 Nov 2025, conclusion fit"], lines);
    }

    /// <summary>Kit that a recall took out of use unseen was not examined on that day, and no report may say so.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_day_on_which_nobody_looked_at_it_is_no_last_examination(bool stored)
    {
        var day = new LocalDate(2026, 3, 2);
        var bridge = Bridge();
        if (!stored)
            bridge["examinations"]!
                .AsArray()
                .Add(
                    new JsonObject
                    {
                        ["item"] = GoodRecord.Id,
                        ["examiner"] = "ex1",
                        ["basis"] = "exceptional",
                        ["examinedOn"] = Iso(day),
                        ["observations"] = new JsonArray(new JsonObject { ["criterion"] = "identity", ["state"] = "not-examined" }),
                    }
                );
        var past = Past(day, 11.0m);
        past = past with
        {
            Examination = past.Examination with
            {
                Observations = [new Observation { Criterion = "identity", State = ObservedState.NotExamined }],
            },
        };
        var item = Determined(bridge, stored ? [past] : []);
        Assert.Equal(Determined(Bridge(), []).LastExamined, item.LastExamined);
        Assert.NotNull(item.LastExamined);
        Assert.DoesNotContain(item.Findings, f => f.Code is "DAT017");
    }

    private static Defect Later =>
        new()
        {
            Criterion = "cover-abrasion",
            Description = "fluffy",
            Danger = Danger.Later,
            BecomesDangerOn = new(2026, 1, 1),
            Remedy = "bind it",
        };

    private static JsonObject Bridge()
    {
        var record = GoodRecord.For("rope-bridge");
        record["limits"]![0]!["nominalDiameterMm"] = 11.0;
        record["limits"]![0]!["diameterTolerancePercent"] = 10;
        Measured(record["examinations"]![0]!.AsObject(), 10.4m);
        return record;
    }

    private static JsonObject Measured(JsonObject examination, decimal mm)
    {
        examination["diameters"] = new JsonArray(new JsonObject { ["positionMm"] = 50, ["readingsMm"] = new JsonArray(mm, mm) });
        return examination;
    }

    private static PastExamination Past(LocalDate on, decimal mm) =>
        new(
            GoodRecord.Id,
            on,
            null,
            new Examination
            {
                Item = GoodRecord.Id,
                ExaminedOn = on,
                Conclusion = Conclusion.Fit,
                Diameters = [new DiameterStation { PositionMm = 50, ReadingsMm = [mm, mm] }],
            }
        );

    private static DeterminedItem Determined(JsonObject record, IReadOnlyList<PastExamination> past) =>
        Visit(record, History.None with { Examinations = past }).Items[0];

    private static DeterminedVisit Visit(JsonObject record, History history)
    {
        var read = JsonRecordReader.Read(Encoding.UTF8.GetBytes(record.ToJsonString()), "visit.json");
        return Determine.Visit(read.Record!, read.Findings, history, new LocalDate(2026, 5, 12));
    }

    private static string Iso(LocalDate day) => NodaTime.Text.LocalDatePattern.Iso.Format(day);
}
