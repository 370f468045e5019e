using System.Collections.Concurrent;
using ExamDocs.Core.Records;
using ExamDocs.UseCases.Commands;

namespace ExamDocs.Workbench.Desk;

/// <summary>One sweep of a safety notice: at work, or done.</summary>
public sealed class RecallRun(KeptNotice notice) : IDisposable
{
    private readonly CancellationTokenSource _stop = new();

    public CancellationToken Stopping => _stop.Token;

    public SweepResult? Result { get; set; }

    /// <summary>Why it stopped, in a sentence; null where it did not.</summary>
    public string? Failure { get; set; }

    public bool IsAtWork => Result is null && Failure is null;

    /// <summary>Papers in the folder by now.</summary>
    public int Papers => Directory.Exists(notice.PaperFolder) ? Directory.EnumerateFiles(notice.PaperFolder, "*.pdf").Count() : 0;

    /// <summary>The paper in hand is finished; what is out stays out.</summary>
    public void Stop() => _stop.Cancel();

    public void Dispose() => _stop.Dispose();
}

/// <summary>Takes out of use what notices name, one after the other and apart from any page.</summary>
internal sealed class RecallRuns(WorkbenchRequest request, Who who) : IAsyncDisposable
{
    private readonly ConcurrentDictionary<string, RecallRun> _runs = new(StringComparer.Ordinal);
    private readonly SemaphoreSlim _one = new(1, 1);

    public RecallRun? Of(KeptNotice notice) => _runs.GetValueOrDefault(notice.Id);

    /// <summary>Starts, unless it is at work already.</summary>
    public void Start(KeptNotice notice)
    {
        var run = new RecallRun(notice);
        var kept = _runs.AddOrUpdate(notice.Id, run, (_, other) => other.IsAtWork ? other : run);
        if (ReferenceEquals(kept, run))
            _ = Task.Run(() => RunAsync(run, notice));
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

    private async Task RunAsync(RecallRun run, KeptNotice notice)
    {
        try
        {
            await _one.WaitAsync(run.Stopping);
            try
            {
                var now = who.Now;
                run.Result = await SweepRecall.RunAsync(
                    new SweepRequest
                    {
                        Notice = notice.Notice,
                        RegisterPath = request.Register.Place,
                        Today = request.Today(),
                        OutFolder = notice.PaperFolder,
                        Examiner = new Person
                        {
                            Name = now.Name,
                            Address = Typed(now.Address),
                            Qualifications = Typed(now.Qualifications),
                        },
                        Rules = request.Rules,
                        Style = who.Style(request.Now()),
                    },
                    run.Stopping
                );
                run.Failure = run.Result.Issued?.Failure;
            }
            finally
            {
                _one.Release();
            }
        }
        catch (Exception e)
        {
            // Whatever it is, the page must not wait for ever.
            run.Failure = await IssueRuns.FailureOfAsync(e);
        }
    }

    private static string? Typed(string text) => text.Length > 0 ? text : null;
}
