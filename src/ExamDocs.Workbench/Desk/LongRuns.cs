using System.Collections.Concurrent;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;

namespace ExamDocs.Workbench.Desk;

/// <summary>
/// Does long work of one kind piece by piece, apart from any page: a closed tab or a sleeping machine stops nothing, and what was
/// interrupted goes on where it was when it is asked for again.
/// </summary>
internal sealed class LongRuns<TResult> : IAsyncDisposable
    where TResult : class
{
    private readonly ConcurrentDictionary<string, LongRun<TResult>> _runs = new(StringComparer.Ordinal);
    private readonly SemaphoreSlim _one = new(1, 1);

    /// <summary>The latest of this id; null where there was none since the program started.</summary>
    public LongRun<TResult>? Of(string id) => _runs.GetValueOrDefault(id);

    /// <summary>Starts, unless that of this id is at work already.</summary>
    /// <param name="id">What it is about.</param>
    /// <param name="run">The run.</param>
    /// <param name="work">Does it, and gives what came of it and why it stopped; null where it did not.</param>
    public void Start(string id, LongRun<TResult> run, Func<CancellationToken, Task<(TResult Result, string? Failure)>> work)
    {
        var kept = _runs.AddOrUpdate(id, run, (_, other) => other.IsAtWork ? other : run);
        if (ReferenceEquals(kept, run))
            _ = Task.Run(() => RunAsync(run, work));
        else
            run.Dispose();
    }

    public async ValueTask DisposeAsync()
    {
        foreach (var run in _runs.Values.Where(r => r.IsAtWork))
            run.Stop();
        await _one.WaitAsync(TimeSpan.FromSeconds(30));
        _one.Dispose();
    }

    private async Task RunAsync(LongRun<TResult> run, Func<CancellationToken, Task<(TResult Result, string? Failure)>> work)
    {
        var (result, failure) = await DoneAsync(run, work);
        try
        {
            if (failure is not null)
                run.Undo();
        }
        catch (Exception e) when (RunFailure.Is(e))
        {
            failure = RunFailure.Sentence(e);
        }
        (run.Result, run.Failure) = (result, failure);
    }

    private async Task<(TResult? Result, string? Failure)> DoneAsync(
        LongRun<TResult> run,
        Func<CancellationToken, Task<(TResult Result, string? Failure)>> work
    )
    {
        try
        {
            await _one.WaitAsync(run.Stopping);
            try
            {
                return await work(run.Stopping);
            }
            finally
            {
                _one.Release();
            }
        }
        catch (Exception e)
        {
            // Whatever it is, the page must not wait for ever.
            return (null, await FailureOfAsync(e));
        }
    }

    /// <summary>Why a run stopped, in a sentence for the page.</summary>
    private static async Task<string> FailureOfAsync(Exception failure)
    {
        if (failure is OperationCanceledException)
            return RunFailure.ByUser;
        if (failure is OutputRefusedException)
            return failure.Message;
        if (RunFailure.Is(failure))
            return RunFailure.Sentence(failure);
        await Console.Error.WriteLineAsync(failure.ToString());
        return "the program made a mistake; what is out is whole, and the terminal shows what helps to mend it";
    }
}
