using System.Collections.Concurrent;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.Workbench.Desk;

/// <summary>One issuing of a visit: at work, or done.</summary>
public sealed class IssueRun(DeskVisit visit, string stamp) : IDisposable
{
    private readonly CancellationTokenSource _stop = new();

    /// <summary>Whether something was dropped or typed since: it is not part of what is issued.</summary>
    public bool IsOutdated => !string.Equals(stamp, visit.Stamp, StringComparison.Ordinal);

    public CancellationToken Stopping => _stop.Token;

    public IssueResult? Result { get; set; }

    /// <summary>Why it stopped, in a sentence; null where it did not.</summary>
    public string? Failure { get; set; }

    public bool IsAtWork => Result is null && Failure is null;

    /// <summary>Documents in the folder by now.</summary>
    public int Documents => Directory.Exists(visit.DocumentFolder) ? Directory.EnumerateFiles(visit.DocumentFolder, "*.pdf").Count() : 0;

    /// <summary>The document in hand is finished; what is out stays out.</summary>
    public void Stop() => _stop.Cancel();

    public void Dispose() => _stop.Dispose();
}

/// <summary>
/// Issues visits one after the other, apart from any page: a closed tab or a sleeping machine stops nothing, and what was interrupted
/// goes on where it was when it is asked for again.
/// </summary>
internal sealed class IssueRuns(WorkbenchRequest request, Who who) : IAsyncDisposable
{
    private readonly ConcurrentDictionary<string, IssueRun> _runs = new(StringComparer.Ordinal);
    private readonly SemaphoreSlim _one = new(1, 1);

    public IssueRun? Of(DeskVisit visit) => _runs.GetValueOrDefault(visit.Id);

    /// <summary>Starts, unless it is at work already.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="perItem">One report for each item.</param>
    /// <param name="reason">Why an earlier version is corrected; null for nothing.</param>
    public IssueRun Start(DeskVisit visit, bool perItem, string? reason)
    {
        var run = new IssueRun(visit, visit.Stamp);
        var kept = _runs.AddOrUpdate(visit.Id, run, (_, other) => other.IsAtWork ? other : run);
        if (ReferenceEquals(kept, run))
            _ = Task.Run(() => RunAsync(run, visit, perItem, reason));
        else
            run.Dispose();
        return kept;
    }

    public async ValueTask DisposeAsync()
    {
        foreach (var run in _runs.Values.Where(r => r.IsAtWork))
            run.Stop();
        await _one.WaitAsync(TimeSpan.FromSeconds(30));
        _one.Dispose();
    }

    private async Task RunAsync(IssueRun run, DeskVisit visit, bool perItem, string? reason)
    {
        try
        {
            await _one.WaitAsync(run.Stopping);
            try
            {
                request.Register.MakeFolder();
                run.Result = await IssueDocuments.RunAsync(
                    new IssueRequest
                    {
                        Inputs = visit.Inputs,
                        OutFolder = visit.DocumentFolder,
                        RegisterPath = request.Register.Place,
                        Today = request.Today(),
                        Rules = request.Rules,
                        Style = who.Style(request.Now()),
                        PerItem = perItem,
                        Reason = reason,
                    },
                    run.Stopping
                );
                run.Failure = run.Result.Failure;
            }
            finally
            {
                _one.Release();
            }
        }
        catch (Exception e)
        {
            // Whatever it is, the page must not wait for ever.
            run.Failure = await FailureOfAsync(e);
        }
    }

    /// <summary>Why a run stopped, in a sentence for the page.</summary>
    public static async Task<string> FailureOfAsync(Exception failure)
    {
        if (failure is OperationCanceledException)
            return "stopped as asked; what is out is whole, issue again to go on";
        if (failure is OutputRefusedException)
            return failure.Message;
        if (RunFailure.Is(failure))
            return RunFailure.Sentence(failure);
        await Console.Error.WriteLineAsync(failure.ToString());
        return "the program made a mistake; what is out is whole, and the terminal shows what helps to mend it";
    }
}
