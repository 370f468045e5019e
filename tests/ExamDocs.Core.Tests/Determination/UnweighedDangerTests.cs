using System.Text.Json.Nodes;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>Records that came out fit although a danger stood in them, in a row or under an id that nobody weighed.</summary>
public sealed class UnweighedDangerTests
{
    [Fact]
    public void An_earlier_defect_that_does_not_say_when_it_is_a_danger_is_not_passed_over()
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
    public void Diameters_under_an_id_that_is_not_there_hold_back_the_item_they_would_withdraw(int measured, string outcome)
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
