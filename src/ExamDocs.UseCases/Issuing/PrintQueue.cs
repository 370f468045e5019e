using System.Runtime.ExceptionServices;
using ExamDocs.Templates;

namespace ExamDocs.UseCases.Issuing;

/// <summary>
/// The jobs that a run has in hand. Those of one kind go some at a time: while they are printed and read back, those before them are
/// published and the next are made ready. A kind is out before the next one begins, since documents of one kind name, or depend on,
/// those of another.
/// </summary>
/// <param name="lookup">Finds out what is to be done about each.</param>
/// <param name="start">Prints them; asked for when the first is to be printed.</param>
internal sealed class PrintQueue(PrintLookup lookup, Func<Task<NumberedPrint>> start) : IDisposable
{
    /// <summary>Flushing so many to disk takes hardly longer than one; a run that is cancelled finishes them first.</summary>
    private const int MostAtOnce = 8;

    private static readonly TimeSpan LongestFinish = TimeSpan.FromSeconds(10);

    private readonly List<PrintInHand> _inHand = [];
    private NumberedPrint? _print;

    /// <summary>Does all jobs in their order.</summary>
    /// <param name="jobs">The jobs.</param>
    /// <param name="settle">Takes each with what came of it, where it was printed.</param>
    /// <param name="cancellation">Stops it; what is in hand is finished first.</param>
    public async Task RunAsync(
        IReadOnlyList<DocumentJob> jobs,
        Func<PrintInHand, NumberedOutcome?, CancellationToken, Task> settle,
        CancellationToken cancellation
    )
    {
        using var stop = new CancellationTokenSource();
        await using var finish = cancellation.Register(() => stop.CancelAfter(LongestFinish));
        try
        {
            foreach (var group in Groups(jobs))
            {
                if (_inHand.Exists(p => p.Job.Type != group[0].Type))
                    await SettleAsync(_inHand.Count, settle, stop.Token);
                if (cancellation.IsCancellationRequested)
                    break;
                var before = _inHand.Count;
                await BeginAsync(group, stop.Token);
                await SettleAsync(before, settle, stop.Token);
            }
            await SettleAsync(_inHand.Count, settle, stop.Token);
            cancellation.ThrowIfCancellationRequested();
        }
        finally
        {
            await stop.CancelAsync();
            await GiveUpAsync();
        }
    }

    private static IEnumerable<IReadOnlyList<DocumentJob>> Groups(IReadOnlyList<DocumentJob> jobs)
    {
        for (var at = 0; at < jobs.Count; )
        {
            var group = jobs.Skip(at).Take(MostAtOnce).TakeWhile(j => j.Type == jobs[at].Type).ToList();
            yield return group;
            at += group.Count;
        }
    }

    private async Task BeginAsync(IReadOnlyList<DocumentJob> jobs, CancellationToken cancellation)
    {
        var group = new List<PrintInHand>();
        foreach (var job in jobs)
            group.Add(await lookup.OfAsync(job, _inHand.Concat(group), cancellation));
        _inHand.AddRange(await BegunAsync(group, cancellation));
    }

    /// <summary>Takes those out that were begun first.</summary>
    private async Task SettleAsync(
        int count,
        Func<PrintInHand, NumberedOutcome?, CancellationToken, Task> settle,
        CancellationToken cancellation
    )
    {
        var first = _inHand.GetRange(0, count);
        _inHand.RemoveRange(0, count);
        Exception? stop = null;
        foreach (var (print, outcome) in await PublishedAsync(first))
        {
            // Those that are out are told of, whatever keeps another from being so.
            if (outcome?.Stop is { } failure)
                stop ??= failure;
            else
                await settle(print, outcome, cancellation);
        }
        if (stop is not null)
            ExceptionDispatchInfo.Throw(stop);
    }

    /// <summary>One job past all that is in hand.</summary>
    public async Task<(PrintInHand Print, NumberedOutcome? Outcome)> IssueAsync(DocumentJob job, CancellationToken cancellation) =>
        (await PublishedAsync(await BegunAsync([await lookup.OfAsync(job, [], cancellation)], cancellation)))[0];

    private async Task<IReadOnlyList<(PrintInHand Print, NumberedOutcome? Outcome)>> PublishedAsync(IReadOnlyList<PrintInHand> prints)
    {
        var printed = prints.Where(IsToPrint).ToList();
        var outcomes = new Queue<NumberedOutcome>(printed.Count > 0 ? await _print!.PublishAsync(printed) : []);
        return [.. prints.Select(p => (p, IsToPrint(p) ? outcomes.Dequeue() : null))];
    }

    /// <summary>Those that are to be printed, begun; the others as they are.</summary>
    private async Task<IReadOnlyList<PrintInHand>> BegunAsync(IReadOnlyList<PrintInHand> group, CancellationToken cancellation)
    {
        if (!group.Any(IsToPrint))
            return group;
        _print ??= await start();
        var begun = new Queue<PrintInHand>(await _print.BeginAsync([.. group.Where(IsToPrint)], cancellation));
        return [.. group.Select(p => IsToPrint(p) ? begun.Dequeue() : p)];
    }

    private static bool IsToPrint(PrintInHand print) => print.State is PrintState.ToPrint;

    /// <summary>What is still in hand when a run stops; a number that cannot be voided now is settled by the next run.</summary>
    private async Task GiveUpAsync()
    {
        try
        {
            if (_inHand.Where(IsToPrint).ToList() is { Count: > 0 } left)
                await _print!.GiveUpAsync(left, "the run stopped before it was printed");
        }
        catch (Exception e) when (RunFailure.Is(e))
        {
            // What stopped the run is told already.
        }
        _inHand.Clear();
    }

    public void Dispose() => _print?.Dispose();
}
