using System.CommandLine;
using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Issuing;
using Spectre.Console;

namespace ExamDocs.Cli.Progress;

/// <summary>
/// Shows on standard error how far a long run is: a bar on a terminal, lines elsewhere, nothing with <c>--quiet</c>. Standard output is
/// left to results.
/// </summary>
internal static class ProgressScreen
{
    /// <param name="parsed">The command line.</param>
    /// <param name="run">The run, which tells how far it is; it writes nothing to the screen meanwhile.</param>
    public static async Task<T> ShowAsync<T>(ParseResult parsed, Func<Action<RunProgress>?, Task<T>> run)
    {
        if (parsed.GetValue(CommonOptions.Quiet))
            return await run(null);
        var (clock, error) = (new RunClock(TimeProvider.System), Console.Error);
        var terminal = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(error) });
        if (!Console.IsErrorRedirected && terminal.Profile.Capabilities.Ansi)
        {
            var shown = await OnTerminalAsync(terminal, clock, run);
            Sum(clock.Summary(), error);
            return shown;
        }
        var lines = new ProgressLines(clock, error);
        var result = await run(lines.Tell);
        if (lines.Last is { } last)
            Sum(clock.Summary(last), error);
        return result;
    }

    /// <summary>A bar with the stage, what is done, how fast, and how long it will still take; gone when the run is.</summary>
    internal static Task<T> OnTerminalAsync<T>(IAnsiConsole terminal, RunClock clock, Func<Action<RunProgress>?, Task<T>> run)
    {
        // The library fails on a window of fewer lines than it draws, and some terminals say that they have none.
        (terminal.Profile.Width, terminal.Profile.Height) = (Math.Max(terminal.Profile.Width, 60), Math.Max(terminal.Profile.Height, 10));
        return terminal
            .Progress()
            .AutoClear(true)
            // Drawn by the run itself: what goes wrong on a thread of the library's own would end the program.
            .AutoRefresh(false)
            .Columns(new ProgressBarColumn(), new TaskDescriptionColumn { Alignment = Justify.Left })
            .StartAsync(context =>
            {
                var bar = context.AddTask(Screen.Say(RunProgress.StageIs(RunStage.Reading)));
                return run(progress =>
                {
                    bar.Description = Markup.Escape(Screen.Say(clock.Note(progress)));
                    (bar.MaxValue, bar.Value) = (Math.Max(progress.Of, 1), progress.Done);
                    context.Refresh();
                });
            });
    }

    private static void Sum(IEnumerable<Message> lines, TextWriter error)
    {
        foreach (var line in lines)
            error.WriteLine(Screen.Say(line));
    }
}
