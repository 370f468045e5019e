namespace ExamDocs.UseCases.Issuing;

/// <summary>Counts what a run has done and tells it. Several documents may be done at a time.</summary>
/// <param name="told">Called after each step, never twice at a time; null for nobody.</param>
internal sealed class RunSteps(Action<RunProgress>? told)
{
    /// <summary>A run that begins with a stage.</summary>
    public static RunSteps From(RunStage stage, Action<RunProgress>? told)
    {
        var steps = new RunSteps(told);
        steps.Begin(stage);
        return steps;
    }

    private readonly Lock _counting = new();
    private RunProgress _now = new(RunStage.Reading, 0, 0, 0);
    private int _refused;

    /// <param name="stage">What begins now.</param>
    /// <param name="of">How many documents or parts it has; 0 where it does not count.</param>
    public void Begin(RunStage stage, int of = 0) => Tell(now => now with { Stage = stage, Done = 0, Of = of });

    /// <summary>More documents, or fewer, than were expected.</summary>
    public void Expect(int more) => Tell(now => now with { Of = now.Of + more });

    /// <summary>Refusals that are known without printing.</summary>
    public void Refuse(int more) => Tell(now => now with { Refused = now.Refused + more }, more);

    /// <summary>One more is done: issued, or held back.</summary>
    /// <param name="heldBack">Refusals so far because something could not be printed.</param>
    public void Next(int heldBack = 0) =>
        Tell(now => now with { Done = now.Done + 1, Of = Math.Max(now.Of, now.Done + 1), Refused = _refused + heldBack });

    private void Tell(Func<RunProgress, RunProgress> change, int refused = 0)
    {
        lock (_counting)
        {
            _refused += refused;
            _now = change(_now);
            told?.Invoke(_now);
        }
    }
}
