using System.Text;
using System.Text.Json.Nodes;
using ExamDocs.Core.Cases;
using ExamDocs.Core.Records;
using ExamDocs.Core.Tests.Rules;
using ExamDocs.Intake.Json;

namespace ExamDocs.Core.Tests.Cases;

public sealed class SharedValuesTests
{
    private static readonly string[] Particulars = ["description", "safeWorkingLoad", "markedStrength", "standards"];

    [Fact]
    public void The_visits_examiner_and_basis_hold_for_each_of_its_examinations_and_none_before()
    {
        var record = GoodRecord.Json();
        foreach (var examination in record["examinations"]!.AsArray())
        {
            examination!.AsObject().Remove("examiner");
            examination.AsObject().Remove("basis");
        }
        record["visit"]!["examiner"] = "ex1";
        record["visit"]!["basis"] = "six-month";

        var filled = Filled(record).Examinations;

        Assert.All(filled.Take(4), e => Assert.Equal(("ex1", Basis.SixMonth), (e.Examiner, e.Basis)));
        Assert.Equal((null, null), (filled[GoodRecord.EarlierOfConnector].Examiner, filled[GoodRecord.EarlierOfConnector].Basis));
    }

    [Fact]
    public void A_record_whose_visit_states_them_has_the_findings_of_one_that_states_them_each_time()
    {
        var record = GoodRecord.Json();
        record["examinations"]![GoodRecord.Helmet]!["examiner"] = "ex1";
        var each = GoodRecord.Check(record);
        foreach (var examination in record["examinations"]!.AsArray().Take(4))
        {
            examination!.AsObject().Remove("examiner");
            examination.AsObject().Remove("basis");
        }
        record["visit"]!["examiner"] = "ex1";
        record["visit"]!["basis"] = "six-month";

        Assert.Equal(each.Select(f => (f.Code, f.Path)), GoodRecord.Check(record).Select(f => (f.Code, f.Path)));
        record["visit"]!.AsObject().Remove("examiner");
        Assert.Equal(4, GoodRecord.Check(record).Count(f => f.Path.EndsWith("/examiner", StringComparison.Ordinal)));
    }

    [Fact]
    public void Where_one_examination_names_another_examiner_the_visits_is_not_filled_in()
    {
        var record = GoodRecord.Json();
        record["visit"]!["examiner"] = "ex1";
        record["examinations"]![GoodRecord.Bridge]!.AsObject().Remove("examiner");

        Assert.Null(Filled(record).Examinations[GoodRecord.Bridge].Examiner);
        Assert.Equal([(GoodRecord.Helmet, "examiner")], SharedValues.Conflicts(Read(record)));
    }

    [Fact]
    public void An_unknown_examiner_of_the_visit_is_one_finding()
    {
        var record = GoodRecord.Json();
        foreach (var examination in record["examinations"]!.AsArray().Take(4))
            examination!.AsObject().Remove("examiner");
        record["visit"]!["examiner"] = "ex9";

        Assert.Equal("/visit/examiner", Assert.Single(GoodRecord.Check(record), f => f.Code is "CON003").Path);
    }

    [Fact]
    public void What_a_model_shares_fills_in_what_its_items_leave_out()
    {
        var record = WithModel();
        foreach (var member in Particulars)
            record["items"]![GoodRecord.Harness]!.AsObject().Remove(member);

        var harness = Filled(record).Items[GoodRecord.Harness];

        Assert.Equal("Harness of the model", harness.Description);
        Assert.Equal(new Load { Value = 150, Unit = "kg" }, harness.SafeWorkingLoad);
        Assert.Equal(new Load { Value = 22, Unit = "kN" }, harness.MarkedStrength);
        Assert.Equal(["EN 813", "EN 358"], harness.Standards);
        Assert.Null(Filled(record).Items[GoodRecord.Helmet].MarkedStrength);
        Assert.DoesNotContain(GoodRecord.Check(record), f => f.Code is "PAR005");
    }

    [Fact]
    public void A_value_of_the_items_own_comes_first()
    {
        var harness = Filled(WithModel()).Items[GoodRecord.Harness];

        Assert.Equal("Harness", harness.Description);
        Assert.Equal(140, harness.SafeWorkingLoad!.Value);
    }

    [Fact]
    public void An_incomplete_load_of_the_item_is_not_completed_from_the_model()
    {
        var record = WithModel();
        record["items"]![GoodRecord.Harness]!["safeWorkingLoad"] = new JsonObject { ["unit"] = "kg" };

        Assert.Null(Filled(record).Items[GoodRecord.Harness].SafeWorkingLoad!.Value);
        Assert.Contains(GoodRecord.Check(record), f => f.Code is "PAR005");
    }

    [Theory]
    [InlineData("\"partNumber\": null", null)]
    [InlineData("\"partNumber\": \"P-1\"", "P-1")]
    public void Entries_that_compete_fill_nothing(string part, string? own)
    {
        var record = WithModel();
        record["items"]![GoodRecord.Harness]!.AsObject().Remove("safeWorkingLoad");
        record["items"]![GoodRecord.Harness]!["partNumber"] = own;
        var entry = (JsonObject)JsonNode.Parse($$"""{ "maker": "Fenwright", "model": "F1", {{part}} }""")!;
        foreach (var load in new[] { 100, 120 })
        {
            var competing = entry.DeepClone();
            competing["safeWorkingLoad"] = new JsonObject { ["value"] = load, ["unit"] = "kg" };
            record["limits"]!.AsArray().Add(competing);
        }

        Assert.Null(Filled(record).Items[GoodRecord.Harness].SafeWorkingLoad);
    }

    [Theory]
    [InlineData("P-1", 100)]
    [InlineData("P-2", 150)]
    [InlineData(null, 150)]
    public void What_is_stated_for_a_part_number_holds_only_for_that_part_number(string? own, int load)
    {
        var record = WithModel();
        record["items"]![GoodRecord.Harness]!.AsObject().Remove("safeWorkingLoad");
        record["items"]![GoodRecord.Harness]!["partNumber"] = own;
        record["limits"]!
            .AsArray()
            .Add(
                JsonNode.Parse(
                    """{ "maker": "Fenwright", "model": "F1", "partNumber": "P-1", "safeWorkingLoad": { "value": 100, "unit": "kg" } }"""
                )
            );

        Assert.Equal(load, Filled(record).Items[GoodRecord.Harness].SafeWorkingLoad!.Value);
    }

    private static JsonNode WithModel()
    {
        var record = GoodRecord.Json();
        var limits = record["limits"]![0]!;
        limits["description"] = "Harness of the model";
        limits["safeWorkingLoad"] = new JsonObject { ["value"] = 150, ["unit"] = "kg" };
        limits["markedStrength"] = new JsonObject { ["value"] = 22, ["unit"] = "kN" };
        limits["standards"] = new JsonArray("EN 813", "EN 358");
        return record;
    }

    private static ExaminationRecord Read(JsonNode record) =>
        JsonRecordReader.Read(Encoding.UTF8.GetBytes(record.ToJsonString()), "record.json").Record!;

    private static ExaminationRecord Filled(JsonNode record) => SharedValues.FilledIn(Read(record));
}
