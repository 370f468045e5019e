namespace ExamDocs.Intake.Workbook.Package;

/// <summary>Counts what a part unpacks to, and compares it at its end with the check sum of the archive: one bit changed on the way may be a digit.</summary>
internal sealed class SummedStream(Stream inner, uint checkSum, ReadingBudget budget) : Stream
{
    private readonly Crc32 _sum = new();

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    /// <exception cref="InvalidDataException">The part is at its end, and is not what was packed.</exception>
    public override int Read(Span<byte> buffer)
    {
        var read = inner.Read(buffer);
        _sum.Add(buffer[..read]);
        budget.Unpacked(read);
        return read > 0 || buffer.IsEmpty || _sum.Value == checkSum ? read : throw new InvalidDataException("the part is not what was packed");
    }

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        if (disposing)
            inner.Dispose();
        base.Dispose(disposing);
    }
}
