using System.Globalization;
using ExamDocs.Documents.Browsing;
using ExamDocs.Register.Model;
using ExamDocs.Register.Work;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Working;

namespace ExamDocs.UseCases.Commands;

/// <summary>
/// Works at the jobs that machines share: takes one part after the other, and prints it as <c>issue</c> does. Beside it prints pages that
/// other machines ask for.
/// </summary>
public sealed class DoWork
{
    /// <summary>Days by which a job's day of issue may lie before or after this machine's; common practice, no source.</summary>
    private const int MostDaysBack = 31;

    private const int MostDaysAhead = 1;

    private static readonly TimeSpan AfterFailure = TimeSpan.FromSeconds(15);

    private static readonly TimeSpan AfterAnother = TimeSpan.FromSeconds(3);

    private readonly WorkRequest _request;
    private readonly SharedWork _work;
    private readonly Browser _browser;
    private (int Parts, int Documents, int Held) _did;

    private DoWork(WorkRequest request, SharedWork work, Browser browser) => (_request, _work, _browser) = (request, work, browser);

    /// <exception cref="RegisterRefusedException">The register is in a file, or has no list of work.</exception>
    /// <exception cref="PrintException">There is no browser that prints: a worker without one takes nothing from the others.</exception>
    /// <exception cref="IOException">The server cannot be reached, or the connection was lost.</exception>
    public static async Task<WorkResult> RunAsync(WorkRequest request, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        TemporaryFolder.RemoveLeftBehind();
        using var work = SharedWork.Open(request.RegisterPath);
        await using var browser = await Browser.StartAsync();
        using var pages = SharedPages.Open(request.RegisterPath);
        var worker = new DoWork(request, work, browser);
        var others = new PagesForOthers(pages, browser, request.Lease, request.Poll);
        using var end = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        var printing = others.RunAsync(end.Token);
        var working = worker.WorkAsync(end.Token);
        // Whichever ends first, by its own failure or because nothing is left, ends the other.
        await Task.WhenAny(working, printing);
        await end.CancelAsync();
        await Task.WhenAll(working, printing);
        return new(worker._did.Parts, worker._did.Documents, others.Printed, worker._did.Held);
    }

    private async Task WorkAsync(CancellationToken cancellation)
    {
        while (!cancellation.IsCancellationRequested)
        {
            if (_work.Claim(ProgramVersion.Current, _request.Lease) is { } claimed)
            {
                await WorkAtAsync(claimed, cancellation);
                continue;
            }
            if (_request.UntilEmpty && _work.IsIdle(ProgramVersion.Current))
                return;
            try
            {
                await _work.WaitAsync(_request.Poll, cancellation);
            }
            catch (OperationCanceledException)
            {
                return;
            }
        }
    }

    /// <summary>Works at one job for as long as it has parts to be begun.</summary>
    private async Task WorkAtAsync(ClaimedPart first, CancellationToken cancellation)
    {
        JobSession? session = null;
        try
        {
            for (ClaimedPart? claimed = first; claimed is not null; claimed = Next(first.Part.Job, cancellation))
            {
                session = await DoAsync(claimed, session, cancellation);
                if (session is null)
                    return;
            }
        }
        finally
        {
            if (session is not null)
                await session.DisposeAsync();
        }
    }

    private ClaimedPart? Next(int job, CancellationToken cancellation) =>
        cancellation.IsCancellationRequested ? null : _work.Claim(ProgramVersion.Current, _request.Lease, job);

    /// <returns>The session to go on with; null where it is at an end.</returns>
    private async Task<JobSession?> DoAsync(ClaimedPart claimed, JobSession? session, CancellationToken cancellation)
    {
        await using var kept = new KeptClaim(_work, claimed, _request.Lease, cancellation);
        try
        {
            session ??= Open(claimed.Part.Job);
            if (claimed.Part.Stage == JobStages.Decide)
            {
                Divide(claimed, session);
                return session;
            }
            var (result, failure) = await session.DoAsync(claimed, kept.Stop);
            if (result is not null)
            {
                Finish(claimed, result);
                return session;
            }
            if (!kept.IsLost)
                PutBack(claimed, failure!, session.StoppedBy, cancellation);
        }
        catch (JobRefusedException refused)
        {
            _did.Held++;
            _work.Refuse(claimed, refused.Message);
            Tell(claimed, $"refused: {refused.Message.ReplaceLineEndings(" ")}");
        }
        catch (Exception e) when (RunFailure.Is(e))
        {
            PutBack(claimed, RunFailure.Sentence(e), e, cancellation);
        }
        catch (Exception e) when (e is not OperationCanceledException)
        {
            // The same would happen again, here and to every other worker.
            _did.Held++;
            _work.Fail(claimed, $"the program has a fault: {e.GetType().Name}: {e.Message}");
            Tell(claimed, $"failed: the program has a fault: {e.GetType().Name}: {e.Message}");
        }
        if (session is not null)
            await session.DisposeAsync();
        return null;
    }

    private JobSession Open(int job)
    {
        var (day, today) = (_work.Find(job)?.AsOf, _request.Today());
        return day is { } asOf && (asOf < today.PlusDays(-MostDaysBack) || asOf > today.PlusDays(MostDaysAhead))
            ? throw new JobRefusedException(
                $"it is dated {asOf.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture)}, more than {MostDaysBack} days ago or in the "
                    + "future by the clock of this machine"
            )
            : JobSession.Open(_work, job, _request.RegisterPath, _browser);
    }

    private void Divide(ClaimedPart claimed, JobSession session)
    {
        var (decided, parts, said) = session.Decide();
        if (_work.Divide(claimed, ProgramVersion.Current, decided, parts, said))
            Tell(claimed, $"decided: {decided.Visits.Count} visits, {parts.Count} parts");
    }

    private void Finish(ClaimedPart claimed, PartResult result)
    {
        if (!_work.Finish(claimed, result))
            return;
        _did = (_did.Parts + 1, _did.Documents + result.Documents.Count - result.IssuedBefore, _did.Held);
        if (result.Documents.Count > 0)
            Tell(claimed, $"{result.Documents.Count} documents, {result.IssuedBefore} of them issued before");
    }

    /// <summary>Stopped by its user, or kept waiting by another run with the same document, an attempt does not count.</summary>
    private void PutBack(ClaimedPart claimed, string why, Exception? stoppedBy, CancellationToken cancellation)
    {
        var counts = !cancellation.IsCancellationRequested && stoppedBy is not DocumentInProgressException;
        var wait =
            cancellation.IsCancellationRequested ? TimeSpan.Zero
            : counts ? AfterFailure * claimed.Attempts
            : AfterAnother;
        if (counts && claimed.Attempts >= SharedWork.MostAttempts)
            _did.Held++;
        _work.PutBack(claimed, why, wait, counts);
        Tell(claimed, $"put back: {why}");
    }

    private void Tell(ClaimedPart claimed, string what) =>
        _request.Told?.Invoke(string.Create(CultureInfo.InvariantCulture, $"job {claimed.Part.Job}: {what}"));
}
