using System.Collections.Concurrent;
using System.Diagnostics;
using System.Text;
using ExamDocs.Documents.Browsing;
using ExamDocs.Register.Work;
using ExamDocs.UseCases.Issuing;

namespace ExamDocs.UseCases.Working;

/// <summary>No worker prints the pages that it is asked for, or they can no longer be reached.</summary>
public sealed class WorkersAway(string message, Exception? inner = null) : PrintException(message, inner);

/// <summary>
/// Has pages printed by the workers of a register. What comes back is read back, numbered and signed here, as if a browser of this
/// machine had printed it.
/// </summary>
internal sealed class PagesByWorkers : IPagePrinter, IAsyncDisposable
{
    /// <summary>A worker that hangs has a page for its lease; the next one prints it then.</summary>
    private static readonly TimeSpan LongestSilence = TimeSpan.FromMinutes(5);

    private static readonly TimeSpan Poll = TimeSpan.FromSeconds(1);

    private readonly SharedPages _asked;
    private readonly SharedPages _answered;
    private readonly ConcurrentDictionary<Guid, TaskCompletionSource<byte[]>> _waiting = [];
    private readonly CancellationTokenSource _end = new();
    private readonly Stopwatch _silence = Stopwatch.StartNew();
    private readonly Task _listening;
    private volatile WorkersAway? _lost;

    private PagesByWorkers(SharedPages asked, SharedPages answered)
    {
        (_asked, _answered) = (asked, answered);
        _listening = Task.Run(ListenAsync);
    }

    /// <param name="place">Address of a register on a server.</param>
    /// <exception cref="Register.Model.RegisterRefusedException">It is in a file, or has no list of work.</exception>
    /// <exception cref="IOException">The server cannot be reached.</exception>
    public static PagesByWorkers Open(string place)
    {
        var asked = SharedPages.Open(place);
        try
        {
            return new(asked, SharedPages.Open(place));
        }
        catch
        {
            asked.Dispose();
            throw;
        }
    }

    /// <summary>Call it before a number is taken.</summary>
    /// <param name="longest">How long to wait for a worker.</param>
    /// <exception cref="WorkersAway">None prints a page in that time.</exception>
    public async Task RequireAsync(TimeSpan longest, CancellationToken cancellation)
    {
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        limit.CancelAfter(longest);
        try
        {
            await PrintAsync("<p>word", limit.Token);
        }
        catch (OperationCanceledException) when (!cancellation.IsCancellationRequested)
        {
            throw Away();
        }
    }

    public async Task<byte[]> PrintAsync(string html, CancellationToken cancellation = default)
    {
        var (id, page) = (Guid.NewGuid(), Encoding.UTF8.GetBytes(html));
        if (page.Length > SharedPages.MostBytes)
            throw new PrintFailed("the page is larger than one that workers print; leave --workers out");
        var printed = new TaskCompletionSource<byte[]>(TaskCreationOptions.RunContinuationsAsynchronously);
        if (_waiting.IsEmpty)
            _silence.Restart();
        _waiting[id] = printed;
        try
        {
            Ask(id, page);
            // Told of after it looked for pages that wait, it would not see this one.
            if (_lost is { } lost)
                printed.TrySetException(lost);
            return await printed.Task.WaitAsync(cancellation);
        }
        catch (OperationCanceledException)
        {
            _asked.TakeBack(id);
            throw;
        }
        finally
        {
            _waiting.TryRemove(id, out _);
        }
    }

    public async ValueTask DisposeAsync()
    {
        await _end.CancelAsync();
        await _listening;
        _end.Dispose();
        _answered.Dispose();
        _asked.Dispose();
    }

    private async Task ListenAsync()
    {
        try
        {
            while (true)
            {
                foreach (var answer in _answered.Answers(_asked.Asker))
                    Take(answer);
                if (!_waiting.IsEmpty && _silence.Elapsed > LongestSilence)
                    throw Away();
                await _answered.WaitAsync(Poll, _end.Token);
            }
        }
        catch (OperationCanceledException)
        {
            // Nobody waits any longer.
        }
        catch (Exception e) when (RunFailure.Is(e))
        {
            _lost = e as WorkersAway ?? Lost(e);
            foreach (var page in _waiting.Values)
                page.TrySetException(_lost);
        }
    }

    private void Take(AnsweredPage answer)
    {
        _silence.Restart();
        if (!_waiting.TryGetValue(answer.Id, out var page))
            return;
        if (answer.Pdf is { } pdf)
            page.TrySetResult(pdf);
        else
            page.TrySetException(new PrintFailed(answer.Why ?? "a worker could not print it"));
    }

    private void Ask(Guid id, byte[] page)
    {
        try
        {
            _asked.Ask(id, page, ProgramVersion.Current);
        }
        catch (Exception e) when (RunFailure.Is(e))
        {
            throw Lost(e);
        }
    }

    private WorkersAway Away() =>
        new(
            $"no worker of the register at {_asked.Place} prints: start examdocs work on a machine with this version of the program, "
                + "or leave --workers out"
        );

    private static WorkersAway Lost(Exception failure) => new($"the workers cannot be reached: {RunFailure.Sentence(failure)}", failure);
}
