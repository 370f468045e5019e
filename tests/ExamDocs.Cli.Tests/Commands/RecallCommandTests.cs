using System.Text.Json.Nodes;

namespace ExamDocs.Cli.Tests.Commands;

/// <summary>A maker's safety notice against a register, on the screen and as JSON.</summary>
public sealed class RecallCommandTests : IDisposable
{
    private readonly Examdocs _examdocs = new();

    public void Dispose() => _examdocs.Dispose();

    [Fact]
    public async Task An_affected_item_is_named_and_ends_with_1()
    {
        var item = await ImportAsync();
        var run = await RecallAsync((string)item["maker"]!, (string)item["serial"]!);
        Assert.Equal((1, ""), (run.ExitCode, run.Err));
        Assert.Contains($"{item["id"]}  AFFECTED, DO NOT USE: ", run.Out, StringComparison.Ordinal);
        Assert.Contains("1 affected, 0 cannot be told", run.Out, StringComparison.Ordinal);
        Assert.Contains(
            "BETROFFEN",
            (await RecallAsync((string)item["maker"]!, (string)item["serial"]!, "--language", "de")).Out,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "CONCERNÉ",
            (await RecallAsync((string)item["maker"]!, (string)item["serial"]!, "--language", "fr")).Out,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Where_it_cannot_be_told_it_ends_with_4_and_where_nothing_is_named_with_0()
    {
        var item = await ImportAsync();
        Assert.Equal(4, (await RecallAsync((string)item["maker"]!, "(none)")).ExitCode);
        Assert.Equal(0, (await RecallAsync("Tarnholm Gear", (string)item["serial"]!)).ExitCode);
    }

    [Fact]
    public async Task As_JSON_every_item_is_there_with_its_reasons()
    {
        var item = await ImportAsync();
        var run = await RecallAsync("Tarnholm Gear", (string)item["serial"]!, "--json");
        var found = JsonNode.Parse(run.Out)!["items"]!.AsArray();
        Assert.Equal("not-affected", (string?)found[0]!["verdict"]);
        Assert.Equal((string)item["id"]!, (string?)found[0]!["id"]);
        Assert.Equal($"another maker: '{item["maker"]}'", (string?)found[0]!["reasons"]![0]);
    }

    [Fact]
    public async Task A_notice_at_fault_and_a_missing_register_are_refused()
    {
        await File.WriteAllTextAsync(_examdocs.At("n.json"), "{}", TestContext.Current.CancellationToken);
        Assert.Equal(2, (await _examdocs.RunAsync("recall", "n.json")).ExitCode);
        await ImportAsync();
        var run = await _examdocs.RunAsync("recall", "n.json");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("n.json#", run.Err, StringComparison.Ordinal);
        Assert.Contains("there is no such file", (await _examdocs.RunAsync("recall", "none.json")).Err, StringComparison.Ordinal);
    }

    [Fact]
    public async Task With_out_it_is_taken_out_of_use_once_and_without_an_examiner_not_at_all()
    {
        var item = await ImportAsync();
        var (maker, serial) = ((string)item["maker"]!, (string)item["serial"]!);
        Assert.Contains("1 to withdraw, 0 to hold", (await RecallAsync(maker, serial)).Out, StringComparison.Ordinal);
        var unsigned = await RecallAsync(maker, serial, "--out", "papers");
        Assert.Equal(2, unsigned.ExitCode);
        Assert.Contains("--examiner", unsigned.Err, StringComparison.Ordinal);
        Assert.DoesNotContain(_examdocs.Files(), f => f.StartsWith("papers", StringComparison.Ordinal));

        var run = await RecallAsync(maker, serial, "--out", "papers", "--examiner", "Ada Fenn");
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("2 documents in", run.Out, StringComparison.Ordinal);
        Assert.Contains("record of the sweep: ", run.Err, StringComparison.Ordinal);
        var files = _examdocs.Files();
        var record = Assert.Single(files, f => Path.GetFileName(f).StartsWith("recall-", StringComparison.Ordinal));
        Assert.Equal(2, (await _examdocs.RunAsync("check", "visit.json", "--json", record, "--replace")).ExitCode);
        Assert.Contains("DO NOT USE", (await _examdocs.RunAsync("find", (string)item["id"]!)).Out, StringComparison.Ordinal);

        var again = await RecallAsync(maker, serial, "--out", "papers", "--examiner", "Ada Fenn");
        Assert.Contains("0 to withdraw, 0 to hold", again.Out, StringComparison.Ordinal);
        Assert.Contains("withdrawn by the sweep of", again.Out, StringComparison.Ordinal);
        Assert.Equal(files, _examdocs.Files());
    }

    private async Task<Run> RecallAsync(string maker, string serial, params string[] more)
    {
        var notice = new JsonObject
        {
            ["format"] = "examdocs-recall/1",
            ["maker"] = maker,
            ["reference"] = "SN-1",
            ["on"] = "2026-06-01",
            ["demands"] = "Take it out of use.",
            ["readAt"] = "letter",
            ["affected"] = new JsonArray(new JsonObject { ["serials"] = new JsonArray(serial) }),
        };
        await File.WriteAllTextAsync(_examdocs.At("notice.json"), notice.ToJsonString(), TestContext.Current.CancellationToken);
        return await _examdocs.RunAsync(["recall", "notice.json", .. more]);
    }

    /// <returns>The one item of the register.</returns>
    private async Task<JsonNode> ImportAsync()
    {
        var record = Records.Small();
        await File.WriteAllTextAsync(_examdocs.At("visit.json"), record.ToJsonString(), TestContext.Current.CancellationToken);
        await _examdocs.RunAsync("register", "create");
        var imported = await _examdocs.RunAsync("register", "import", "visit.json");
        Assert.True(imported.ExitCode is 0 or 1, imported.Err);
        return Assert.Single(record["items"]!.AsArray())!;
    }
}
