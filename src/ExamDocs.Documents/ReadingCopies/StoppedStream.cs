namespace ExamDocs.Documents.ReadingCopies;

/// <summary>Bytes in memory for a library to read or write. Once the reading is told to stop, every call throws.</summary>
internal sealed class StoppedStream : MemoryStream
{
    private readonly CancellationToken _stop;

    /// <summary>To write.</summary>
    public StoppedStream(CancellationToken stop) => _stop = stop;

    /// <summary>To read.</summary>
    public StoppedStream(byte[] bytes, CancellationToken stop)
        : base(bytes, writable: false) => _stop = stop;

    /// <exception cref="OperationCanceledException">It is stopped.</exception>
    public override int ReadByte()
    {
        _stop.ThrowIfCancellationRequested();
        return base.ReadByte();
    }

    /// <inheritdoc cref="ReadByte"/>
    public override int Read(byte[] buffer, int offset, int count)
    {
        _stop.ThrowIfCancellationRequested();
        return base.Read(buffer, offset, count);
    }

    /// <inheritdoc cref="ReadByte"/>
    public override int Read(Span<byte> buffer)
    {
        _stop.ThrowIfCancellationRequested();
        return base.Read(buffer);
    }

    /// <inheritdoc cref="ReadByte"/>
    public override long Seek(long offset, SeekOrigin loc)
    {
        _stop.ThrowIfCancellationRequested();
        return base.Seek(offset, loc);
    }

    /// <inheritdoc cref="ReadByte"/>
    public override void WriteByte(byte value)
    {
        _stop.ThrowIfCancellationRequested();
        base.WriteByte(value);
    }

    /// <inheritdoc cref="ReadByte"/>
    public override void Write(byte[] buffer, int offset, int count)
    {
        _stop.ThrowIfCancellationRequested();
        base.Write(buffer, offset, count);
    }

    /// <inheritdoc cref="ReadByte"/>
    public override void Write(ReadOnlySpan<byte> buffer)
    {
        _stop.ThrowIfCancellationRequested();
        base.Write(buffer);
    }
}
