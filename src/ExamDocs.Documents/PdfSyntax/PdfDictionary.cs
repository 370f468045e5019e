using System.Text;

namespace ExamDocs.Documents.PdfSyntax;

/// <summary>The entries of one dictionary, each value as it was written.</summary>
internal sealed class PdfDictionary
{
    private readonly List<(string Name, ReadOnlyMemory<byte> Value)> _entries = [];

    /// <summary>Where the dictionary ended in what it was read from.</summary>
    public int End { get; private init; }

    /// <exception cref="PdfSyntaxException">No whole dictionary begins here.</exception>
    public static PdfDictionary Read(ReadOnlyMemory<byte> bytes, int at = 0)
    {
        var lexer = new PdfLexer(bytes.Span, at);
        if (!lexer.Next() || lexer.Kind is not PdfToken.DictionaryOpen)
            throw new PdfSyntaxException("a dictionary is missing");
        var entries = new List<(string, ReadOnlyMemory<byte>)>();
        while (lexer.Next() && lexer.Kind is PdfToken.Name)
        {
            var name = Encoding.Latin1.GetString(lexer.Token[1..]);
            var (start, end) = lexer.Value();
            entries.Add((name, bytes[start..end]));
        }
        if (lexer.Kind is not PdfToken.DictionaryClose)
            throw new PdfSyntaxException("a dictionary does not end");
        var dictionary = new PdfDictionary { End = lexer.End };
        dictionary._entries.AddRange(entries);
        return dictionary;
    }

    public IEnumerable<(string Name, ReadOnlyMemory<byte> Value)> Entries => _entries;

    public bool Has(string name) => Find(name) is not null;

    /// <summary>The value as written; null where there is none.</summary>
    public ReadOnlyMemory<byte>? Find(string name)
    {
        foreach (var (known, value) in _entries)
        {
            if (string.Equals(known, name, StringComparison.Ordinal))
                return value;
        }
        return null;
    }

    /// <summary>The value as text, for names and numbers; null where there is none.</summary>
    public string? Word(string name) => Find(name) is { } value ? Encoding.Latin1.GetString(value.Span) : null;

    /// <summary>A whole number that stands in the dictionary itself; null where there is none.</summary>
    public int? Number(string name) => Find(name) is { } value ? PdfNumber.Whole(value.Span) : null;

    /// <summary>A number that stands in the dictionary itself; null where there is none.</summary>
    public double? Real(string name) => Find(name) is { } value ? PdfNumber.Real(value.Span) : null;

    /// <summary>The number of the object referred to; null where there is no reference.</summary>
    public int? Reference(string name) => Find(name) is { } value ? PdfNumber.Reference(value.Span) : null;

    public PdfDictionary Set(string name, string value)
    {
        var at = _entries.FindIndex(e => string.Equals(e.Name, name, StringComparison.Ordinal));
        var entry = (name, (ReadOnlyMemory<byte>)Encoding.Latin1.GetBytes(value));
        if (at < 0)
            _entries.Add(entry);
        else
            _entries[at] = entry;
        return this;
    }

    public byte[] Bytes()
    {
        using var buffer = new MemoryStream();
        buffer.Write("<<"u8);
        foreach (var (name, value) in _entries)
        {
            buffer.Write(Encoding.Latin1.GetBytes($"/{name} "));
            buffer.Write(value.Span);
            buffer.WriteByte((byte)'\n');
        }
        buffer.Write(">>"u8);
        return buffer.ToArray();
    }
}
