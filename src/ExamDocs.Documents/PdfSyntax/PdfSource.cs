using System.Buffers.Text;
using System.IO.Compression;

namespace ExamDocs.Documents.PdfSyntax;

/// <summary>One object of a file as it was written, without its number and its end.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Body">All between the words obj and endobj.</param>
internal readonly record struct PdfObject(int Number, ReadOnlyMemory<byte> Body)
{
    /// <exception cref="PdfSyntaxException">It is neither a dictionary nor a stream.</exception>
    public PdfDictionary Dictionary() => PdfDictionary.Read(Body);

    /// <summary>The bytes of a stream, unpacked.</summary>
    /// <param name="most">The most that it may unpack to, bytes, inclusive.</param>
    /// <exception cref="PdfSyntaxException">It is not a stream, is packed in another way, or holds more.</exception>
    public byte[] Stream(int most)
    {
        var dictionary = Dictionary();
        var data = Packed(dictionary);
        return dictionary.Word("Filter") switch
        {
            null => data.Length <= most ? data.ToArray() : throw new PdfSyntaxException("a stream is too large"),
            "/FlateDecode" => Unpacked(data, most),
            _ => throw new PdfSyntaxException("a stream is packed in an unknown way"),
        };
    }

    /// <summary>The bytes of a stream as they lie in the file.</summary>
    /// <exception cref="PdfSyntaxException">It is not a stream.</exception>
    public ReadOnlyMemory<byte> Raw() => Packed(Dictionary());

    private ReadOnlyMemory<byte> Packed(PdfDictionary dictionary)
    {
        var lexer = new PdfLexer(Body.Span, dictionary.End);
        if (!lexer.Next() || !lexer.Is("stream"u8) || dictionary.Number("Length") is not { } length)
            throw new PdfSyntaxException("a stream is missing");
        var start = lexer.End + (Body.Span[lexer.End..].StartsWith("\r\n"u8) ? 2 : 1);
        return length >= 0 && start + (long)length <= Body.Length
            ? Body.Slice(start, length)
            : throw new PdfSyntaxException("a stream does not end");
    }

    private static byte[] Unpacked(ReadOnlyMemory<byte> data, int most)
    {
        try
        {
            using var unpack = new ZLibStream(new MemoryStream(data.ToArray()), CompressionMode.Decompress);
            using var all = new MemoryStream();
            var buffer = new byte[81_920];
            for (int read; (read = unpack.Read(buffer)) > 0; )
            {
                if (all.Length + read > most)
                    throw new PdfSyntaxException("a stream is too large");
                all.Write(buffer, 0, read);
            }
            return all.ToArray();
        }
        catch (InvalidDataException)
        {
            throw new PdfSyntaxException("a stream cannot be unpacked");
        }
    }
}

/// <summary>
/// The objects of a file with one classic cross-reference table, as the browser writes it and as <see cref="PdfTarget"/>
/// does. Anything else is refused: encryption, later changes, packed objects.
/// </summary>
internal sealed class PdfSource
{
    /// <summary>Bytes of an entry of the table; always the same (ISO 32000-1, 7.5.4), so it is read without a lexer.</summary>
    private const int EntryLength = 20;

    /// <summary>Where in an entry its kind stands: n for an object in use, f for a free number.</summary>
    private const int KindAt = 17;

    private readonly SortedDictionary<int, PdfObject> _objects = [];

    private PdfSource(PdfDictionary trailer) => Trailer = trailer;

    public PdfDictionary Trailer { get; }

    /// <summary>By number.</summary>
    public IEnumerable<PdfObject> Objects => _objects.Values;

    public PdfObject Catalog => Object(Trailer.Reference("Root"));

    /// <exception cref="PdfSyntaxException">There is none with this number.</exception>
    public PdfObject Object(int? number) =>
        number is { } n && _objects.TryGetValue(n, out var found) ? found : throw new PdfSyntaxException("an object is missing");

    /// <exception cref="PdfSyntaxException">It is a file of another kind, or damaged.</exception>
    public static PdfSource Read(ReadOnlyMemory<byte> pdf)
    {
        var table = TableAt(pdf.Span);
        var (offsets, trailerAt) = Offsets(pdf.Span, table);
        var source = new PdfSource(PdfDictionary.Read(pdf, trailerAt));
        if (source.Trailer.Has("Prev") || source.Trailer.Has("Encrypt") || source.Trailer.Has("XRefStm"))
            throw new PdfSyntaxException("it was changed after it was printed, or is locked");
        var sorted = offsets.Where(o => o.At > 0).OrderBy(o => o.At).ToList();
        for (var i = 0; i < sorted.Count; i++)
        {
            var end = i + 1 < sorted.Count ? sorted[i + 1].At : table;
            source._objects[sorted[i].Number] = Object(pdf, sorted[i].Number, sorted[i].At, end);
        }
        return source;
    }

    private static int TableAt(ReadOnlySpan<byte> pdf)
    {
        if (!pdf.StartsWith("%PDF-1."u8))
            throw new PdfSyntaxException("it is not a PDF");
        var mark = pdf.LastIndexOf("startxref"u8);
        var lexer = new PdfLexer(pdf, Math.Max(mark, 0));
        return mark > 0 && lexer.Next() && lexer.Next() && PdfNumber.Whole(lexer.Token) is { } at && at > 0 && at < mark
            ? at
            : throw new PdfSyntaxException("its table is missing");
    }

    private static (List<(int Number, int At)> Offsets, int TrailerAt) Offsets(ReadOnlySpan<byte> pdf, int table)
    {
        var lexer = new PdfLexer(pdf, table);
        if (!lexer.Next() || !lexer.Is("xref"u8) || !lexer.Next() || PdfNumber.Whole(lexer.Token) is not 0 || !lexer.Next())
            throw new PdfSyntaxException("its table is of another kind");
        var count = PdfNumber.Whole(lexer.Token) ?? 0;
        var from = lexer.End;
        while (from < pdf.Length && pdf[from] is 10 or 13 or 32)
            from++;
        if (count < 1 || from + ((long)count * EntryLength) > pdf.Length)
            throw new PdfSyntaxException("its table does not end");
        var offsets = new List<(int, int)>(count);
        for (var n = 0; n < count; n++)
        {
            var entry = pdf.Slice(from + (n * EntryLength), EntryLength);
            if (entry[KindAt] == 'n')
                offsets.Add(
                    (
                        n,
                        Utf8Parser.TryParse(entry[..10], out int at, out _) && at < table
                            ? at
                            : throw new PdfSyntaxException("its table is damaged")
                    )
                );
        }
        lexer = new PdfLexer(pdf, from + (count * EntryLength));
        return lexer.Next() && lexer.Is("trailer"u8) ? (offsets, lexer.End) : throw new PdfSyntaxException("its trailer is missing");
    }

    private static PdfObject Object(ReadOnlyMemory<byte> pdf, int number, int at, int end)
    {
        var slice = pdf[at..end];
        var lexer = new PdfLexer(slice.Span);
        if (!lexer.Next() || PdfNumber.Whole(lexer.Token) != number || !lexer.Next() || !lexer.Next() || !lexer.Is("obj"u8))
            throw new PdfSyntaxException(
                $"object {number.ToString(System.Globalization.CultureInfo.InvariantCulture)} is not where its table says"
            );
        // The last one before the next object: a stream may hold the word as well.
        var close = slice.Span.LastIndexOf("endobj"u8);
        return close > lexer.End
            ? new PdfObject(number, slice[lexer.End..close].TrimStart("\r\n"u8).TrimEnd("\r\n"u8))
            : throw new PdfSyntaxException("an object does not end");
    }
}
