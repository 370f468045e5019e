using System.Buffers.Binary;

namespace ExamDocs.Intake.Photos;

/// <summary>
/// Goes through the segments of a JPEG file from its beginning to its end mark, without unpacking it (ISO/IEC 10918-1,
/// annex B).
/// </summary>
internal ref struct JpegHeader
{
    private const int StartOfScan = 0xDA;
    private const int EndOfImage = 0xD9;

    private readonly ReadOnlySpan<byte> _file;
    private int _at;
    private int _components;
    private int _scans;
    private bool _inPasses;
    private long _coefficients;
    private PictureHeader? _size;

    private JpegHeader(ReadOnlySpan<byte> file)
    {
        _file = file;
        _at = 2;
    }

    /// <exception cref="PhotoRefusedException">It is damaged, or of a kind that we do not print.</exception>
    public static PictureHeader Read(ReadOnlySpan<byte> file)
    {
        var header = new JpegHeader(file);
        while (header.Marker() is var marker and not EndOfImage)
            header.Segment(marker);
        return header._size is { } size && header._scans > 0
            ? (size with { BytesHeldWhole = header._inPasses ? header._coefficients * sizeof(short) : 0 }).WithinLimits()
            : throw PhotoRefusedException.Damaged();
    }

    private int Marker()
    {
        if (Byte() != 0xFF)
            throw PhotoRefusedException.Damaged();
        int marker;
        do marker = Byte();
        while (marker == 0xFF);
        return marker;
    }

    private void Segment(int marker)
    {
        if (marker is 0x01 or (>= 0xD0 and <= 0xD7))
            return;
        if (marker is 0 or 0xD8 || _at + 2 > _file.Length)
            throw PhotoRefusedException.Damaged();
        var length = BinaryPrimitives.ReadUInt16BigEndian(_file[_at..]);
        if (length < 2 || _at + length > _file.Length)
            throw PhotoRefusedException.Damaged();
        var body = _file.Slice(_at + 2, length - 2);
        _at += length;
        if (marker is >= 0xC0 and <= 0xCF and not (0xC4 or 0xC8 or 0xCC))
            Frame(marker, body);
        else if (marker is StartOfScan)
            Scan(body);
    }

    private void Frame(int marker, ReadOnlySpan<byte> body)
    {
        if (_size is not null || body.Length < 6 || body.Length < 6 + (3 * body[5]))
            throw PhotoRefusedException.Damaged();
        _components = body[5];
        if (_components == 4)
            throw new PhotoRefusedException(
                PhotoRules.NotPrintable,
                $"is a JPEG in the four colours of printing presses (CMYK)",
                $"Open it in an image program and save it as JPEG in RGB colours."
            );
        if (marker > 0xC2 || body[0] != 8 || _components is not (1 or 3))
            throw new PhotoRefusedException(PhotoRules.NotPrintable, $"is a rare kind of JPEG that we do not read");
        var (height, width) = (BinaryPrimitives.ReadUInt16BigEndian(body[1..]), BinaryPrimitives.ReadUInt16BigEndian(body[3..]));
        if (height == 0 || width == 0)
            throw PhotoRefusedException.Damaged();
        _size = new PictureHeader(width, height, 0).WithinLimits();
        _inPasses = marker == 0xC2;
        _coefficients = Coefficients(width, height, body[6..]);
    }

    /// <summary>How many values the whole picture has, over all colours, in whole blocks of 8 by 8.</summary>
    private readonly long Coefficients(int width, int height, ReadOnlySpan<byte> components)
    {
        var (mostAcross, mostDown, blocks) = (1, 1, 0);
        for (var n = 0; n < _components; n++)
        {
            var (across, down) = (components[(3 * n) + 1] >> 4, components[(3 * n) + 1] & 15);
            if (across is 0 or > 4 || down is 0 or > 4)
                throw PhotoRefusedException.Damaged();
            (mostAcross, mostDown, blocks) = (Math.Max(mostAcross, across), Math.Max(mostDown, down), blocks + (across * down));
        }
        return Units(width, mostAcross) * Units(height, mostDown) * blocks * 64;
    }

    private static long Units(int side, int blocks) => (side + (8 * blocks) - 1) / (8 * blocks);

    private void Scan(ReadOnlySpan<byte> body)
    {
        if (_size is null || body.IsEmpty)
            throw PhotoRefusedException.Damaged();
        _inPasses |= body[0] < _components;
        if (++_scans > PhotoLimits.Scans)
            throw new PhotoRefusedException(PhotoRules.NotPrintable, $"is a JPEG stored in more passes than any program needs");
        SkipPacked();
    }

    /// <summary>To the next mark that ends the packed part: what is stuffed, and restart marks, belong to it.</summary>
    private void SkipPacked()
    {
        while (true)
        {
            var mark = _file[_at..].IndexOf((byte)0xFF);
            if (mark < 0 || _at + mark + 1 >= _file.Length)
                throw PhotoRefusedException.Damaged();
            _at += mark;
            if (_file[_at + 1] is not (0 or (>= 0xD0 and <= 0xD7)))
                return;
            _at += 2;
        }
    }

    private int Byte() => _at < _file.Length ? _file[_at++] : throw PhotoRefusedException.Damaged();
}
