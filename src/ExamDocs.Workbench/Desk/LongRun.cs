using ExamDocs.UseCases.Issuing;

namespace ExamDocs.Workbench.Desk;

/// <summary>Work that takes its time: under way, or done.</summary>
/// <param name="isOutdated">Whether what it was made from has changed since; null where it cannot.</param>
/// <param name="undo">Takes away what it has begun, where nothing comes of it; null where what is out stays out.</param>
public sealed class LongRun<TResult>(Func<bool>? isOutdated = null, Action? undo = null) : IDisposable
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

    /// <summary>How far it is; null while it waits for other work.</summary>
    public RunProgress? Progress { get; private set; }

    public void Tell(RunProgress progress) => Progress = progress;

    /// <summary>The document in hand is finished; what is out stays out.</summary>
    public void Stop() => _stop.Cancel();

    internal void Undo() => undo?.Invoke();

    public void Dispose() => _stop.Dispose();
}
