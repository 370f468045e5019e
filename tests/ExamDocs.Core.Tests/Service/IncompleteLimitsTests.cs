using ExamDocs.Core.Tests.Determination;

namespace ExamDocs.Core.Tests.Service;

/// <summary>A faulty entry of limits without maker or model reaches the items that it may be for, and no others.</summary>
public sealed class IncompleteLimitsTests
{
    [Theory]
    [InlineData("Maker A", null, null, "undetermined")]
    [InlineData(null, "Model A", null, "undetermined")]
    [InlineData("Maker A", null, "P1", "undetermined")]
    [InlineData("Maker B", null, null, "fit")]
    [InlineData(null, "Model B", null, "fit")]
    [InlineData("Maker A", null, "P2", "fit")]
    [InlineData("Maker B", null, "P1", "fit")]
    [InlineData(null, "Model B", "P1", "fit")]
    public void An_entry_without_maker_or_model_reaches_the_items_it_may_be_for(string? maker, string? model, string? part, string expected)
    {
        var record = GoodRecord.Of(("A", "pulley", null));
        var item = record.Item("A");
        (item["maker"], item["model"], item["partNumber"]) = ("Maker A", "Model A", "P1");
        record["limits"]!.AsArray().Clear();
        record.Row("limits", Limits("Maker A", "Model A", null));
        Assert.Equal("fit", Decided.From(record).Outcome("A"));

        record.Row("limits", Limits(maker, model, part));

        Assert.Equal(expected, Decided.From(record).Outcome("A"));
    }

    /// <summary>Where an item has no model, any incomplete entry may be for it.</summary>
    [Fact]
    public void Any_incomplete_entry_may_be_for_an_item_without_a_model()
    {
        var record = GoodRecord.Of(("A", "pulley", null));
        record.Item("A").Remove("model");
        record["limits"]!.AsArray().Clear();
        var before = Decided.From(record).Codes("A");
        record.Row("limits", Limits(null, "Model A", null));
        Assert.NotEqual(before, Decided.From(record).Codes("A"));
        Assert.Contains("U3", Decided.From(record).Codes("A"), StringComparison.Ordinal);
    }

    private static string Limits(string? maker, string? model, string? part) =>
        $$"""
            {{{Member("maker", maker)}}{{Member("model", model)}}{{Member(
                "partNumber",
                part
            )}}"source":{"title":"Use and care","revision":"C","page":"7"},"maxUseYears":6}
            """;

    private static string Member(string name, string? value) => value is null ? "" : $"\"{name}\":\"{value}\",";
}
