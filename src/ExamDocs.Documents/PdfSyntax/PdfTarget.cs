using System.Globalization;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;

namespace ExamDocs.Documents.PdfSyntax;

/// <summary>
/// A new file made of the objects of another, some of them replaced and some added. The same objects give the same bytes.
/// </summary>
internal sealed class PdfTarget(PdfSource source)
{
    private readonly SortedDictionary<int, ReadOnlyMemory<byte>> _objects = new(source.Objects.ToDictionary(o => o.Number, o => o.Body));

    private readonly SortedDictionary<int, long> _offsets = [];

    public void Replace(int number, byte[] body) => _objects[number] = body;

    /// <returns>The number of the new object.</returns>
    public int Add(byte[] body)
    {
        var number = _objects.Keys.LastOrDefault() + 1;
        _objects[number] = body;
        return number;
    }

    /// <inheritdoc cref="Add(byte[])"/>
    public int Add(string body) => Add(Encoding.Latin1.GetBytes(body));

    /// <summary>A stream, packed.</summary>
    /// <param name="entries">Its dictionary, without length and packing.</param>
    public static byte[] Stream(string entries, ReadOnlySpan<byte> content) => PackedStream(entries, Packed(content));

    /// <inheritdoc cref="Stream"/>
    public static byte[] PackedStream(string entries, ReadOnlySpan<byte> packed) => PlainStream(entries + "/Filter /FlateDecode\n", packed);

    /// <summary>A stream that can be read in the file as it lies there.</summary>
    /// <inheritdoc cref="Stream"/>
    public static byte[] PlainStream(string entries, ReadOnlySpan<byte> content)
    {
        var head = string.Create(CultureInfo.InvariantCulture, $"<<{entries}/Length {content.Length}>>\nstream\n");
        return [.. Encoding.Latin1.GetBytes(head), .. content, .. "\nendstream"u8];
    }

    /// <summary>The whole file. Its identifier is made of what it holds (ISO 32000-1, 14.4).</summary>
    public byte[] Write(int catalog, int info)
    {
        using var file = new MemoryStream();
        // The second line, of bytes beyond ASCII, tells programs that the file is not text (ISO 19005-3, 6.1.2).
        file.Write(Latin("%PDF-1.7\n%\u00E2\u00E3\u00CF\u00D3\n"));
        foreach (var (number, body) in _objects)
        {
            _offsets[number] = file.Position;
            file.Write(Latin(string.Create(CultureInfo.InvariantCulture, $"{number} 0 obj\n")));
            file.Write(body.Span);
            file.Write("\nendobj\n"u8);
        }
        var id = Convert.ToHexString(SHA256.HashData(file.GetBuffer().AsSpan(0, (int)file.Length)).AsSpan(0, 16));
        WriteTable(
            file,
            _offsets,
            string.Create(CultureInfo.InvariantCulture, $"/Root {catalog} 0 R\n/Info {info} 0 R\n/ID [<{id}> <{id}>]")
        );
        return file.ToArray();
    }

    /// <summary>Where in the file that was written last an object begins.</summary>
    public int PlaceOf(int number) => (int)_offsets[number];

    private static void WriteTable(MemoryStream file, SortedDictionary<int, long> offsets, string trailer)
    {
        var (table, size) = (file.Position, offsets.Keys.Last() + 1);
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"xref\n0 {size}\n0000000000 65535 f \n");
        for (var number = 1; number < size; number++)
            text.Append(
                offsets.TryGetValue(number, out var at)
                    ? at.ToString("0000000000", CultureInfo.InvariantCulture) + " 00000 n \n"
                    : "0000000000 65535 f \n"
            );
        text.Append(CultureInfo.InvariantCulture, $"trailer\n<</Size {size}\n{trailer}>>\nstartxref\n{table}\n%%EOF\n");
        file.Write(Latin(text.ToString()));
    }

    /// <summary>Packed as a stream of a file is.</summary>
    public static byte[] Packed(ReadOnlySpan<byte> content)
    {
        using var packed = new MemoryStream();
        using (var pack = new ZLibStream(packed, CompressionLevel.Optimal, leaveOpen: true))
            pack.Write(content);
        return packed.ToArray();
    }

    private static byte[] Latin(string text) => Encoding.Latin1.GetBytes(text);
}
