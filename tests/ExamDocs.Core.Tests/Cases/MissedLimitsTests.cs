using System.Text.Json.Nodes;
using ExamDocs.Core.Tests.Determination;

namespace ExamDocs.Core.Tests.Cases;

/// <summary>
/// A harness with a date of obsolescence can be decided without limits. So limits that it misses by a spelling must hold it: else
/// what they forbid would pass.
/// </summary>
public sealed class MissedLimitsTests
{
    [Theory]
    [InlineData("Ferndell", "Canopy Tow", "undetermined")]
    [InlineData("Ferndel", "Canopy Two", "undetermined")]
    [InlineData("Frendell", "Canpoy Two", "undetermined")]
    [InlineData("Ferndell", "", "undetermined")]
    [InlineData("", "Canopy Two", "undetermined")]
    [InlineData("", "", "undetermined")]
    [InlineData("ferndell", "canopy-two", "withdraw")]
    [InlineData("FERN DELL", "Canopy  Two", "withdraw")]
    [InlineData("Ferndell", "Long Reach", "fit-until")]
    [InlineData("Ossingham", "Canopy Two", "fit-until")]
    public void A_misspelling_never_lets_a_forbidden_part_pass(string maker, string model, string outcome)
    {
        var record = Harness();
        (record["limits"]![0]!["maker"], record["limits"]![0]!["model"]) = ("Ferndell", "Canopy Two");
        (record.Item("A")["maker"], record.Item("A")["model"]) = (maker, model);
        var decided = Decided.From(record);
        Assert.Equal((outcome, outcome is "undetermined"), (decided.Outcome("A"), decided.Finds("CON031")));
    }

    /// <summary>The same for limits of time and of diameter.</summary>
    [Theory]
    [InlineData("""{"maxUseYears":1}""", true)]
    [InlineData("""{"maxAgeYears":1}""", true)]
    [InlineData("""{"intervalMonths":3}""", true)]
    [InlineData("""{"eventEndsService":true}""", true)]
    [InlineData("""{"nominalDiameterMm":11.0,"diameterTolerancePercent":10}""", true)]
    [InlineData("""{"noLimit":true}""", false)]
    [InlineData("""{"permittedParts":["X"]}""", false)]
    public void Missed_limits_that_could_make_the_outcome_worse_hold_the_item(string limits, bool held)
    {
        var record = GoodRecord.For("pulley");
        record["limits"]!.AsArray().Clear();
        var entry = JsonNode.Parse(limits)!.AsObject();
        (entry["maker"], entry["model"]) = ("Ferndell", "M-IT-l");
        entry["source"] = JsonNode.Parse("""{"title":"Use and care","revision":"C","page":"7"}""");
        record["limits"]!.AsArray().Add(entry);
        record.Station(50, 9.0m, 9.0m);
        Assert.Equal(held ? "undetermined" : "fit", Decided.From(record).Outcome());
    }

    /// <summary>A firm's list of limits is longer than a record: the next model of a family is not a misspelling.</summary>
    [Theory]
    [InlineData("Oval 2", "Oval 3", "fit")]
    [InlineData("K1", "K2", "fit")]
    [InlineData("Ovale", "Oval 3", "fit")]
    [InlineData("Ovla 3", "Oval 3", "undetermined")]
    [InlineData("Ova1 3", "Oval 3", "undetermined")]
    public void A_model_that_others_use_is_not_taken_for_a_misspelling_of_another(string model, string used, string outcome)
    {
        var record = GoodRecord.Of(("A", "pulley", null), ("B", "pulley", null));
        record.Item("A")["model"] = model;
        record.Item("B")["model"] = used;
        record.Limits("B").Without("partNumber")["model"] = used;
        record["limits"]!.AsArray().RemoveAt(0);
        Assert.Equal(outcome, Decided.From(record).Outcome("A"));
        Assert.Equal("fit", Decided.From(record).Outcome("B"));
    }

    /// <summary>Limits that only items of another category have are not meant for an item without a model.</summary>
    [Theory]
    [InlineData("sling", "fit")]
    [InlineData("pulley", "undetermined")]
    public void Limits_of_another_category_do_not_hold_the_item(string other, string outcome)
    {
        var record = GoodRecord.Of(("A", "pulley", null), ("B", other, null));
        record.Item("A").Remove("model");
        record["limits"]!.AsArray().RemoveAt(0);
        Assert.Equal(outcome, Decided.From(record).Outcome("A"));
    }

    [Fact]
    public void An_item_with_limits_of_its_own_misses_none()
    {
        var record = Harness();
        record.Item("A")["model"] = "Canopy Tow";
        record["limits"]![0]!["model"] = "Canopy Two";
        var own = record["limits"]![0]!.DeepClone().AsObject();
        own.Without("maxUseYears", "maxStorageYears", "maxAgeYears", "permittedParts");
        (own["model"], own["noLimit"]) = ("Canopy Tow", true);
        record["limits"]!.AsArray().Add(own);
        Assert.Equal("fit-until", Decided.From(record).Outcome("A"));
    }

    /// <summary>With a bridge that the harness's maker does not permit.</summary>
    private static JsonObject Harness()
    {
        var record = GoodRecord.Of(("A", "harness", null), ("B", "rope-bridge", "A"));
        record.Item("A")["obsoleteOn"] = "2026-08-01";
        record.Limits("A").Remove("partNumber");
        record.Limits("A")["permittedParts"] = new JsonArray("SP-11-38");
        return record;
    }
}
