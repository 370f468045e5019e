using System.Security.Cryptography;
using System.Text.Json.Nodes;

namespace ExamDocs.Cli.Tests;

/// <summary><c>examdocs issue</c> and <c>examdocs label</c>: exit codes, the register they use, and going on after a stop.</summary>
public sealed class IssueTests : IDisposable
{
    private readonly Examdocs _examdocs = new();

    [Fact]
    public async Task A_withdrawal_is_issued_once_and_its_label_printed_again_by_number()
    {
        var visit = Records.Cut().Write(_examdocs, "visit.json");

        var first = await _examdocs.RunAsync("issue", visit, "--out", "out");
        var second = await _examdocs.RunAsync("issue", visit, "--out", "out");
        var number = Documents().Single(d => (string)d!["kind"]! is "quarantine-label")!["number"]!.ToString();
        var label = await _examdocs.RunAsync("label", number, "--out", "again.pdf", "--start", "2", "--offset", "1.5,-0.5");
        var single = await _examdocs.RunAsync("label", number, "--out", "single.pdf", "--stock", "single-100x150");

        Assert.Equal(0, first.ExitCode);
        Assert.Equal(
            $"A register was made at {_examdocs.DefaultRegister}: numbering starts there. To use one kept elsewhere, name it "
                + "with --register; or join it with examdocs register merge.",
            first.Err.Trim()
        );
        Assert.Empty(second.Err);
        Assert.Contains("3 documents in ", first.Out, StringComparison.Ordinal);
        Assert.Equal(
            ["notice", "quarantine-label", "report"],
            Documents().Select(d => (string)d!["kind"]!).Order(StringComparer.Ordinal),
            StringComparer.Ordinal
        );
        Assert.Equal(0, second.ExitCode);
        Assert.Equal(3, second.Out.Split("(issued before)").Length - 1);
        Assert.Equal(0, label.ExitCode);
        Assert.Contains(number, label.Out, StringComparison.Ordinal);
        Assert.True(File.Exists(_examdocs.At("again.pdf")));
        Assert.Equal((0, ""), (single.ExitCode, single.Err));
        Assert.True(File.Exists(_examdocs.At("single.pdf")));
        Assert.True(File.Exists(_examdocs.DefaultRegister));
        Assert.All(Documents(), d => Assert.Equal((string?)d!["sha256"], Sha256(_examdocs.At(Path.Combine("out", (string)d["file"]!)))));
    }

    [Fact]
    public async Task One_unreadable_input_is_2_and_nothing_is_issued_or_registered()
    {
        File.WriteAllText(_examdocs.At("torn.xlsx"), "PK but no workbook");
        var visit = Records.Cut().Write(_examdocs, "visit.json");

        var issue = await _examdocs.RunAsync("issue", visit, "torn.xlsx", "--out", "out");
        var label = await _examdocs.RunAsync("label", visit, "torn.xlsx", "--out", "labels.pdf");

        Assert.Equal((2, 2), (issue.ExitCode, label.ExitCode));
        Assert.Contains("torn.xlsx: unreadable: ", issue.Err, StringComparison.Ordinal);
        Assert.Contains("torn.xlsx: unreadable: ", label.Err, StringComparison.Ordinal);
        Assert.Equal(["torn.xlsx", "visit.json"], _examdocs.Files());
    }

    [Fact]
    public async Task Without_a_browser_it_is_3_no_number_is_lost_and_the_next_run_goes_on()
    {
        var visit = Records.Small().Write(_examdocs, "visit.json");

        _examdocs.With("EXAMDOCS_BROWSER", "/nonexistent/browser");
        var stopped = await _examdocs.RunAsync("issue", visit, "--out", "out");
        _examdocs.Without("EXAMDOCS_BROWSER");
        var wentOn = await _examdocs.RunAsync("issue", visit, "--out", "out");

        Assert.Equal(3, stopped.ExitCode);
        Assert.Contains("stopped: ", stopped.Err, StringComparison.Ordinal);
        Assert.Contains("run the command again", stopped.Err, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", stopped.Err, StringComparison.Ordinal);
        Assert.Equal(0, wentOn.ExitCode);
        Assert.Equal(
            ["D", "R"],
            Documents().Select(d => ((string)d!["number"]!)[..1]).Order(StringComparer.Ordinal),
            StringComparer.Ordinal
        );
        Assert.All(Documents(), d => Assert.EndsWith("-000001", (string)d!["number"]!, StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_register_is_the_option_then_the_environment_then_the_data_folder()
    {
        var visit = Records.Small().Write(_examdocs, "visit.json");
        _examdocs.With("EXAMDOCS_REGISTER", _examdocs.At("environment.db"));
        await _examdocs.RunAsync("register", "create");
        await _examdocs.RunAsync("register", "create", "--register", "option.db");
        string[] issue = ["issue", visit, "--out", "out", "--only", "due-label"];

        await _examdocs.RunAsync(["issue", visit, "--out", "out-of-option", "--only", "due-label", "--register", "option.db"]);
        Assert.Equal((1, 0), (await Visits("option.db"), await Visits("environment.db")));
        await _examdocs.RunAsync(issue);
        Assert.Equal((1, 1), (await Visits("option.db"), await Visits("environment.db")));
        Assert.False(File.Exists(_examdocs.DefaultRegister));
        _examdocs.Without("EXAMDOCS_REGISTER");
        await _examdocs.RunAsync("issue", visit, "--out", "out-of-default", "--only", "due-label");
        Assert.Equal((1, 1, 1), (await Visits("option.db"), await Visits("environment.db"), await Visits(_examdocs.DefaultRegister)));
    }

    private async Task<int> Visits(string register) =>
        (await _examdocs.RunAsync("register", "check", "--register", register)).Out is var said
        && said.Contains(", 1 records", StringComparison.Ordinal)
            ? 1
        : said.Contains(", 0 records", StringComparison.Ordinal) ? 0
        : -1;

    [Fact]
    public async Task A_file_that_is_no_register_is_3_and_left_alone()
    {
        File.WriteAllText(_examdocs.At("examdocs.db"), "a shopping list, and no register at all");

        var run = await _examdocs.RunAsync(
            "issue",
            Records.Small().Write(_examdocs, "visit.json"),
            "--out",
            "out",
            "--register",
            "examdocs.db"
        );

        Assert.Equal(3, run.ExitCode);
        Assert.StartsWith("stopped: ", run.Err, StringComparison.Ordinal);
        Assert.Equal("a shopping list, and no register at all", File.ReadAllText(_examdocs.At("examdocs.db")));
    }

    [Fact]
    public async Task Nothing_to_label_is_0_and_said()
    {
        var run = await _examdocs.RunAsync("label", Records.Small().Write(_examdocs, "visit.json"), "--out", "labels.pdf");

        Assert.Equal(0, run.ExitCode);
        Assert.Equal("nothing to label", run.Out.Trim());
        Assert.False(File.Exists(_examdocs.At("labels.pdf")));
    }

    [Fact]
    public async Task Next_examination_labels_go_to_a_stock_of_one_s_own()
    {
        File.WriteAllText(
            _examdocs.At("mine.json"),
            """{"name":"mine","what":"a roll","pageWidthMm":74,"pageHeightMm":41,"labelWidthMm":70,"labelHeightMm":37,"leftMm":2,"topMm":2}"""
        );
        var visit = Records.Small().Write(_examdocs, "visit.json");

        await _examdocs.RunAsync("register", "create");
        var run = await _examdocs.RunAsync("label", visit, "--out", "due.pdf", "--stock", "mine.json", "--black", "--offset", "0.5,0.5");

        Assert.Equal((0, ""), (run.ExitCode, run.Err));
        Assert.Matches(@"\AD-[0-9]{4}-000001 ", run.Out);
        Assert.True(File.Exists(_examdocs.At("due.pdf")));
    }

    public void Dispose() => _examdocs.Dispose();

    private JsonArray Documents() => JsonNode.Parse(File.ReadAllText(_examdocs.At("out/documents.json")))!["documents"]!.AsArray();

    private static string Sha256(string file) => Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(file)));
}
