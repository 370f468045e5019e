namespace ExamDocs.Cli.Tests.Commands;

/// <summary>What the records teach goes into the files that are named, and nowhere else.</summary>
public sealed class TeachCommandTests
{
    [Fact]
    public async Task The_pages_and_the_workbook_are_written_and_named()
    {
        using var examdocs = new Examdocs();
        await File.WriteAllTextAsync(examdocs.At("visit.json"), Records.Small().ToJsonString(), TestContext.Current.CancellationToken);
        Assert.Equal(0, (await examdocs.RunAsync("register", "import", "visit.json")).ExitCode);

        var run = await examdocs.RunAsync("teach", "--out", "lessons.pdf", "--workbook", "lessons.xlsx");

        Assert.Equal((0, ""), (run.ExitCode, run.Err));
        Assert.Contains("Counted: visits 1, items ", run.Out, StringComparison.Ordinal);
        Assert.Contains("lessons.pdf", run.Out, StringComparison.Ordinal);
        Assert.True(File.Exists(examdocs.At("lessons.pdf")) && File.Exists(examdocs.At("lessons.xlsx")));

        var again = await examdocs.RunAsync("teach", "--out", "lessons.pdf");

        Assert.Equal(2, again.ExitCode);
        Assert.Contains("lessons.pdf", again.Err, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_a_register_nothing_is_written()
    {
        using var examdocs = new Examdocs();

        var run = await examdocs.RunAsync("teach", "--out", "lessons.pdf", "--register", "none.db");

        Assert.Equal(2, run.ExitCode);
        Assert.Contains("none.db", run.Err, StringComparison.Ordinal);
        Assert.False(File.Exists(examdocs.At("lessons.pdf")));
    }
}
