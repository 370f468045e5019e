using System.Collections.Concurrent;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.Workbench.Desk;

/// <summary>Checks what lies on the desk, and keeps the answer while neither the files nor the register nor the day change.</summary>
internal sealed class CheckedVisits(WorkbenchRequest request) : IDisposable
{
    /// <summary>What the register's files are called, after its own name.</summary>
    private static readonly string[] Files = ["", "-wal"];

    /// <summary>More at once would only make each of them slower.</summary>
    private readonly SemaphoreSlim _room = new(2, 2);

    private readonly ConcurrentDictionary<string, (string State, IReadOnlyList<CheckedInput> Inputs)> _kept = new(StringComparer.Ordinal);

    public async Task<IReadOnlyList<CheckedInput>> OfAsync(DeskVisit visit, CancellationToken cancellation)
    {
        var (state, paths) = (State(visit), visit.Inputs);
        if (_kept.TryGetValue(visit.Id, out var kept) && string.Equals(kept.State, state, StringComparison.Ordinal))
            return kept.Inputs;
        await _room.WaitAsync(cancellation);
        try
        {
            var place = request.Register;
            var inputs = await Task.Run(
                () => CheckAgainstRegister.All(paths, request.Today(), request.Rules, place.Exists ? place.Place : null),
                cancellation
            );
            _kept[visit.Id] = (state, inputs);
            return inputs;
        }
        finally
        {
            _room.Release();
        }
    }

    public void Dispose() => _room.Dispose();

    private string State(DeskVisit visit) => FormattableString.Invariant($"{visit.Stamp} {request.Today()} {RegisterState()}");

    /// <summary>Changes with whatever is written into the register; for a shared one nothing is kept.</summary>
    private string RegisterState()
    {
        if (request.Register.Place.Contains("://", StringComparison.Ordinal))
            return Guid.NewGuid().ToString();
        return string.Join(
            ' ',
            Files
                .Select(ending => new FileInfo(request.Register.Place + ending))
                .Select(f => f.Exists ? FormattableString.Invariant($"{f.Length}/{f.LastWriteTimeUtc.Ticks}") : "none")
        );
    }
}
