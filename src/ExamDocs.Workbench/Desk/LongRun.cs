namespace ExamDocs.Workbench.Desk;

/// <summary>Work that issues documents: under way, or done.</summary>
/// <param name="folder">Where its documents go.</param>
/// <param name="isOutdated">Whether what it was made from has changed since; null where it cannot.</param>
public sealed class LongRun<TResult>(string folder, Func<bool>? isOutdated = null) : IDisposable
    where TResult : class
{
    private readonly CancellationTokenSource _stop = new();

    /// <summary>Whether something was dropped or typed since: it is not part of what is issued.</summary>
    public bool IsOutdated => isOutdated?.Invoke() is true;

    public CancellationToken Stopping => _stop.Token;

    public TResult? Result { get; set; }

    /// <summary>Why it stopped, in a sentence; null where it did not.</summary>
    public string? Failure { get; set; }

    public bool IsAtWork => Result is null && Failure is null;

    /// <summary>Documents in the folder by now.</summary>
    public int Documents => Directory.Exists(folder) ? Directory.EnumerateFiles(folder, "*.pdf").Count() : 0;

    /// <summary>The document in hand is finished; what is out stays out.</summary>
    public void Stop() => _stop.Cancel();

    public void Dispose() => _stop.Dispose();
}
