using System.Text.Json.Nodes;

namespace ExamDocs.Core.Tests.Rules;

/// <summary>Sound renewals, each beside one that a rule must find.</summary>
public sealed class RenewalTests
{
    [Theory]
    [InlineData("competent-person", "ex1")]
    [InlineData("competent-person", "ex2")]
    [InlineData("user", "cl1")]
    public void Only_those_whom_the_maker_allows_may_retie(string allowed, string by)
    {
        var record = WithClimber();
        record["limits"]![GoodRecord.Bridge]!["retying"] = allowed;
        record["renewals"]![0]!["retiedBy"] = by;

        Assert.DoesNotContain(GoodRecord.Check(record), f => f.Code is "REN011");
    }

    /// <summary>The limits of the part count; those of the whole only where the part's do not say who may re-tie.</summary>
    [Theory]
    [InlineData(null, "user", false)]
    [InlineData(null, "maker", true)]
    [InlineData("user", "maker", false)]
    [InlineData("maker", "user", true)]
    public void The_parts_own_limits_count_before_those_of_the_whole(string? ofPart, string ofWhole, bool found)
    {
        var record = WithClimber();
        record["limits"]![GoodRecord.Harness]!["retying"] = ofWhole;
        if (ofPart is not null)
            record["limits"]![GoodRecord.Bridge]!["retying"] = ofPart;
        record["renewals"]![0]!["retiedBy"] = "cl1";

        Assert.Equal(found, GoodRecord.Check(record).Any(f => f.Code is "REN011"));
    }

    [Theory]
    [InlineData("2025-11-11", false)]
    [InlineData("2025-11-12", false)]
    [InlineData("2025-11-13", true)]
    public void A_part_withdrawn_earlier_must_be_released_before_it_is_fitted(string released, bool found)
    {
        var record = GoodRecord.Json();
        var earlier = record["examinations"]![GoodRecord.Bridge]!.DeepClone();
        (earlier["examinedOn"], earlier["conclusion"]) = ("2025-11-11", "withdraw");
        record["examinations"]!.AsArray().Add(earlier);
        record["releases"]!
            .AsArray()
            .Add(JsonNode.Parse($$"""{ "item": "BRG-1", "by": "ex1", "on": "{{released}}", "grounds": "knot dressed anew" }"""));

        Assert.Equal(found, GoodRecord.Check(record).Any(f => f.Code is "REN009"));
    }

    /// <summary>Fitted on the last day of its storage is in time; the day after is not.</summary>
    [Theory]
    [InlineData("2024-11-12", false)]
    [InlineData("2024-11-11", true)]
    [InlineData("2024-12", false)]
    [InlineData("2024-11", true)]
    public void A_part_is_fitted_before_its_storage_ends(string manufactured, bool found)
    {
        var record = GoodRecord.Json();
        var bridge = record["items"]![GoodRecord.Bridge]!.AsObject();
        bridge.Remove("firstUsed");
        bridge.Remove("purchased");
        bridge["manufactured"] = manufactured;
        record["limits"]![GoodRecord.Bridge]!["maxStorageYears"] = 1;

        Assert.Equal(found, GoodRecord.Check(record).Any(f => f.Code is "REN008"));
    }

    [Theory]
    [InlineData("quarantined")]
    [InlineData("destroyed")]
    public void A_part_taken_off_is_accounted_for_by_its_disposal(string action)
    {
        var record = GoodRecord.Json();
        var old = record["items"]![GoodRecord.Bridge]!.DeepClone();
        old.AsObject().Remove("fittedTo");
        (old["id"], old["serial"]) = ("OLD-1", "B-0");
        record["items"]!.AsArray().Add(old);
        record["renewals"]![0]!["removedPart"] = "OLD-1";
        Assert.Contains(GoodRecord.Check(record), f => f.Code is "REN006");

        record["disposals"]!
            .AsArray()
            .Add(JsonNode.Parse($$"""{ "item": "OLD-1", "action": "{{action}}", "by": "Ida Brackenfold", "on": "2025-11-12" }"""));
        Assert.DoesNotContain(GoodRecord.Check(record), f => f.Code is "REN006");
    }

    private static JsonNode WithClimber()
    {
        var record = GoodRecord.Json();
        record["people"]!
            .AsArray()
            .Add(
                JsonNode.Parse(
                    """{ "id": "cl1", "name": "Ove Tarnby", "address": "7 Alder Row, Fenmarsh", "qualifications": "climber", "selfEmployed": true }"""
                )
            );
        return record;
    }
}
