using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Issuing;

namespace ExamDocs.Cli.Progress;

/// <summary>Where nobody looks on, as in a log: a line for every 5 % of a stage with at least twenty parts.</summary>
internal sealed class ProgressLines(RunClock clock, TextWriter error)
{
    /// <summary>Lines of a stage: one for every 5 %.</summary>
    private const int Most = 20;

    private (RunStage Stage, int Lines) _said;

    /// <summary>The latest line; null while the run was not long enough for one.</summary>
    public Message? Last { get; private set; }

    public void Tell(RunProgress progress)
    {
        var words = clock.Note(progress);
        if (progress.Of < Most)
            return;
        var lines = (int)((long)progress.Done * Most / progress.Of);
        var before = _said.Stage == progress.Stage ? _said.Lines : 0;
        _said = (progress.Stage, Math.Max(lines, before));
        if (lines <= before)
            return;
        Last = words;
        error.WriteLine(Screen.Say(words));
    }
}
