using System.Text.Json.Nodes;

namespace ExamDocs.Cli.Tests;

/// <summary>A saw contact typed "clera" is named at its place, and never passes.</summary>
public sealed class MisspeltStateTests : IDisposable
{
    private const string Bridge = "BRG-01";

    private readonly Examdocs _examdocs = new();

    [Fact]
    public async Task In_json()
    {
        var record = Records.Example();
        var at = record["examinations"]!
            .AsArray()
            .ToList()
            .FindIndex(e => (string)e!["item"]! is Bridge && (e["examinedOn"] is null || (string)e["examinedOn"]! is "2026-05-11"));
        var observations = record["examinations"]![at]!["observations"]!.AsArray();
        var line = observations.ToList().FindIndex(o => (string)o!["criterion"]! is "saw-contact");
        Records.SetState(record, "saw-contact", "clera", at);

        await Expect(record.Write(_examdocs, "visit.json"), $"visit.json#/examinations/{at}/observations/{line}/state");
    }

    [Fact]
    public async Task In_a_workbook()
    {
        File.Copy(Records.ExampleWorkbook, _examdocs.At("visit.xlsx"));
        var cell = WorkbookCell.Retype(_examdocs.At("visit.xlsx"), "Rope bridges", Bridge, "saw-contact", "clera");

        await Expect("visit.xlsx", $"visit.xlsx!{cell}");
    }

    [Fact]
    public async Task It_gets_a_hold_label_and_no_place_on_a_report()
    {
        var record = Records.Small();
        Records.SetState(record, "saw-contact", "clera");

        var run = await _examdocs.RunAsync("issue", record.Write(_examdocs, "visit.json"), "--out", "out");

        Assert.Equal(1, run.ExitCode);
        Assert.Equal(
            ["Q-2"],
            _examdocs.Files().Where(f => f.EndsWith(".pdf", StringComparison.Ordinal)).Select(f => Path.GetFileName(f)[..3]),
            StringComparer.Ordinal
        );
        Assert.Contains("COR-11: no report or certificate", run.Err, StringComparison.Ordinal);
    }

    public void Dispose() => _examdocs.Dispose();

    private async Task Expect(string input, string place)
    {
        var run = await _examdocs.RunAsync("check", input, "--json", "findings.json");

        Assert.Equal(1, run.ExitCode);
        var findings = JsonNode.Parse(await File.ReadAllTextAsync(_examdocs.At("findings.json"), TestContext.Current.CancellationToken))!;
        var there = findings["findings"]!
            .AsArray()
            .Where(f => (string)f!["severity"]! is "error" && string.Equals((string?)f["location"], place, StringComparison.Ordinal))
            .ToList();
        Assert.Equal(["CON016", "INT005"], there.Select(f => (string)f!["code"]!).Order(StringComparer.Ordinal), StringComparer.Ordinal);
        var finding = there.Single(f => (string)f!["code"]! is "CON016")!;
        var said = (string)finding["message"]! + (string)finding["hint"]!;
        Assert.DoesNotContain("not-applicable", said, StringComparison.Ordinal);
        Assert.All(["clera", "clear", "doubt", "defect", "no-sign", "not-examined"], word =>
            Assert.Contains(word, said, StringComparison.Ordinal)
        );
        var other = there.Single(f => (string)f!["code"]! is "INT005")!["followsFrom"];
        Assert.Equal(("CON016", place), ((string?)other!["code"], (string?)other["location"]));
        Assert.Null(finding["followsFrom"]);
        Assert.Contains(
            $"error at {place[(place.LastIndexOfAny(['#', '!']) + (place.Contains('#', StringComparison.Ordinal) ? 0 : 1))..]}",
            run.Err,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("INT005", run.Err, StringComparison.Ordinal);
        var item = findings["items"]!.AsArray().Single(i => (string)i!["id"]! is Bridge)!;
        Assert.Equal("undetermined", (string?)item["outcome"]);
    }
}
