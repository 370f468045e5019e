using System.Globalization;
using System.Text.Json.Nodes;
using ExamDocs.Core.Tests.Determination;

namespace ExamDocs.Core.Tests.Measurement;

/// <summary>The analysis reaches the findings and the determined item, and never changes the outcome.</summary>
public sealed class MeasurementFindingTests
{
    /// <summary>Limits 9.9 to 12.1 mm; U = 0.0058 mm, as every two readings are equal and the step is 0.01 mm.</summary>
    [Theory]
    [InlineData("9.89", "withdraw", false)]
    [InlineData("9.90", "fit", true)]
    [InlineData("9.91", "fit", false)]
    public void At_the_limit_either_W7_or_the_warning_is_given(string reading, string outcome, bool warned)
    {
        var mm = decimal.Parse(reading, CultureInfo.InvariantCulture);
        var record = Bridge().Station(50, 11.00m, 11.00m).Station(150, mm, mm);
        var decided = Decided.From(record);

        Assert.Equal(outcome, decided.Outcome());
        Assert.Equal(warned, decided.Finds("MEA005"));
    }

    [Fact]
    public void A_trend_warns_and_changes_no_outcome()
    {
        var record = Bridge().Station(50, 10.0m, 10.0m).Station(150, 10.5m, 10.5m);
        foreach (var (on, mm) in new[] { ("2024-11-11", 10.9), ("2025-05-11", 10.6), ("2025-11-11", 10.3) })
            record.Earlier("rope-bridge", on, e => e["diameters"] = Readings(mm));
        var decided = Decided.From(record);

        Assert.Equal("fit", decided.Outcome());
        Assert.True(decided.Finds("MEA007"));
        Assert.Equal(4, decided.Item().Trend!.Smallest.Points.Count);
        Assert.True(decided.Item().Trend!.Proposed > new NodaTime.LocalDate(2026, 5, 11));
        Assert.Null(decided.Until());
        Assert.Contains(decided.Item().MeasurementSentences, s =>
            s.Text.Contains("proposed time by which it could become a danger", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Two_earlier_examinations_make_no_trend()
    {
        var record = Bridge().Station(50, 10.0m, 10.0m).Station(150, 10.5m, 10.5m);
        foreach (var (on, mm) in new[] { ("2025-05-11", 10.6), ("2025-11-11", 10.3) })
            record.Earlier("rope-bridge", on, e => e["diameters"] = Readings(mm));
        record.Earlier("rope-bridge", "2024-11-11");
        var decided = Decided.From(record);

        Assert.Null(decided.Item().Trend);
        Assert.False(decided.Finds("MEA007"));
        Assert.Equal(new NodaTime.LocalDate(2025, 5, 11), decided.Item().Profile!.SinceFirst!.FirstOn);
    }

    [Fact]
    public void Without_diameters_there_is_no_profile()
    {
        var item = Decided.From(Bridge()).Item();

        Assert.Null(item.Profile);
        Assert.Null(item.Trend);
        Assert.Empty(item.MeasurementSentences);
    }

    [Fact]
    public void Without_limits_only_comparisons_are_made()
    {
        var record = GoodRecord
            .For("rope-bridge")
            .Station(50, 11.0m, 11.0m)
            .Station(180, 8.0m, 8.0m)
            .Station(250, 11.0m, 11.0m)
            .Station(350, 11.1m, 11.0m);
        var decided = Decided.From(record);

        Assert.Equal("fit", decided.Outcome());
        Assert.True(decided.Finds("MEA006"));
        Assert.False(decided.Finds("MEA005"));
        Assert.DoesNotContain(decided.Item().MeasurementSentences, s => s.Text.Contains("the maker's limit", StringComparison.Ordinal));
    }

    [Fact]
    public void Sentences_carry_a_source_and_no_full_stop()
    {
        var record = Bridge().Station(50, 11.0m, 10.9m).Station(150, 10.0m, 9.9m).Station(250, 11.0m, 11.0m);
        record.Earlier("rope-bridge", "2025-11-11", e => e["diameters"] = Readings(11.0));
        var sentences = Decided.From(record).Item().MeasurementSentences;

        Assert.True(sentences.Count >= 4);
        Assert.All(sentences, s => Assert.False(string.IsNullOrWhiteSpace(s.Source)));
        Assert.All(sentences, s => Assert.True(char.IsLower(s.Text[0]) && !s.Text.EndsWith('.')));
    }

    private static JsonArray Readings(double mm) =>
        JsonNode
            .Parse(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $$"""[{"positionMm":50,"readingsMm":[{{mm}},{{mm}}]},{"positionMm":150,"readingsMm":[{{mm + 0.2:0.0}},{{mm + 0.2:0.0}}]}]"""
                )
            )!
            .AsArray();

    private static JsonObject Bridge()
    {
        var record = GoodRecord.For("rope-bridge");
        record.Limits().With("nominalDiameterMm", 11.0m).With("diameterTolerancePercent", 10);
        return record;
    }
}
