using System.Text;
using System.Text.Json.Nodes;
using ExamDocs.Core.Recalls;
using ExamDocs.Core.Records;
using ExamDocs.Intake.RuleFiles;
using Json.Schema;

namespace ExamDocs.Intake.Tests.RuleFiles;

/// <summary>A maker's safety notice: the published schema, the example, and what is refused.</summary>
public sealed class RecallFileTests
{
    private static readonly string Root = FindRoot();
    private static readonly string Example = File.ReadAllText(Path.Combine(Root, "examples", "recall.json"));

    [Fact]
    public void The_example_keeps_to_the_published_schema_and_is_read()
    {
        using var example = System.Text.Json.JsonDocument.Parse(Example);
        var schema = JsonSchema.FromText(File.ReadAllText(Path.Combine(Root, "docs", "recall.schema.json")));
        Assert.True(schema.Evaluate(example.RootElement).IsValid);
        var (notice, faults) = Read(Example);
        Assert.Empty(faults);
        Assert.Equal("WH-SN-26-04", notice!.Reference);
        Assert.Equal(new SerialRange("WB-24-1000", "WB-24-1400"), Assert.Single(notice.Affected[0].SerialRanges));
        Assert.Equal(
            (new PartialDate(2023, 11), new PartialDate(2024, 3)),
            (notice.Affected[0].ManufacturedFrom, notice.Affected[0].ManufacturedTo)
        );
        Assert.Equal(["B-2402"], notice.Affected[1].Batches);
    }

    [Fact]
    public void The_example_of_the_page_is_a_notice()
    {
        var page = File.ReadAllText(Path.Combine(Root, "docs", "recall.md"));
        Assert.Empty(Read(page.Split("```json")[1].Split("```")[0]).Faults);
    }

    [Fact]
    public void Written_and_read_again_a_notice_is_the_same()
    {
        const string All = """
            {"format":"examdocs-recall/1","maker":"Wenderby Harness","alsoCalled":["Wenderby"],"reference":"R","on":"2026-06-01",
             "demands":"Take it out.","readAt":"letter","affected":[
              {"models":["M"],"partNumbers":["P"],"serialRanges":[{"from":"A1","to":"A9"},{"to":"B9"}],"serialPatterns":["X#*"],
               "serials":["S"],"checkCharacters":1,"batches":["B"],"manufactured":{"from":"2024-02","to":"2024"}},
              {"manufactured":{"from":"2024-02-29"}}]}
            """;
        foreach (var file in new[] { All, Example })
        {
            var written = SafetyNoticeWriter.Write(Read(file).Value!);
            Assert.True(JsonNode.DeepEquals(JsonNode.Parse(file), written), written.ToJsonString());
            Assert.Empty(Read(written.ToJsonString()).Faults);
        }
        // Whatever a notice can say is in the sample.
        Assert.All(Read(All).Value!.Affected.Take(1), kit =>
            Assert.All(typeof(NamedKit).GetProperties(), member => Assert.NotEqual(member.GetValue(new NamedKit()), member.GetValue(kit)))
        );
    }

    public static TheoryData<string, string, string> Faulty { get; } =
        new()
        {
            { "/format", "\"examdocs-recall/2\"", "/format" },
            { "/serials", "[]", "no such member" },
            { "/affected", "[]", "/affected" },
            { "/affected/0", "{}", "/affected/0" },
            { "/on", "\"2026-02-31\"", "/on" },
            { "/affected/0/serialRanges/0", "{}", "/affected/0/serialRanges/0" },
            { "/affected/0/manufactured/from", "\"2024-13\"", "/affected/0/manufactured/from: there is no such day" },
            { "/affected/0/manufactured/from", "\"2025\"", "ends before it begins" },
            { "/affected/0/checkCharacters", "9", "/affected/0/checkCharacters" },
            { "/maker", "\" \"", "/maker" },
            { "/affected/0/models", "[]", "/affected/0/models" },
            { "/affected/0/models", "[\" \"]", "/affected/0/models/0" },
            { "/affected/0/models", "null", "/affected/0/models" },
            { "/affected/0/serialRanges", "[]", "/affected/0/serialRanges" },
            { "/affected/0/serialRanges/0/from", "null", "/affected/0/serialRanges/0/from" },
            { "/affected/0/serialRanges/0/from", "1000", "/affected/0/serialRanges/0/from" },
            { "/affected/0/serialRanges/0/to", "\"WB-24-14##\"", "/affected/0/serialRanges/0/to" },
            { "/affected/0/serials", "[\"WB-24-1*\"]", "/affected/0/serials/0" },
            { "/affected/0/serialPatterns", "[\"WB-2[4-9]*\"]", "/affected/0/serialPatterns/0" },
            { "/affected/0/serialPatterns", "[\"WB-24*\", \"WB-25%\"]", "/affected/0/serialPatterns/1" },
            { "/affected/0", "{ \"checkCharacters\": 1 }", "/affected/0/checkCharacters: " },
        };

    [Theory]
    [MemberData(nameof(Faulty))]
    public void What_is_wrong_is_named_with_its_place(string place, string value, string expected)
    {
        var file = JsonNode.Parse(Example)!;
        var steps = place.Split('/', StringSplitOptions.RemoveEmptyEntries);
        var at = steps[..^1].Aggregate(file, (node, step) => node is JsonArray list ? list[int.Parse(step, null)]! : node[step]!);
        if (at is JsonArray array)
            array[int.Parse(steps[^1], null)] = JsonNode.Parse(value);
        else
            at[steps[^1]] = JsonNode.Parse(value);
        var (notice, faults) = Read(file.ToJsonString());
        Assert.Null(notice);
        Assert.Contains(faults, f => f.Contains(expected, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("\"maker\":", "\"Maker\":", "Maker")]
    [InlineData("\"maker\":", "\"maker\": \"Tarnholm Gear\", \"maker\":", "twice")]
    [InlineData("\"models\":", "\"models\": [\"Loop 9\"], \"models\":", "twice")]
    [InlineData("WB-24-1000", "WB-24-\u202E1000", "serialRanges")]
    public void A_member_that_nobody_knows_or_that_stands_there_twice_and_text_that_looks_otherwise_are_refused(
        string old,
        string with,
        string expected
    )
    {
        var (notice, faults) = Read(Example.Replace(old, with, StringComparison.Ordinal));
        Assert.Null(notice);
        Assert.Contains(faults, f => f.Contains(expected, StringComparison.Ordinal));
    }

    /// <summary>Long texts are refused soon, whatever they are made of.</summary>
    [Theory]
    [InlineData("serials", ' ')]
    [InlineData("serialPatterns", '#')]
    [InlineData("models", ' ')]
    public void A_hostile_text_costs_little(string member, char sign)
    {
        var file = JsonNode.Parse(Example)!;
        file["affected"]![0]![member] = new JsonArray(new string(sign, 200_000) + "*%");
        var started = System.Diagnostics.Stopwatch.StartNew();
        Assert.NotEmpty(Read(file.ToJsonString()).Faults);
        Assert.True(started.Elapsed < TimeSpan.FromSeconds(5), started.Elapsed.ToString());
    }

    [Fact]
    public void A_byte_order_mark_makes_no_difference()
    {
        var (notice, faults) = RuleFile.Recall(
            new byte[] { 0xEF, 0xBB, 0xBF }
                .Concat(Encoding.UTF8.GetBytes(Example))
                .ToArray()
        );
        Assert.Empty(faults);
        Assert.Equal("WH-SN-26-04", notice!.Reference);
    }

    [Theory]
    [InlineData("maker")]
    [InlineData("reference")]
    [InlineData("on")]
    [InlineData("demands")]
    [InlineData("readAt")]
    [InlineData("affected")]
    public void What_is_missing_is_named(string member)
    {
        var file = JsonNode.Parse(Example)!.AsObject();
        file.Remove(member);
        Assert.Contains(Read(file.ToJsonString()).Faults, f => f.Contains(member, StringComparison.Ordinal));
    }

    private static RuleFile<SafetyNotice> Read(string json) => RuleFile.Recall(Encoding.UTF8.GetBytes(json));

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "ExamDocs.sln")))
            folder = folder.Parent!;
        return folder.FullName;
    }
}
