using System.Text;
using System.Text.Json.Nodes;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.OwnList.Mapping;
using ExamDocs.Intake.OwnList.Words;
using ExamDocs.Intake.Vocabulary;

namespace ExamDocs.Intake.Tests.OwnList.Mapping;

/// <summary>What is written is read again as it was meant, and the page's example is a map.</summary>
public sealed class MapFileTests
{
    private static readonly string[] List = ["Plate;Type;Bought;Status", "K-1;Rope;03/04/2024;B", "K-2;Helm;05/06/2024;Pass"];

    [Fact]
    public void A_map_written_holds_what_is_open_and_read_again_settles_nothing_by_itself()
    {
        var mapping = Lists.Mapping(List);
        var json = MapFile.Write(mapping);
        var file = JsonNode.Parse(json)!;
        Assert.Equal(3, file["toSettle"]!.AsArray().Count);
        Assert.Null(file["dates"]);
        var (map, faults) = MapFile.Read(json, KnownRules.BuiltIn);
        Assert.Empty(faults);
        var again = new ListMapping(Lists.Read(List), KnownRules.BuiltIn, map);
        Assert.Equal(ListToSettle.Necessary(mapping), ListToSettle.Necessary(again));
        Assert.Equal(Encoding.UTF8.GetString(json), Encoding.UTF8.GetString(MapFile.Write(again)));
    }

    [Fact]
    public void What_it_says_holds()
    {
        const string Map = """
            {"format":"examdocs-map/1","dates":"month-day-year","columns":[{"heading":"PLATE","to":"serial"}],
             "kinds":[{"word":"rope","category":"rigging-rope"}],"words":[{"word":"b","means":"remark"}]}
            """;
        var (map, _) = MapFile.Read(Encoding.UTF8.GetBytes(Map), KnownRules.BuiltIn);
        var mapping = new ListMapping(Lists.Read(List), KnownRules.BuiltIn, map);
        Assert.Empty(ListToSettle.Necessary(mapping));
        Assert.Equal(DateOrder.MonthFirst, mapping.Map.Dates);
        Assert.Equal(ListField.Serial, mapping.Map.Columns[0].To);
        Assert.Equal("rigging-rope", mapping.Map.Kinds.Single(k => k.Word == "rope").Category);
        Assert.Equal(UseMeaning.Remark, mapping.Map.Words.Single(w => w.Word == "b").Means);
    }

    [Fact]
    public void The_example_of_the_page_is_a_map()
    {
        var json = File.ReadAllText(Path.Combine(Root(), "docs", "adopt.md")).Split("```json")[1].Split("```")[0];
        var (map, faults) = MapFile.Read(Encoding.UTF8.GetBytes(json), KnownRules.BuiltIn);
        Assert.Empty(faults);
        Assert.Equal(ListField.LeaveOut, map!.Columns[1].To);
    }

    [Fact]
    public void The_schema_names_every_field_that_a_column_can_hold()
    {
        var schema = JsonNode.Parse(File.ReadAllText(Path.Combine(Root(), "docs", "map.schema.json")))!;
        var allowed = schema["properties"]!["columns"]!["items"]!["properties"]!["to"]!["enum"]!
            .AsArray()
            .Select(n => n?.GetValue<string>());
        Assert.Equal(ListFields.Names.Append(null).Order(StringComparer.Ordinal), allowed.Order(StringComparer.Ordinal));
    }

    private static string Root()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "ExamDocs.sln")))
            folder = Path.GetDirectoryName(folder)!;
        return folder;
    }
}
