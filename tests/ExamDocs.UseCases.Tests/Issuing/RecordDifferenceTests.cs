using System.Text.Json.Nodes;
using ExamDocs.Intake.Json;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Corrections;
using ExamDocs.UseCases.Issuing;

namespace ExamDocs.UseCases.Tests.Issuing;

/// <summary>What differs between two versions of a record is named by member and item.</summary>
public sealed class RecordDifferenceTests
{
    private const string Item = "HEL-02";

    [Theory]
    [InlineData("items", "serial", "items/serial")]
    [InlineData("items", "ownersMark", "items/ownersMark")]
    [InlineData("examinations", "conclusion", "examinations/conclusion")]
    [InlineData("examinations", "nextBy", "examinations/nextBy")]
    public void A_member_of_a_row_is_named_with_its_item(string list, string member, string what)
    {
        var (before, after) = (Record(), Record());
        after.Rows(list).Last(r => (string?)r[list is "items" ? "id" : "item"] == Item)[member] = member is "conclusion"
            ? "withdraw"
            : "2026-06-01";
        Assert.Equal([new RecordChange(what, Item, Item)], Between(before, after));
    }

    [Fact]
    public void A_change_inside_a_member_is_the_member_s()
    {
        var after = Record();
        after.ExaminationOf(Item).Rows("observations").First()["note"] = "a scratch";
        after["visit"]!["employer"]!["address"] = "12 New Road";
        Assert.Equal(
            [new("visit/employer", null, null), new RecordChange("examinations/observations", Item, Item)],
            Between(Record(), after)
        );
    }

    [Fact]
    public void People_are_named_by_their_names_and_limits_by_their_models()
    {
        var after = Record();
        after.Rows("people").First()["qualifications"] = "others";
        after.Rows("limits").First()["maxUseYears"] = 3;
        var changes = Between(Record(), after);
        Assert.Equal(
            [("people", (string)after.Rows("people").First()["name"]!), ("limits", ModelOf(after.Rows("limits").First()))],
            changes.Select(c => (c.What, c.Whose!))
        );
    }

    [Fact]
    public void What_is_added_removed_or_renamed_is_named_and_the_order_of_rows_is_no_difference()
    {
        var (before, after) = (Record(), Record());
        before.Only("HEL-01", Item);
        after.Only(Item, "HEL-03");
        Assert.Contains(new RecordChange("items/added", "HEL-03", "HEL-03"), Between(before, after));
        Assert.Contains(new RecordChange("items/removed", "HEL-01", "HEL-01"), Between(before, after));

        var turned = Record();
        turned["items"] = new JsonArray([.. turned["items"]!.AsArray().Reverse().Select(n => n!.DeepClone())]);
        Assert.Empty(Between(Record(), turned));
    }

    /// <summary>The schema names all members; each change of one can be said in each language.</summary>
    [Fact]
    public void Every_member_of_the_record_format_has_its_word_in_every_language()
    {
        var schema = JsonNode.Parse(File.ReadAllText(Path.Combine(RepositoryRoot.Path, "docs", "record.schema.json")))!;
        IEnumerable<string> Members(string definition, string prefix) =>
            schema["$defs"]![definition]!["properties"]!.AsObject().Select(p => $"{prefix}/{p.Key}");
        string[] members =
        [
            .. Members("visit", "visit"),
            .. Members("item", "items"),
            .. Members("examination", "examinations"),
            .. schema["properties"]!.AsObject().Select(p => p.Key).Except(["format", "visit", "items"], StringComparer.Ordinal),
            "items/added",
            "items/removed",
        ];
        Assert.True(members.Length > 50);
        foreach (var language in Language.All)
        {
            var words = CorrectionPhrases.Languages.In(language);
            Assert.All(members.Where(m => language != Language.English || m.Contains('/', StringComparison.Ordinal)), m =>
                Assert.NotEqual(m, words.Word(m), StringComparer.Ordinal)
            );
        }
    }

    private static JsonObject Record() => Workspace.Example().Only("HEL-01", Item, "HEL-03");

    private static string ModelOf(JsonObject limits) => $"{limits["maker"]} {limits["model"]}";

    private static IReadOnlyList<RecordChange> Between(JsonObject before, JsonObject after) =>
        RecordDifference.Between(Read(before), Read(after));

    private static Core.Records.ExaminationRecord Read(JsonObject record) =>
        JsonRecordReader.Read(System.Text.Encoding.UTF8.GetBytes(record.ToJsonString()), "visit.json").Record!;
}
