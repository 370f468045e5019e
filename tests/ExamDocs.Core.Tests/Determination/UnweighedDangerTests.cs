using System.Text.Json.Nodes;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>Records that once came out fit although they held a danger, in a row or under an id that no rule looked at.</summary>
public sealed class UnweighedDangerTests
{
    [Fact]
    public void An_earlier_defect_without_a_time_of_danger_is_not_skipped()
    {
        var record = GoodRecord
            .For("rope-bridge")
            .Earlier("rope-bridge", "2025-11-10", e =>
            {
                e.Remove("conclusion");
                e["defects"] = JsonNode.Parse("""[{"criterion":"cover-cut","description":"cut through"}]""");
            });

        Assert.Equal("undetermined", Decided.From(record).Outcome());
        Assert.True(Decided.From(record).Finds("PAR009"));
    }

    [Theory]
    [InlineData(6, "undetermined")]
    [InlineData(11, "fit")]
    public void Diameters_under_an_unknown_id_hold_the_item_they_would_withdraw(int measured, string outcome)
    {
        var record = GoodRecord.For("rope-bridge");
        record.Limits().With("nominalDiameterMm", 11).With("diameterTolerancePercent", 10);
        record.Row(
            "examinations",
            $$"""
            {"item":"NONE","examinedOn":"2026-05-11","diameters":[{"positionMm":50,"readingsMm":[{{measured}}]}]}
            """
        );

        Assert.Equal(outcome, Decided.From(record).Outcome());
    }

    [Fact]
    public void What_was_quarantined_and_never_released_is_not_fit()
    {
        var record = GoodRecord.For("sling").Row("disposals", """{"item":"IT-1","action":"quarantined","by":"store","on":"2026-05-10"}""");
        Assert.Equal("undetermined", Decided.From(record).Outcome());

        Assert.Equal("fit", Decided.From(record.Release(null)).Outcome());
    }
}
