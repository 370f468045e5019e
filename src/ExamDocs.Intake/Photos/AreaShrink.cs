namespace ExamDocs.Intake.Photos;

/// <summary>
/// Makes a picture smaller, fed line by line: each pixel becomes the mean of the area it covers, in whole numbers, so that
/// only one line and the result are ever held. What is see-through is laid on white.
/// </summary>
internal sealed class AreaShrink(int fromWidth, int fromHeight, int width, int height)
{
    private const int Channels = 3;

    private readonly int[] _line = new int[width * Channels];
    private readonly long[] _sums = new long[width * Channels];
    private readonly byte[] _rgba = new byte[checked(width * height * 4)];
    private int _taken;
    private int _done;

    public int Width => width;

    public int Height => height;

    /// <summary>The result, four bytes a pixel, once all lines were taken.</summary>
    public byte[] Rgba => _done == height ? _rgba : throw new InvalidOperationException("lines are missing");

    /// <param name="line">Red, green, blue and cover, a byte each; the colours already multiplied by the cover.</param>
    public void Take(ReadOnlySpan<byte> line)
    {
        Gather(line);
        // In units in which a line taken is as high as the result and a line of the result as high as the source.
        var (from, to) = ((long)_taken * height, ((long)_taken + 1) * height);
        var border = ((long)_done + 1) * fromHeight;
        Add((int)(Math.Min(to, border) - from));
        _taken++;
        if (to < border)
            return;
        Finish();
        if (to > border)
            Add((int)(to - border));
    }

    /// <summary>The sums of the line over the pixels of the result, weighed by how much of each lies within.</summary>
    private void Gather(ReadOnlySpan<byte> line)
    {
        Array.Clear(_line);
        var (target, border) = (0, (long)fromWidth);
        for (var x = 0; x < fromWidth; x++)
        {
            var pixel = line.Slice(x * 4, 4);
            var white = 255 - pixel[3];
            var end = ((long)x + 1) * width;
            var within = end <= border ? width : (int)(border - (end - width));
            Weigh(target, pixel, white, within);
            if (end < border)
                continue;
            border += fromWidth;
            target += Channels;
            if (within < width)
                Weigh(target, pixel, white, width - within);
        }
    }

    private void Weigh(int target, ReadOnlySpan<byte> pixel, int white, int weight)
    {
        var sums = _line.AsSpan(target, Channels);
        sums[0] += (pixel[0] + white) * weight;
        sums[1] += (pixel[1] + white) * weight;
        sums[2] += (pixel[2] + white) * weight;
    }

    private void Add(int weight)
    {
        for (var n = 0; n < _sums.Length; n++)
            _sums[n] += (long)_line[n] * weight;
    }

    private void Finish()
    {
        var area = (long)fromWidth * fromHeight;
        for (var x = 0; x < width; x++)
        {
            var pixel = _rgba.AsSpan(((_done * width) + x) * 4, 4);
            for (var channel = 0; channel < Channels; channel++)
                pixel[channel] = (byte)Math.Min(255, (_sums[(x * Channels) + channel] + (area / 2)) / area);
            pixel[3] = 255;
        }
        Array.Clear(_sums);
        _done++;
    }
}
