using System.Text.Json.Nodes;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>Where a record says two things about one item, the kinder one never decides.</summary>
public sealed class ContradictionTests
{
    [Theory]
    [InlineData("2190-01-01", true)]
    [InlineData("2028-05-12", true)]
    [InlineData("2028-05-11", false)]
    [InlineData("2026-12-01", false)]
    public void A_danger_more_than_24_months_off_is_a_warning(string on, bool warned)
    {
        var decided = Decided.From(GoodRecord.For("sling").Later("marking", on));
        Assert.Equal(warned, decided.Finds("DAT020"));
        Assert.Equal("fit-until", decided.Outcome());
    }

    /// <summary>By the corresponding date, not by the last day of the month.</summary>
    [Theory]
    [InlineData("2028-02-28", false)]
    [InlineData("2028-02-29", true)]
    public void The_24_months_are_calendar_months(string on, bool warned)
    {
        var record = GoodRecord.For("sling").Later("marking", on);
        record["visit"]!["examinedOn"] = "2026-02-28";
        record["visit"]!["reportedOn"] = "2026-03-02";
        record.Exam()["examinedOn"] = "2026-02-28";
        record.Item()["lastExamined"] = "2025-11-20";
        Assert.Equal(warned, Decided.From(record).Finds("DAT020"));
    }

    /// <summary>On a decisive criterion any defect ends the service; it cannot be put off to a later date.</summary>
    [Theory]
    [InlineData("clear", "later", "undetermined")]
    [InlineData("no-sign", "later", "undetermined")]
    [InlineData("not-examined", "later", "undetermined")]
    [InlineData("defect", "later", "withdraw")]
    [InlineData("doubt", "later", "withdraw")]
    [InlineData("clear", "now", "withdraw")]
    public void A_decisive_criterion_with_an_entry_is_never_cleared(string state, string danger, string outcome)
    {
        var record = GoodRecord.For("sling");
        record.Answer("saw-contact", state);
        if (danger is "later")
            record.Later("saw-contact", "2026-09-01");
        else
            record.Now("saw-contact");
        var decided = Decided.From(record);
        Assert.Equal((outcome, state is not ("defect" or "doubt")), (decided.Outcome(), decided.Finds("CON019")));
    }

    [Theory]
    [InlineData("clear", true)]
    [InlineData("not-examined", true)]
    [InlineData("noted", false)]
    [InlineData("defect", false)]
    public void A_judged_criterion_with_a_later_entry_is_noted_or_defect(string state, bool warned)
    {
        var record = GoodRecord.For("sling").Later("marking", "2026-09-01");
        record.Answer("marking", state);
        Assert.Equal(warned, Decided.From(record).Finds("CON033"));
    }

    /// <summary>Kit with a limit of use that would have expired long ago if the use were counted.</summary>
    [Theory]
    [InlineData("""{"use":"daily"}""", "undetermined")]
    [InlineData("""{"use":"none, then daily"}""", "undetermined")]
    [InlineData("""{"use":"none","ground":"sandy"}""", "undetermined")]
    [InlineData("""{"userMassKg":82}""", "undetermined")]
    [InlineData("""{"use":"no longer daily"}""", "undetermined")]
    [InlineData("""{"use":"none","ground":"none, in store","hardware":"ring"}""", "fit")]
    [InlineData("""{"use":"Not yet used"}""", "fit")]
    [InlineData("""{"hardware":"ring"}""", "fit")]
    public void Kit_never_used_must_show_no_use(string exposure, string outcome)
    {
        var record = NeverUsed();
        record.Exam()["exposure"] = JsonNode.Parse(exposure);
        Assert.Equal((outcome, outcome is "undetermined"), (Decided.From(record).Outcome(), Decided.From(record).Finds("CON032")));
    }

    [Theory]
    [InlineData("""{"use":"daily"}""", "undetermined")]
    [InlineData("""{"ground":"sandy"}""", "undetermined")]
    [InlineData("""{"use":"none"}""", "fit")]
    [InlineData(null, "fit")]
    public void An_earlier_examination_in_use_contradicts_it(string? exposure, string outcome)
    {
        var record = NeverUsed();
        record.Earlier("sling", "2026-01-20", e =>
        {
            if (exposure is not null)
                e["exposure"] = JsonNode.Parse(exposure);
        });
        Assert.Equal(outcome, Decided.From(record).Outcome());
    }

    /// <summary>A first use is an error; a status in use alone is a warning.</summary>
    [Fact]
    public void A_first_use_is_an_error_and_a_status_in_use_a_warning()
    {
        var used = NeverUsed();
        used.Item()["firstUsed"] = "2026-03-01";
        Assert.Equal(("undetermined", true), (Decided.From(used).Outcome(), Decided.From(used).Finds("CON012")));
        var status = NeverUsed();
        status.Item()["status"] = "in-use";
        Assert.Equal(("fit", true), (Decided.From(status).Outcome(), Decided.From(status).Finds("CON034")));
    }

    private static JsonObject NeverUsed()
    {
        var record = GoodRecord.For("sling");
        record.Item().Without("firstUsed", "purchased", "lastExamined")["neverUsed"] = true;
        record.Item()["manufactured"] = "2025-02-01";
        record.Item()["status"] = "stored";
        record.Limits().Without("maxAgeYears")["maxStorageYears"] = 9;
        return record;
    }
}
