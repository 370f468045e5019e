namespace ExamDocs.Cli.Tests.Commands;

/// <summary>A pack goes into the file named and the one beside it, and its gaps onto the screen.</summary>
public sealed class PackCommandTests
{
    [Fact]
    public async Task Both_files_are_written_and_the_gaps_named_with_exit_code_1()
    {
        using var examdocs = new Examdocs();
        var record = Records.Small();
        await File.WriteAllTextAsync(examdocs.At("visit.json"), record.ToJsonString(), TestContext.Current.CancellationToken);
        Assert.Equal(0, (await examdocs.RunAsync("register", "import", "visit.json")).ExitCode);
        var employer = (string)record["visit"]!["employer"]!["name"]!;

        var run = await examdocs.RunAsync("pack", "--employer", employer, "--out", "audit.zip");

        Assert.Equal((1, ""), (run.ExitCode, run.Err));
        Assert.Contains("no-document-in-date", run.Out, StringComparison.Ordinal);
        Assert.Contains("audit-reading-copy.pdf", run.Out, StringComparison.Ordinal);
        Assert.True(File.Exists(examdocs.At("audit.zip")) && File.Exists(examdocs.At("audit-reading-copy.pdf")));

        var again = await examdocs.RunAsync("pack", "--employer", employer, "--out", "audit.zip");
        Assert.Equal(2, again.ExitCode);
        Assert.Contains("audit.zip", again.Err, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("audit.pdf", "Nobody", null, ".zip")]
    [InlineData("audit.zip", "Nobody", null, "Nobody")]
    [InlineData("audit.zip", "Nobody", "nowhere", "nowhere")]
    public async Task What_cannot_be_packed_is_refused_and_nothing_written(string file, string employer, string? evidence, string said)
    {
        using var examdocs = new Examdocs();
        await File.WriteAllTextAsync(examdocs.At("visit.json"), Records.Small().ToJsonString(), TestContext.Current.CancellationToken);
        Assert.Equal(0, (await examdocs.RunAsync("register", "import", "visit.json")).ExitCode);
        string[] more = evidence is null ? [] : ["--evidence", evidence];

        var run = await examdocs.RunAsync(["pack", "--employer", employer, "--out", file, .. more]);

        Assert.Equal(2, run.ExitCode);
        Assert.Contains(said, run.Err, StringComparison.Ordinal);
        Assert.DoesNotContain(examdocs.Files(), f => f.StartsWith("audit", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Ids_come_from_the_command_line_and_from_a_file()
    {
        using var examdocs = new Examdocs();
        var record = Records.Small();
        await File.WriteAllTextAsync(examdocs.At("visit.json"), record.ToJsonString(), TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync(examdocs.At("list.txt"), "X-1\n\n  X-2 \n", TestContext.Current.CancellationToken);
        Assert.Equal(0, (await examdocs.RunAsync("register", "import", "visit.json")).ExitCode);

        var run = await examdocs.RunAsync(
            "pack",
            "--employer",
            (string)record["visit"]!["employer"]!["name"]!,
            "--items",
            "X-3",
            "list.txt",
            "--out",
            "audit.zip"
        );

        Assert.Equal(2, run.ExitCode);
        Assert.Contains("X-3, X-1, X-2", run.Err, StringComparison.Ordinal);
    }
}
