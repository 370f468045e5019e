using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.Signing;

/// <summary>Where in a file the signature stands: all but this is signed (ISO 32000-1, 12.8.1).</summary>
/// <param name="From">Where its opening bracket is.</param>
/// <param name="To">Just after its closing bracket.</param>
internal sealed record SignaturePlace(int From, int To)
{
    /// <summary>Digits of a number in a range, so that it can be written once the file is.</summary>
    private const int Width = 10;

    /// <summary>The two entries before they are filled in.</summary>
    /// <param name="room">Bytes for the signature.</param>
    public static string Empty(int room) => $"/ByteRange {Range(0, 0, 0)}\n/Contents <{new string('0', 2 * room)}>";

    /// <summary>The place that <see cref="Empty"/> left after this place in the file.</summary>
    public static SignaturePlace After(ReadOnlySpan<byte> file, int at)
    {
        var from = at + file[at..].IndexOf("/Contents <"u8) + "/Contents ".Length;
        return new SignaturePlace(from, from + file[from..].IndexOf((byte)'>') + 1);
    }

    public byte[] DigestOf(ReadOnlySpan<byte> file, SignatureDigest digest) => digest.Of(file[..From], file[To..]);

    /// <summary>Says in the file what is signed.</summary>
    public void WriteRange(Span<byte> file)
    {
        var mark = file[..From].LastIndexOf("/ByteRange "u8) + "/ByteRange ".Length;
        Encoding.ASCII.GetBytes(Range(From, To, file.Length - To), file[mark..]);
    }

    /// <returns>False where there is not room enough.</returns>
    public bool TryWrite(Span<byte> file, byte[] signature)
    {
        var digits = Encoding.ASCII.GetBytes(Convert.ToHexString(signature));
        return digits.Length <= To - From - 2 && digits.AsSpan().TryCopyTo(file[(From + 1)..]);
    }

    /// <summary>The place that a signature's dictionary names, where all the rest of the file is signed.</summary>
    /// <returns>Null where it names another.</returns>
    public static SignaturePlace? Of(ReadOnlyMemory<byte> file, PdfDictionary signature)
    {
        if (
            signature.Find("Contents") is not { Span: [(byte)'<', .., (byte)'>'] } contents
            || signature.Word("ByteRange") is not { } range
            || !MemoryMarshal.TryGetArray(file, out var whole)
            || !MemoryMarshal.TryGetArray(contents, out var part)
        )
            return null;
        var from = part.Offset - whole.Offset;
        var place = new SignaturePlace(from, from + part.Count);
        return string.Equals(range, Range(place.From, place.To, file.Length - place.To), StringComparison.Ordinal) ? place : null;
    }

    /// <summary>Blanks after the last number, not zeros before the first: some readers take those for octal.</summary>
    private static string Range(int from, int to, int rest)
    {
        var numbers = string.Create(CultureInfo.InvariantCulture, $"[0 {from} {to} {rest}");
        return numbers.PadRight("[0".Length + (3 * (Width + 1))) + "]";
    }
}
