namespace ExamDocs.Cli.Tests;

/// <summary>A double click opens the pages; whoever types in a terminal gets what was typed.</summary>
public sealed class DoubleClickTests
{
    private static readonly DoubleClick Opened = new(isOne: true);
    private static readonly DoubleClick Typed = new(isOne: false);

    [Fact]
    public void A_double_click_opens_the_workbench() => Assert.Equal(["workbench"], Opened.Meaning([]));

    [Fact]
    public void What_was_typed_stays()
    {
        Assert.Empty(Typed.Meaning([]));
        Assert.Equal(["check", "visit.xlsx"], Typed.Meaning(["check", "visit.xlsx"]));
        Assert.Equal(["check", "visit.xlsx"], Opened.Meaning(["check", "visit.xlsx"]));
    }

    [Fact]
    public void The_window_stays_open_until_a_failure_was_read()
    {
        var (keys, screen) = (new StringReader("\nmore"), new StringWriter());
        Opened.WaitUntilRead(ExitCode.Stopped, keys, screen);
        Assert.Contains("Press Enter", screen.ToString(), StringComparison.Ordinal);
        Assert.Equal("more", keys.ReadLine());
    }

    [Theory]
    [InlineData(true, ExitCode.Done)]
    [InlineData(false, ExitCode.Stopped)]
    public void Nobody_else_is_asked_for_a_key(bool isOne, int code)
    {
        var (keys, screen) = (new StringReader("next"), new StringWriter());
        new DoubleClick(isOne).WaitUntilRead(code, keys, screen);
        Assert.Empty(screen.ToString());
        Assert.Equal("next", keys.ReadLine());
    }

    // Without arguments, in a terminal or from a script, as ever.
    [Fact]
    public async Task Without_arguments_the_help_is_named()
    {
        using var program = new Examdocs();
        var run = await program.RunAsync();
        Assert.Equal(ExitCode.Refused, run.ExitCode);
        Assert.Contains("examdocs --help", run.Err, StringComparison.Ordinal);
    }
}
