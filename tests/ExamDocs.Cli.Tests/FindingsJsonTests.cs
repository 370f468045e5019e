using System.Text.Json;
using System.Text.Json.Nodes;

namespace ExamDocs.Cli.Tests;

/// <summary>The file of <c>check --json</c>: examdocs-findings/1, which other programs read.</summary>
public sealed class FindingsJsonTests : IDisposable
{
    private readonly Examdocs _examdocs = new();

    [Fact]
    public async Task Its_members_are_these_in_this_order()
    {
        var root = await CheckAsync(Records.ExampleJson);

        Assert.Equal(["format", "items", "findings"], Names(root), StringComparer.Ordinal);
        Assert.Equal("examdocs-findings/1", (string?)root["format"]);
        Assert.All(root["items"]!.AsArray(), i =>
            Assert.Equal(["id", "outcome", "until", "nextExaminationBy", "reasons", "case"], Names(i!), StringComparer.Ordinal)
        );
        Assert.All(root["items"]!.AsArray().SelectMany(i => i!["case"]!.AsArray()), e =>
        {
            Assert.Equal(["heading", "bearing", "text", "code", "source"], Names(e!), StringComparer.Ordinal);
            Assert.Contains(
                (string?)e!["heading"],
                new[] { "identity", "history", "decisive", "judged", "advisory", "measurements", "limits", "doubts" }
            );
            Assert.Contains((string?)e["bearing"], new[] { "for", "neutral", "open", "against" });
        });
        Assert.All(root["items"]!.AsArray().SelectMany(i => i!["reasons"]!.AsArray()), r =>
        {
            Assert.Equal(["code", "text", "source"], Names(r!), StringComparer.Ordinal);
            Assert.Matches(@"\A(W([1-9]|10)|U[0-6]|D[1-3])\z", (string)r!["code"]!);
        });
        Assert.NotEmpty(root["findings"]!.AsArray());
        Assert.All(root["findings"]!.AsArray(), f =>
            Assert.Equal(
                ["code", "severity", "item", "location", "message", "hint", "source", "followsFrom"],
                Names(f!),
                StringComparer.Ordinal
            )
        );
    }

    [Fact]
    public async Task Items_stand_in_the_order_of_the_inputs()
    {
        var (first, second) = (Records.Cut(), Records.Small());
        (first["visit"]!["reference"], second["visit"]!["reference"]) = ("V-FIRST", "V-SECOND");
        // The same cord would be withdrawn in the second too.
        (second["items"]![0]!["id"], second["items"]![0]!["serial"], second["examinations"]![0]!["item"]) = ("COR-12", "another", "COR-12");
        var root = await CheckAsync(first.Write(_examdocs, "first.json"), Records.ExampleJson, second.Write(_examdocs, "second.json"));

        var expected = new[] { "COR-11" }.Concat(Records.Example()["items"]!.AsArray().Select(i => (string)i!["id"]!)).Append("COR-12");
        Assert.Equal(expected, root["items"]!.AsArray().Select(i => (string)i!["id"]!), StringComparer.Ordinal);
        Assert.Equal("withdraw", (string?)root["items"]![0]!["outcome"]);
        Assert.Equal("fit", (string?)root["items"]!.AsArray()[^1]!["outcome"]);
    }

    [Fact]
    public async Task Until_is_null_unless_fit_until()
    {
        var items = (await CheckAsync(Records.ExampleJson))["items"]!.AsArray();

        Assert.All(items, i =>
            Assert.Equal(string.Equals((string)i!["outcome"]!, "fit-until", StringComparison.Ordinal), i["until"] is not null)
        );
        Assert.Equal("2026-07-31", (string?)items.Single(i => (string)i!["id"]! is "BRG-08")!["until"]);
        Assert.All(items.Where(i => (string)i!["outcome"]! is "withdraw" or "undetermined"), i => Assert.Null(i!["nextExaminationBy"]));
    }

    [Fact]
    public async Task A_place_in_json_is_a_pointer_and_in_a_workbook_a_cell()
    {
        var json = await CheckAsync(Records.ExampleJson);
        var workbook = await CheckAsync(Records.ExampleWorkbook);

        Assert.All(json["findings"]!.AsArray(), f =>
            Assert.StartsWith($"{Records.ExampleJson}#/", (string)f!["location"]!, StringComparison.Ordinal)
        );
        Assert.All(workbook["findings"]!.AsArray(), f =>
        {
            Assert.StartsWith($"{Records.ExampleWorkbook}!", (string)f!["location"]!, StringComparison.Ordinal);
            Assert.Matches(@"![^!]+![A-Z]+[0-9]+\z", (string)f["location"]!);
        });
    }

    [Fact]
    public async Task The_example_comes_out_the_same_from_json_and_workbook()
    {
        var json = await CheckAsync(Records.ExampleJson);
        var workbook = await CheckAsync(Records.ExampleWorkbook);

        Assert.Equal(62, json["items"]!.AsArray().Count);
        Assert.Equal(ById(json), ById(workbook));
    }

    public void Dispose() => _examdocs.Dispose();

    private async Task<JsonObject> CheckAsync(params string[] inputs)
    {
        var run = await _examdocs.RunAsync(["check", .. inputs, "--json", "findings.json", "--replace"]);
        Assert.Equal(0, run.ExitCode);
        return JsonNode
            .Parse(await File.ReadAllTextAsync(_examdocs.At("findings.json"), TestContext.Current.CancellationToken))!
            .AsObject();
    }

    private static IEnumerable<string> Names(JsonNode node) => node.AsObject().Select(m => m.Key);

    private static SortedDictionary<string, string> ById(JsonObject findings) =>
        new(
            findings["items"]!
                .AsArray()
                .ToDictionary(i => (string)i!["id"]!, i => i!.ToJsonString(new JsonSerializerOptions()), StringComparer.Ordinal),
            StringComparer.Ordinal
        );
}
