namespace ExamDocs.Documents.Browsing;

/// <summary>How many documents a browser prints at a time: two, or one that has it for itself.</summary>
internal sealed class PrintSlots : IDisposable
{
    private const int Most = 2;

    private readonly SemaphoreSlim _slots = new(Most, Most);
    private readonly SemaphoreSlim _oneTakesAll = new(1, 1);

    /// <summary>Waits for its turn.</summary>
    /// <param name="all">Whether nothing else may be printed meanwhile.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <returns>Ends the turn when it is disposed.</returns>
    public async Task<IDisposable> TakeAsync(bool all, CancellationToken cancellation)
    {
        var turn = new Turn(this);
        try
        {
            // Two that each had one slot would wait for each other.
            if (all)
            {
                await _oneTakesAll.WaitAsync(cancellation);
                turn.TakesAll = true;
            }
            for (; turn.Slots < (all ? Most : 1); turn.Slots++)
                await _slots.WaitAsync(cancellation);
            return turn;
        }
        catch (OperationCanceledException)
        {
            turn.Dispose();
            throw;
        }
    }

    public void Dispose()
    {
        _slots.Dispose();
        _oneTakesAll.Dispose();
    }

    private sealed class Turn(PrintSlots slots) : IDisposable
    {
        public bool TakesAll { get; set; }

        public int Slots { get; set; }

        public void Dispose()
        {
            if (Slots > 0)
                slots._slots.Release(Slots);
            if (TakesAll)
                slots._oneTakesAll.Release();
            (Slots, TakesAll) = (0, false);
        }
    }
}
