using System.IO.Hashing;
using ExamDocs.Intake.Binding;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>
/// Counts and sums what a part unpacks to, and stops one that goes on and on without a tag: a parser would hold such an attribute or text
/// in memory whole.
/// </summary>
internal sealed class TagDistanceStream(Stream inner, uint checkSum, ReadingBudget budget) : Stream
{
    private readonly Crc32 _sum = new();
    private int _sinceTag;

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

    public override int Read(Span<byte> buffer)
    {
        var read = inner.Read(buffer);
        if (read == 0 && buffer.Length > 0 && _sum.GetCurrentHashAsUInt32() != checkSum)
            throw new InvalidDataException("the part is not what was packed");
        _sum.Append(buffer[..read]);
        budget.Unpacked(read);
        Measure(buffer[..read]);
        return read;
    }

    public override void Flush() { }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        if (disposing)
            inner.Dispose();
        base.Dispose(disposing);
    }

    private void Measure(ReadOnlySpan<byte> bytes)
    {
        var last = bytes.LastIndexOf((byte)'<');
        var longest = _sinceTag + (last < 0 ? bytes.Length : bytes.IndexOf((byte)'<'));
        if (longest > WorkbookLimits.BytesBetweenTags)
            throw new UnreadableWorkbookException("The workbook holds a text longer than any cell can hold.");
        _sinceTag = last < 0 ? longest : bytes.Length - last;
    }
}
