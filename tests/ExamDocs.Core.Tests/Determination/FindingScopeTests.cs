using System.Text.Json.Nodes;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>U3: an error reaches the items it is about, and one bad row never holds back another.</summary>
public sealed class FindingScopeTests
{
    private static readonly Dictionary<string, Action<JsonObject>> BadRows = new(StringComparer.Ordinal)
    {
        ["no category"] = r => r.Item("PUL-100").Remove("category"),
        ["unknown category"] = r => r.Item("PUL-100")["category"] = "ladder",
        ["no id"] = r => r.Item("PUL-100").Remove("id"),
        ["unknown member"] = r => r.Item("PUL-100")["colour"] = "red",
        ["impossible date"] = r => r.Item("PUL-100")["firstUsed"] = "2024-02-30",
        ["item is a number"] = r => r["items"]![0] = 7,
        ["item is null"] = r => r["items"]![0] = null,
        ["no examination"] = r => r["examinations"]!.AsArray().Remove(r.Exam("PUL-100")),
        ["examination names nothing"] = r => r.Exam("PUL-100")["item"] = "NONE",
        ["examination is a word"] = r => r["examinations"]![0] = "clear",
        ["observations are missing"] = r => r.Exam("PUL-100").Remove("observations"),
        ["an unknown word"] = r => r.Answer("cracks", "clera", "PUL-100"),
        ["a defect"] = r => r.Answer("cracks", "defect", "PUL-100"),
        ["a circle"] = r => r.Item("PUL-100")["fittedTo"] = "PUL-100",
        ["fitted to nothing"] = r => r.Item("PUL-100")["fittedTo"] = "NONE",
        ["examiner unknown"] = r => r.Exam("PUL-100")["examiner"] = "NONE",
        ["limits without title"] = r => r.Limits("PUL-100")["source"]!.AsObject().Remove("title"),
        ["release of nothing"] = r => r.Release("Q-2025-000001", "NONE"),
        ["renewal of nothing"] = r => r.Renew("NONE", "PUL-100"),
        ["disposal of it"] = r => r.Row("disposals", """{"item":"PUL-100","action":"destroyed","by":"store","on":"2026-05-11"}"""),
    };

    public static TheoryData<string> Cases => [.. BadRows.Keys];

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_bad_row_never_changes_another_rows_outcome(string name)
    {
        var record = GoodRecord.Of(("PUL-100", "pulley", null), ("BLK-2", "pulley", null), ("SLING-33", "sling", null));
        var before = Decided.From(record);
        BadRows[name](record);
        var after = Decided.From(record);

        Assert.Equal((before.Line("BLK-2"), before.Line("SLING-33")), (after.Line("BLK-2"), after.Line("SLING-33")));
    }

    [Theory]
    [InlineData("/visit/employer/address")]
    [InlineData("/visit/premises/name")]
    [InlineData("/visit/reference")]
    [InlineData("/visit/reportedOn")]
    [InlineData("/visit/regime")]
    public void An_error_in_the_visit_reaches_every_item(string pointer)
    {
        var record = GoodRecord.Of(("X", "pulley", null), ("Y", "pulley", null));
        JsonPaths.Remove(record, pointer);
        var decided = Decided.From(record);

        Assert.All(["X", "Y"], id => Assert.Equal(("undetermined", "U3"), (decided.Outcome(id), decided.Codes(id))));
    }

    [Theory]
    [InlineData("examiner")]
    [InlineData("author")]
    [InlineData("authenticatedBy")]
    public void An_error_in_a_person_reaches_only_the_items_of_that_person(string role)
    {
        var record = TwoPeople();
        record.Exam("Y")[role] = "ex2";
        record["people"]![1]!.AsObject().Remove("qualifications");
        var decided = Decided.From(record);

        Assert.Equal(("fit", "undetermined"), (decided.Outcome("X"), decided.Outcome("Y")));
        Assert.Equal("U3", decided.Codes("Y"));
    }

    [Fact]
    public void A_person_nobody_uses_reaches_no_item()
    {
        var record = TwoPeople();
        record["people"]![1]!.AsObject().Remove("address");
        var decided = Decided.From(record);

        Assert.Equal(("fit", "fit"), (decided.Outcome("X"), decided.Outcome("Y")));
        Assert.NotEmpty(decided.Errors);
    }

    [Fact]
    public void An_error_in_limits_reaches_only_the_items_they_apply_to()
    {
        var record = GoodRecord.Of(("X", "pulley", null), ("Y", "pulley", null));
        record.Limits("X")["source"]!.AsObject().Remove("title");
        var decided = Decided.From(record);

        Assert.Equal(("undetermined", "fit"), (decided.Outcome("X"), decided.Outcome("Y")));
    }

    [Fact]
    public void An_error_of_the_whole_never_reaches_its_parts()
    {
        var record = GoodRecord.Assembly();
        record.Item("A").Remove("description");
        record.Limits("A")["source"]!.AsObject().Remove("title");
        record.Answer("fading", "clera", "A");
        var decided = Decided.From(record);

        Assert.Equal(("undetermined", "fit", "fit"), (decided.Outcome("A"), decided.Outcome("B"), decided.Outcome("C")));
    }

    [Fact]
    public void An_error_of_a_part_reaches_the_whole_through_the_parts_outcome()
    {
        var record = GoodRecord.Assembly();
        record.Item("C").Remove("description");
        var decided = Decided.From(record);

        Assert.Equal(("U6", "U6", "U3"), (decided.Codes("A"), decided.Codes("B"), decided.Codes("C")));
    }

    [Fact]
    public void Errors_never_soften_a_withdrawal()
    {
        var record = GoodRecord.For("sling").Answer("cut", "defect");
        record["visit"]!.AsObject().Without("employer", "premises", "reportedOn");
        record["people"]!.AsArray().Clear();
        record.Item().Without("description", "serial", "safeWorkingLoad");

        Assert.Equal("withdraw", Decided.From(record).Outcome());
    }

    private static JsonObject TwoPeople()
    {
        var record = GoodRecord.Of(("X", "pulley", null), ("Y", "pulley", null));
        var second = record["people"]![0]!.AsObject().Copy().With("id", "ex2").With("name", "Rufus Elderbank");
        record["people"]!.AsArray().Add(second);
        return record;
    }

    /// <summary>
    /// A part may be on either of two items whose ids are equally near to the one typed: both are held, in either order of the rows.
    /// </summary>
    [Theory]
    [InlineData("K-1", "K-3")]
    [InlineData("K-3", "K-1")]
    public void A_misspelt_whole_holds_every_item_that_it_may_have_meant(string first, string second)
    {
        var record = GoodRecord.Of((first, "harness", null), (second, "harness", null), ("BR", "rope-bridge", "K-2"));
        var decided = Decided.From(record);

        Assert.Equal(("U3", "U3"), (decided.Codes("K-1"), decided.Codes("K-3")));
    }
}
