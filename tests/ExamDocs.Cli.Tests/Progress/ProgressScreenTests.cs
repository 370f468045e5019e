using ExamDocs.Cli.Progress;
using ExamDocs.UseCases.Issuing;
using Spectre.Console;

namespace ExamDocs.Cli.Tests.Progress;

/// <summary>How far a run is, in words, in lines and as a bar.</summary>
public sealed class ProgressScreenTests
{
    private readonly StringWriter _error = new();
    private readonly Seconds _time = new();

    [Fact]
    public void Elsewhere_than_on_a_terminal_there_is_a_line_for_every_5_percent()
    {
        var lines = new ProgressLines(new RunClock(_time), _error);
        Run(lines.Tell, of: 200);
        var said = Said();
        Assert.Equal(20, said.Length);
        Assert.Equal("printing: 10 of 200; 2 a second, 1 min 35 s left", said[0]);
        Assert.Equal("printing: 100 of 200, 3 refused; 2 a second, 50 s left", said[9]);
        Assert.Equal("printing: 200 of 200, 3 refused; 2 a second", said[^1]);
    }

    [Fact]
    public void Twenty_are_told_one_by_one_and_fewer_not_at_all()
    {
        var (few, more) = (new ProgressLines(new RunClock(_time), _error), new ProgressLines(new RunClock(_time), _error));
        Run(few.Tell, of: 19);
        Assert.Equal((null, ""), (few.Last, _error.ToString()));
        Run(more.Tell, of: 20);
        Assert.Equal((20, Said()[^1]), (Said().Length, Screen.Say(more.Last!)));
    }

    [Fact]
    public void The_summary_says_how_fast_and_where_the_time_went()
    {
        var clock = new RunClock(_time);
        Run(p => clock.Note(p), of: 200);
        _time.Now += 0.5;
        Assert.Equal(
            [
                "printing: 200 of 200, 3 refused; 2 a second",
                "took 1 min 44 s: reading 1 s, checking 3 s, printing 1 min 40 s, writing 0.5 s",
            ],
            clock.Summary().Select(Screen.Say)
        );
    }

    [Fact]
    public void What_the_last_line_said_is_not_said_again()
    {
        var clock = new RunClock(_time);
        var lines = new ProgressLines(clock, _error);
        Run(lines.Tell, of: 200);
        Assert.StartsWith("took ", Screen.Say(Assert.Single(clock.Summary(lines.Last))), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_a_stopped_run_the_summary_says_what_was_done()
    {
        var clock = new RunClock(_time);
        clock.Note(new(RunStage.Printing, 0, 100, 0));
        _time.Now += 10;
        clock.Note(new(RunStage.Printing, 40, 100, 0));
        Assert.Equal("printing: 40 of 100; 4 a second", Screen.Say(clock.Summary().First()));
    }

    [Theory]
    [InlineData(120, 30)]
    [InlineData(1, 1)]
    public async Task On_a_terminal_of_any_size_a_bar_shows_the_words_and_is_gone_at_the_end(int width, int height)
    {
        var terminal = AnsiConsole.Create(
            new AnsiConsoleSettings
            {
                Ansi = AnsiSupport.Yes,
                ColorSystem = ColorSystemSupport.NoColors,
                Interactive = InteractionSupport.Yes,
                Out = new AnsiConsoleOutput(_error),
            }
        );
        (terminal.Profile.Width, terminal.Profile.Height) = (width, height);
        var clock = new RunClock(_time);
        var result = await ProgressScreen.OnTerminalAsync(terminal, clock, told =>
        {
            told!(new(RunStage.Printing, 0, 8, 0));
            _time.Now += 2;
            told(new(RunStage.Printing, 4, 8, 1));
            return Task.FromResult("done");
        });
        Assert.Equal("done", result);
        var words = string.Join(' ', _error.ToString().Split((char[])[' ', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("printing: 4 of 8, 1 refused; 2 a second, 2 s left", words, StringComparison.Ordinal);
        // The last thing written clears the lines of the bar.
        Assert.DoesNotContain("of 8", _error.ToString()[^20..], StringComparison.Ordinal);
    }

    /// <summary>Reads for a second, checks for three, then prints two a second, three of which are refused half-way.</summary>
    private void Run(Action<RunProgress> told, int of)
    {
        told(new(RunStage.Reading, 0, 0, 0));
        _time.Now += 1;
        told(new(RunStage.Checking, 0, 0, 0));
        _time.Now += 3;
        told(new(RunStage.Printing, 0, of, 0));
        for (var done = 1; done <= of; done++)
        {
            _time.Now += 0.5;
            told(new(RunStage.Printing, done, of, done * 2 >= of ? 3 : 0));
        }
        told(new(RunStage.Writing, 0, 0, 3));
    }

    private string[] Said() => _error.ToString().Split(Environment.NewLine, StringSplitOptions.RemoveEmptyEntries);

    private sealed class Seconds : TimeProvider
    {
        public double Now { get; set; }

        public override long TimestampFrequency => 1_000;

        public override long GetTimestamp() => (long)(Now * 1_000);
    }
}
