using System.Text.Json.Nodes;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>Rows that cannot be told apart are judged alike, whichever of them stands first.</summary>
public sealed class RowOrderTests
{
    /// <summary>
    /// A criterion of bridges is a judged or advisory one there (W3); of a connector it is unknown, and counts as decisive (W1).
    /// </summary>
    [Theory]
    [InlineData(false, "W3", "W1")]
    [InlineData(true, "W3", "W1")]
    public void Of_two_items_with_one_id_each_is_judged_by_its_own_category(bool connectorFirst, string ofBridge, string ofConnector)
    {
        var decided = Decided.From(TwoOfOneId(connectorFirst).Answer("metal-deposit", "defect"));

        var (bridge, connector) = connectorFirst ? (1, 0) : (0, 1);
        Assert.Equal((ofBridge, ofConnector), (Withdrawals(decided, bridge), Withdrawals(decided, connector)));
    }

    /// <summary>An examination of bridges is one of the bridge: nothing is wrong with its criteria.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void An_examination_of_an_id_carried_twice_is_that_of_the_item_it_could_be_of(bool connectorFirst)
    {
        var decided = Decided.From(TwoOfOneId(connectorFirst));

        Assert.True(decided.Errors.Any(), "an id carried twice is an error");
        Assert.DoesNotContain(decided.Errors, e => e.Contains(" /examinations/0/observations", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Of_limits_that_apply_alike_each_is_asked_for_a_time_limit(bool bareFirst)
    {
        var record = GoodRecord.For("rope-bridge");
        var bare = record.Limits().DeepClone().AsObject();
        bare.Without("maxUseYears", "maxStorageYears", "maxAgeYears");
        record["limits"]!.AsArray().Insert(bareFirst ? 0 : 1, bare);

        Assert.Contains("U5", Decided.From(record).Codes('U').Split(' '));
    }

    private static JsonObject TwoOfOneId(bool connectorFirst)
    {
        var record = GoodRecord.For("rope-bridge");
        var connector = record.Item().DeepClone();
        connector["category"] = "connector";
        record["items"]!.AsArray().Insert(connectorFirst ? 0 : 1, connector);
        return record;
    }

    private static string Withdrawals(Decided decided, int index) =>
        string.Join(' ', decided.CodesAt(index).Split(' ').Where(c => c is "W1" or "W3"));
}
