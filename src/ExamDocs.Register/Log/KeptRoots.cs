namespace ExamDocs.Register.Log;

/// <summary>The checkpoints that a register keeps of its own log, compared one by one with the log as it is gone through.</summary>
internal sealed class KeptRoots : IDisposable
{
    private readonly IEnumerator<Checkpoint> _kept;
    private readonly HashSet<string> _others = new(StringComparer.Ordinal);
    private string? _broken;
    private string? _origin;
    private long _sound;
    private bool _isThere;

    /// <param name="kept">By size; each is asked for once.</param>
    public KeptRoots(IEnumerable<Checkpoint> kept)
    {
        _kept = kept.GetEnumerator();
        Next();
    }

    /// <summary>The last one that was seen; null where there is none.</summary>
    public Checkpoint? Last { get; private set; }

    /// <summary>Compares those of a size with the root of the log of that size.</summary>
    public void At(MerkleFrontier log)
    {
        for (; _isThere && _kept.Current.Size <= log.Size; Next())
        {
            if (_broken is not null)
                continue;
            if (_kept.Current.Size == log.Size && _kept.Current.Root.Span.SequenceEqual(log.Root()))
                _sound = log.Size;
            // Once one root is off, all later ones are.
            else
                _broken =
                    $"The register's checkpoint of {LogCheck.Invariant(_kept.Current.Size)} does not hold: "
                    + $"{LogCheck.Between(_sound, _kept.Current.Size)}.";
        }
    }

    /// <summary>One sentence for each thing that is wrong, once the log is gone through.</summary>
    /// <param name="count">Its entries.</param>
    public IEnumerable<string> Faults(long count)
    {
        while (_isThere)
            Next();
        foreach (var origin in _others)
            yield return $"A checkpoint that the register keeps is of another register: {origin}.";
        if (_broken is not null)
            yield return _broken;
        if (Last?.Size > count)
            yield return $"The log was cut: the register's own checkpoint is of {LogCheck.Invariant(Last.Size)}, "
                + $"{LogCheck.Invariant(count)} are there.";
        if ((Last?.Size ?? 0) is var covered && covered < count)
            yield return FormattableString.Invariant($"No checkpoint of the register covers the log entries from {covered} on.");
    }

    public void Dispose() => _kept.Dispose();

    private void Next()
    {
        _isThere = _kept.MoveNext();
        if (!_isThere)
            return;
        Last = _kept.Current;
        _origin ??= Last.Origin;
        if (!string.Equals(Last.Origin, _origin, StringComparison.Ordinal))
            _others.Add(Last.Origin);
    }
}
