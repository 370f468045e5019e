using ExamDocs.Register.Work;
using ExamDocs.UseCases.Issuing;

namespace ExamDocs.UseCases.Working;

/// <summary>Prolongs the claim on a part for as long as it is worked at, and stops the work where the claim is lost.</summary>
internal sealed class KeptClaim : IAsyncDisposable
{
    /// <summary>So often within a lease; one or two may be missed.</summary>
    private const int RenewalsInALease = 4;

    private readonly CancellationTokenSource _ended = new();
    private readonly CancellationTokenSource _stop;
    private readonly Task _renewing;

    /// <param name="work">Where the claim is.</param>
    /// <param name="claimed">The part.</param>
    /// <param name="lease">How long a claim holds.</param>
    /// <param name="cancellation">Stops the work for another reason.</param>
    public KeptClaim(SharedWork work, ClaimedPart claimed, TimeSpan lease, CancellationToken cancellation)
    {
        _stop = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        _renewing = Task.Run(() => RenewAsync(work, claimed, lease), CancellationToken.None);
    }

    /// <summary>Stops the work.</summary>
    public CancellationToken Stop => _stop.Token;

    /// <summary>True where another worker may have the part by now.</summary>
    public bool IsLost { get; private set; }

    private async Task RenewAsync(SharedWork work, ClaimedPart claimed, TimeSpan lease)
    {
        using var timer = new PeriodicTimer(lease / RenewalsInALease);
        try
        {
            while (await timer.WaitForNextTickAsync(_ended.Token))
            {
                if (!work.Renew(claimed, lease))
                    break;
            }
        }
        catch (OperationCanceledException)
        {
            return;
        }
        catch (Exception e) when (RunFailure.Is(e))
        {
            // Nobody can tell whether the claim still holds.
        }
        IsLost = true;
        await _stop.CancelAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await _ended.CancelAsync();
        await _renewing;
        _ended.Dispose();
        _stop.Dispose();
    }
}
