using System.Text.Json.Nodes;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Core.Rules;
using ExamDocs.Core.Tests.Determination;
using ExamDocs.Intake.Json;
using NodaTime;

namespace ExamDocs.Core.Tests.Regimes;

/// <summary>
/// A regime that an examination names for itself never allows more than the visit's: the shorter interval and the particulars of
/// both apply, unless the visit's regime leaves such kit to it. Examined on 11 May 2026.
/// </summary>
public sealed class OwnRegimeTests
{
    [Theory]
    [InlineData("gb-loler", "de", "lifts-persons", "2026-11-11", "gb-loler")]
    [InlineData("gb-loler", "fr", "lifts-persons", "2026-11-11", "gb-loler")]
    [InlineData("gb-loler", "eu-en365", "lifts-persons", "2026-11-11", "gb-loler")]
    [InlineData("gb-loler", "eu-en365", "accessory", "2026-11-11", "gb-loler")]
    [InlineData("gb-loler", "de", "other", "2027-05-11", "gb-loler")]
    [InlineData("gb-loler", "fr", "other", "2027-05-10", "gb-loler")]
    [InlineData("gb-loler", "de", "fall-arrest-only", "2026-11-11", "gb-loler")]
    [InlineData("gb-loler", "de", "", "2026-11-11", "gb-loler")]
    [InlineData("ni-loler", "eu-en365", "lifts-persons", "2026-11-11", "ni-loler")]
    [InlineData("gb-loler", "us", "other", "2026-11-11", "gb-loler")]
    [InlineData("de", "gb-loler", "lifts-persons", "2026-11-11", "gb-loler")]
    [InlineData("de", "fr", "lifts-persons", "2027-05-10", "fr")]
    [InlineData("gb-loler", "ni-loler", "lifts-persons", "2026-11-11", "ni-loler")]
    [InlineData("eu-en365", "gb-wah", "fall-arrest-only", "2026-11-11", "eu-en365")]
    [InlineData("gb-wah", "gb-loler", "lifts-persons", "2026-11-11", "gb-loler")]
    [InlineData("gb-loler", "gb-wah", "fall-arrest-only", "2026-11-11", "gb-wah")]
    [InlineData("gb-loler", "gb-loler", "other", "2027-05-11", "gb-loler")]
    public void The_shorter_interval_holds_and_the_fuller_particulars_are_printed(
        string visits,
        string own,
        string purpose,
        string next,
        string printed
    )
    {
        var item = Determined(Sling(visits, own, purpose)).Items[0];
        Assert.Equal((next, printed), (Day(item.NextExaminationBy), item.RegimeId));
    }

    /// <summary>Arduous use counts only under gb-wah. gb-loler leaves fall arrest and helmets to that regime.</summary>
    [Theory]
    [InlineData("sling", "fall-arrest-only", "2026-08-11")]
    [InlineData("helmet", "lifts-persons", "2026-08-11")]
    [InlineData("helmet", "", "2026-08-11")]
    public void Only_the_other_regime_binds_kit_that_is_left_to_it(string category, string purpose, string next)
    {
        var record = Sling("gb-loler", "gb-wah", purpose, category);
        record.Exam()["exposure"] = new JsonObject { ["use"] = "arduous" };
        record.Item().Remove("safeWorkingLoad");
        var visit = Determined(record);
        Assert.Equal(next, Day(visit.Items[0].NextExaminationBy));
        Assert.DoesNotContain(visit.Findings, f => f.Code is "PAR005" or "CON020" or "CON021");
        Assert.Equal(["gb-wah"], visit.Items[0].Regimes.Select(r => r.Id));
    }

    /// <summary>The visit's law asks for its particulars, whatever regime the examination names.</summary>
    [Theory]
    [InlineData("de")]
    [InlineData("fr")]
    [InlineData("eu-en365")]
    [InlineData("au-nz")]
    [InlineData("us")]
    public void Particulars_of_the_visits_regime_are_asked_for(string own)
    {
        var record = Sling("gb-loler", own, "lifts-persons");
        record.Item().Remove("safeWorkingLoad");
        var visit = Determined(record);
        Assert.Equal(Outcome.Undetermined, visit.Items[0].Outcome);
        Assert.Contains(visit.Findings, f => f is { Code: "PAR005", Severity: Severity.Error });
        Assert.Equal(["gb-loler", own], visit.Items[0].Regimes.Select(r => r.Id));
    }

    [Theory]
    [InlineData("de", "lifts-persons")]
    [InlineData("eu-en365", "accessory")]
    [InlineData("fr", "")]
    public void A_twelve_month_basis_is_refused_where_the_visits_regime_gives_six(string own, string purpose)
    {
        var record = Sling("gb-loler", own, purpose);
        record.Exam()["basis"] = "twelve-month";
        var visit = Determined(record);
        Assert.Equal(Outcome.Undetermined, visit.Items[0].Outcome);
        Assert.Contains(visit.Findings, f => f.Code == "CON006");
    }

    [Theory]
    [InlineData("2025-11-10", true)]
    [InlineData("2025-11-11", false)]
    public void Overdue_is_counted_by_the_shorter_interval(string lastExamined, bool overdue)
    {
        var record = Sling("gb-loler", "de", "lifts-persons");
        record.Item()["lastExamined"] = lastExamined;
        Assert.Equal(overdue, Determined(record).Findings.Any(f => f.Code == "DAT011"));
    }

    /// <summary>A regime of the user's own may give long intervals; it does not change those of the visit's law.</summary>
    [Theory]
    [InlineData("long", null, "lifts-persons", "2036-05-11", true)]
    [InlineData("long", null, "fall-arrest-only", "2036-05-11", true)]
    [InlineData("long", null, "", "2036-05-11", true)]
    [InlineData("long", null, "other", "2036-05-11", false)]
    [InlineData("gb-loler", "long", "lifts-persons", "2026-11-11", true)]
    [InlineData("long", "gb-loler", "lifts-persons", "2026-11-11", true)]
    [InlineData("year", null, "lifts-persons", "2027-05-11", false)]
    public void A_long_interval_of_the_users_own_is_a_warning_at_the_item(
        string visits,
        string? own,
        string purpose,
        string next,
        bool warned
    )
    {
        var record = Sling(visits, own, purpose);
        record.Exam()["basis"] = "exceptional";
        record.Exam()["event"] = JsonNode.Parse("""{"what":"a fall of the branch","on":"2026-05-02"}""");
        var rules = KnownRules.BuiltIn.With(Own("long", 120)).With(Own("year", 12));
        var visit = Determined(record, rules);
        Assert.Equal(next, Day(visit.Items[0].NextExaminationBy));
        Assert.Equal(warned, visit.Items[0].Findings.Any(f => f is { Code: "PAR040", Severity: Severity.Warning }));
    }

    /// <summary>A regime that leaves all kit to another one would bind nothing.</summary>
    [Fact]
    public void An_entry_that_leaves_all_kit_to_another_regime_is_refused()
    {
        var regime = Own("long", 12) with
        {
            HandsOver =
            [
                new HandedOver
                {
                    To = "gb-wah",
                    Source = "none",
                    Confidence = Confidence.CommonPractice,
                },
            ],
        };
        Assert.Contains(RegimeFaults.Of(regime), f => f.StartsWith("/handsOver", StringComparison.Ordinal));
    }

    private static Regime Own(string id, int months)
    {
        var regime = RegimeIndex.Find("eu-en365")!;
        return regime with
        {
            Id = id,
            AddedFrom = $"regimes/{id}.json",
            Intervals = [new Period<ExaminationInterval> { Entries = [regime.Intervals[0].Entries[0] with { Months = months }] }],
        };
    }

    private static JsonObject Sling(string visits, string? own, string purpose, string category = "sling")
    {
        var record = GoodRecord.For(category);
        record["visit"]!["regime"] = visits;
        record.Exam()["regime"] = own ?? "";
        record.Exam()["basis"] = "exceptional";
        record.Exam()["event"] = JsonNode.Parse("""{"what":"a long time out of use","on":"2026-05-02"}""");
        record.Item()["purpose"] = purpose;
        return record;
    }

    private static DeterminedVisit Determined(JsonObject record, KnownRules? rules = null)
    {
        var read = JsonRecordReader.Read(System.Text.Encoding.UTF8.GetBytes(record.ToJsonString()), "visit.json");
        return Determine.Visit(read.Record!, read.Findings, History.None, new LocalDate(2026, 5, 12), rules);
    }

    private static string? Day(LocalDate? day) => day is { } d ? NodaTime.Text.LocalDatePattern.Iso.Format(d) : null;
}
