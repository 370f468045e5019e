using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace ExamDocs.Documents.ReadingCopies;

/// <summary>
/// Whether lists and dictionaries of a file lie within each other deeper than in anybody's document, its packed objects among them: the
/// library that reads strangers' files would come to the end of its stack.
/// </summary>
internal static partial class PdfNesting
{
    public const int Deepest = 200;

    /// <summary>Packed objects of one stream, unpacked; bytes, inclusive.</summary>
    private const int LargestUnpacked = 64 * 1024 * 1024;

    /// <exception cref="OperationCanceledException">It is stopped.</exception>
    public static bool IsTooDeep(ReadOnlySpan<byte> pdf, CancellationToken stop)
    {
        var (depth, begin) = (0, 0);
        for (var at = 0; at < pdf.Length; at++)
        {
            if (pdf[at..].StartsWith("stream"u8))
            {
                stop.ThrowIfCancellationRequested();
                var rest = pdf[(at + "stream"u8.Length)..];
                var end = rest.IndexOf("endstream"u8);
                if (IsPackedTooDeep(pdf[begin..at], end < 0 ? rest : rest[..end]))
                    return true;
                at = end < 0 ? pdf.Length : at + "stream"u8.Length + end + "endstream"u8.Length;
                (depth, begin) = (0, Math.Min(at, pdf.Length));
            }
            else if (!IsWithin(pdf[at], ref depth))
                return true;
        }
        return false;
    }

    private static bool IsWithin(byte sign, ref int depth)
    {
        depth =
            sign is (byte)'[' or (byte)'<' ? depth + 1
            : sign is (byte)']' or (byte)'>' ? Math.Max(0, depth - 1)
            : depth;
        return depth <= Deepest;
    }

    /// <param name="before">What stands before the stream, its dictionary at the end.</param>
    /// <param name="stream">With the end of line before it.</param>
    private static bool IsPackedTooDeep(ReadOnlySpan<byte> before, ReadOnlySpan<byte> stream)
    {
        var words = Hidden().Replace(Encoding.Latin1.GetString(before), found => Unhidden(found.Groups["digits"].Value));
        if (!words.Contains("/ObjStm", StringComparison.Ordinal))
            return false;
        var packed = stream.TrimStart("\r\n"u8);
        if (!words.Contains("/Filter", StringComparison.Ordinal) && !words.Contains("/F ", StringComparison.Ordinal))
            return IsListTooDeep(packed);
        try
        {
            using var unpacked = new ZLibStream(new MemoryStream(packed.ToArray()), CompressionMode.Decompress);
            var list = new byte[LargestUnpacked + 1];
            var length = unpacked.ReadAtLeast(list, list.Length, throwOnEndOfStream: false);
            return length > LargestUnpacked || IsListTooDeep(list.AsSpan(0, length));
        }
        // Packed in another way, locked or damaged.
        catch (InvalidDataException)
        {
            return true;
        }
    }

    private static bool IsListTooDeep(ReadOnlySpan<byte> list)
    {
        var depth = 0;
        foreach (var sign in list)
        {
            if (!IsWithin(sign, ref depth))
                return true;
        }
        return false;
    }

    /// <summary>A name may have any of its letters as a number.</summary>
    [GeneratedRegex("#(?<digits>[0-9A-Fa-f]{2})", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Hidden();

    private static string Unhidden(string digits) =>
        ((char)byte.Parse(digits, NumberStyles.HexNumber, CultureInfo.InvariantCulture)).ToString();
}
