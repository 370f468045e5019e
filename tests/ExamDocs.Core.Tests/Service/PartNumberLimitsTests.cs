using System.Text.Json.Nodes;
using ExamDocs.Core.Tests.Determination;

namespace ExamDocs.Core.Tests.Service;

/// <summary>
/// Limits that differ by part number: an item without a part number, or with one that no entry has, is judged no better than by any
/// of them.
/// </summary>
public sealed class PartNumberLimitsTests
{
    private const string Strict = """{"partNumber":"SP-1","maxUseYears":1}""";

    private const string Generous = """{"partNumber":"SP-15","maxUseYears":15}""";

    /// <summary>First used two years before the day examined.</summary>
    [Theory]
    [InlineData("SP-1", "withdraw", false)]
    [InlineData("SP-15", "fit", false)]
    [InlineData("", "withdraw", true)]
    [InlineData("SP-51", "withdraw", true)]
    [InlineData("sp 15", "fit", false)]
    [InlineData("SP_15", "fit", false)]
    [InlineData("Sp15", "fit", false)]
    [InlineData("sp.1", "withdraw", false)]
    [InlineData("SP-1-5", "withdraw", true)]
    public void A_strict_entry_is_never_passed_over_for_a_generous_one(string partNumber, string outcome, bool warned)
    {
        foreach (var limits in new[] { new[] { Strict, Generous }, [Generous, Strict] })
        {
            var decided = Decided.From(Sling(partNumber, limits));
            Assert.Equal((outcome, warned), (decided.Outcome(), decided.Finds("CON030")));
            Assert.False(decided.Finds("CON009"));
        }
    }

    /// <summary>
    /// The strict entry alone, or beside one for every part: without it the item would have no limit, or the generous one.
    /// </summary>
    [Theory]
    [InlineData("SP-1", "", "withdraw")]
    [InlineData("", "", "withdraw")]
    [InlineData("SP-9", "", "withdraw")]
    [InlineData("SP-1", """{"maxUseYears":15}""", "withdraw")]
    [InlineData("", """{"maxUseYears":15}""", "withdraw")]
    [InlineData("SP-9", """{"maxUseYears":15}""", "withdraw")]
    [InlineData("SP-9", """{"noLimit":true}""", "withdraw")]
    [InlineData("", """{"partNumber":"SP-2","noLimit":true}""", "withdraw")]
    [InlineData("SP-2", """{"partNumber":"SP-2","noLimit":true}""", "fit")]
    public void A_strict_entry_alone_or_beside_one_for_every_part(string partNumber, string other, string outcome) =>
        Assert.Equal(outcome, Decided.From(Sling(partNumber, other.Length == 0 ? [Strict] : [other, Strict])).Outcome());

    /// <summary>Textile kit with a marked date of obsolescence needs no limits of the maker's, but a strict one still binds it.</summary>
    [Theory]
    [InlineData("", "withdraw")]
    [InlineData("SP-9", "withdraw")]
    [InlineData("SP-15", "fit")]
    public void A_marked_date_is_no_way_round(string partNumber, string outcome)
    {
        var record = Sling(partNumber, Strict, Generous);
        record.Item()["obsoleteOn"] = "2036-01-01";
        Assert.Equal(outcome, Decided.From(record).Outcome());
    }

    /// <summary>Each limit binds by itself, in whichever entry it is.</summary>
    [Theory]
    [InlineData("""{"partNumber":"A","maxUseYears":9,"maxAgeYears":2}""", """{"partNumber":"B","maxUseYears":9}""", "withdraw", "W5")]
    [InlineData("""{"partNumber":"A","maxUseYears":9}""", """{"partNumber":"B","maxUseYears":9,"maxCleanings":3}""", "withdraw", "W5")]
    [InlineData(
        """{"partNumber":"A","maxUseYears":9,"nominalDiameterMm":11.0,"diameterTolerancePercent":10}""",
        """{"partNumber":"B","maxUseYears":9,"nominalDiameterMm":11.0,"diameterTolerancePercent":2}""",
        "withdraw",
        "W7"
    )]
    [InlineData(
        """{"partNumber":"A","maxUseYears":9,"nominalDiameterMm":11.0,"diameterTolerancePercent":10}""",
        """{"partNumber":"B","maxUseYears":9,"nominalDiameterMm":8.0,"diameterTolerancePercent":10}""",
        "withdraw",
        "W7"
    )]
    [InlineData("""{"partNumber":"A","maxUseYears":9}""", """{"partNumber":"B"}""", "undetermined", "U5")]
    [InlineData(
        """{"partNumber":"A","maxUseYears":9}""",
        """{"partNumber":"B","unobtainable":{"sought":"asked","useUntil":"2026-05-10"}}""",
        "withdraw",
        "W5"
    )]
    [InlineData("""{"partNumber":"A","maxUseYears":9}""", """{"partNumber":"B","maxUseYears":9}""", "fit", "")]
    public void Every_entry_binds(string one, string other, string outcome, string code)
    {
        foreach (var limits in new[] { new[] { one, other }, [other, one] })
        {
            var record = Sling("", limits);
            record.Item()["cleanings"] = 4;
            record.Exam()["diameters"] = JsonNode.Parse("""[{"positionMm":50,"readingsMm":[10.5,10.5]}]""");
            var decided = Decided.From(record);
            Assert.Equal(outcome, decided.Outcome());
            Assert.Contains(code, decided.Codes(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_shortest_interval_holds()
    {
        var record = Sling(
            "",
            """{"partNumber":"A","maxUseYears":9,"intervalMonths":5}""",
            """{"partNumber":"B","maxUseYears":9,"intervalMonths":3}"""
        );
        Assert.Equal("2026-08-11", Decided.From(record).Next());
        record.Item()["partNumber"] = "a";
        Assert.Equal("2026-10-11", Decided.From(record).Next());
    }

    /// <summary>A part must be on the list of every entry that may be for the whole.</summary>
    [Theory]
    [InlineData("PN-B", "withdraw", "withdraw")]
    [InlineData("PN-X", "fit", "fit")]
    [InlineData("PN-Y", "withdraw", "withdraw")]
    public void Only_parts_on_every_list_are_permitted(string fitted, string part, string whole)
    {
        var record = GoodRecord.Of(("A", "harness", null), ("B", "rope-bridge", "A"));
        record.Item("B")["partNumber"] = fitted;
        record.Limits("B")["partNumber"] = fitted;
        record.Item("A").Remove("partNumber");
        record.Limits("A")["permittedParts"] = new JsonArray("PN-X", "PN-B");
        var other = record.Limits("A").DeepClone().AsObject();
        (other["partNumber"], other["permittedParts"]) = ("PN-A2", new JsonArray("PN-X", "PN-Y"));
        record["limits"]!.AsArray().Add(other);
        var decided = Decided.From(record);
        Assert.Equal((part, whole), (decided.Outcome("B"), decided.Outcome("A")));
    }

    /// <summary>Two entries for one part number are a tie, in whatever spelling.</summary>
    [Theory]
    [InlineData("SP-1", "SP 1", "SP-1", true)]
    [InlineData("SP-1", "sp1", "", true)]
    [InlineData("SP-1", "SP-2", "", false)]
    [InlineData("SP-1", "SP-2", "SP-3", false)]
    public void Two_entries_for_one_part_are_a_tie(string one, string other, string own, bool tie)
    {
        var decided = Decided.From(
            Sling(own, $$"""{"partNumber":"{{one}}","maxUseYears":9}""", $$"""{"partNumber":"{{other}}","maxUseYears":9}""")
        );
        Assert.Equal((tie, tie ? "undetermined" : "fit"), (decided.Finds("CON009"), decided.Outcome()));
    }

    /// <summary>The strictest of each limit is printed, with every document that the limits come from.</summary>
    [Fact]
    public void The_documents_of_all_entries_are_named()
    {
        var record = Sling(
            "",
            """{"partNumber":"A","maxUseYears":9,"maxStorageYears":4,"permittedParts":["X","Y"],"retying":"user","noLimit":false}""",
            """{"partNumber":"B","maxUseYears":7,"maxAgeYears":12,"permittedParts":["Y"],"retying":"maker"}"""
        );
        record["limits"]![1]!["source"] = JsonNode.Parse("""{"title":"Another sheet","revision":"3","page":"1"}""");
        var item = Decided.From(record).Item();

        Assert.Equal(["Use and care", "Another sheet"], item.LimitsSources.Select(s => s.Title));
        Assert.Equal(
            (7, 4, 12, "Y", Core.Records.Retying.Maker, false),
            (
                item.Limits!.MaxUseYears,
                item.Limits.MaxStorageYears,
                item.Limits.MaxAgeYears,
                string.Join(' ', item.Limits.PermittedParts!),
                item.Limits.Retying,
                item.Limits.NoLimit
            )
        );
        var warning = Assert.Single(item.Findings, f => f.Code == "CON030");
        Assert.Contains("maxUseYears 7 of part B, maxStorageYears 4 of part A", warning.Message.Text, StringComparison.Ordinal);
    }

    private static JsonObject Sling(string partNumber, params string[] limits)
    {
        var record = GoodRecord.For("sling");
        record.Item()["partNumber"] = partNumber;
        record["limits"]!.AsArray().Clear();
        foreach (var text in limits)
        {
            var entry = JsonNode.Parse(text)!.AsObject();
            (entry["maker"], entry["model"]) = ("Ferndell", $"M-{GoodRecord.Id}");
            entry["source"] = JsonNode.Parse("""{"title":"Use and care","revision":"C","page":"7"}""");
            record["limits"]!.AsArray().Add(entry);
        }
        return record;
    }
}
