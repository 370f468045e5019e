using System.Text.Json.Nodes;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>Rows with one id, or limits that apply alike, are judged the same in any order.</summary>
public sealed class RowOrderTests
{
    /// <summary>
    /// The criterion is judged or advisory for a bridge (W3). For a connector it is unknown, and so counts as decisive (W1).
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

    /// <summary>An examination with the criteria of bridges is of the bridge, so no criterion is wrong.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void An_examination_of_a_duplicate_id_goes_to_the_item_it_could_be_of(bool connectorFirst)
    {
        var decided = Decided.From(TwoOfOneId(connectorFirst));

        Assert.True(decided.Errors.Any(), "an id carried twice is an error");
        Assert.DoesNotContain(decided.Errors, e => e.Contains(" /examinations/0/observations", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Each_of_several_limits_that_apply_must_give_a_time_limit(bool bareFirst)
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
