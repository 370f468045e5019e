using System.Collections.Concurrent;

namespace ExamDocs.Intake.Photos;

/// <summary>
/// What was unpacked once and found printable, by the SHA-256 of its bytes. A visit that is recorded on screen is checked after every
/// answer; its photos need not be unpacked each time.
/// </summary>
internal static class FoundPrintable
{
    /// <summary>A few megabytes of memory; beyond it everything is unpacked anew.</summary>
    private const int Most = 20_000;

    private static readonly ConcurrentDictionary<string, long> Pixels = new(StringComparer.Ordinal);

    public static void Add(string sha256, long pixels)
    {
        if (Pixels.Count >= Most)
            Pixels.Clear();
        Pixels[sha256] = pixels;
    }

    /// <summary>Its pixels; null where it was not unpacked yet.</summary>
    public static long? PixelsOf(string sha256) => Pixels.TryGetValue(sha256, out var pixels) ? pixels : null;
}
