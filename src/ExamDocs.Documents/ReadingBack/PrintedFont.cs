using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>What the codes of one font stand for, and how wide they are.</summary>
internal sealed class PrintedFont
{
    private const int MostBytes = 16 * 1024 * 1024;

    private readonly Dictionary<int, string> _text;
    private readonly Dictionary<int, double> _widths;
    private readonly double _otherwise;
    private readonly int _bytes;
    private Lazy<LetterShapes?>? _shapes;

    private PrintedFont(Dictionary<int, string> text, Dictionary<int, double> widths, double otherwise, int bytes) =>
        (_text, _widths, _otherwise, _bytes) = (text, widths, otherwise, bytes);

    public static PrintedFont Of(PdfSource source, PdfObject font)
    {
        var dictionary = font.Dictionary();
        var name = (dictionary.Word("BaseFont") ?? "").TrimStart('/');
        name = name is [_, _, _, _, _, _, '+', ..] ? name[7..] : name;
        var text = dictionary.Reference("ToUnicode") is { } map ? CodeMap.Read(source.Object(map).Stream(MostBytes)) : [];
        if (dictionary.Find("DescendantFonts") is not { } kin)
            return new PrintedFont(text, Simple(source, dictionary), 0, 1) { Name = name };
        var descendant = source.Object(PdfNumber.Reference(kin.Span.Trim("[] "u8))).Dictionary();
        return new PrintedFont(text, Wide(source, descendant), descendant.Number("DW") ?? 1000, 2)
        {
            Name = name,
            _shapes = new Lazy<LetterShapes?>(() =>
                descendant.Reference("FontDescriptor") is { } facts && source.Object(facts).Dictionary().Reference("FontFile2") is { } file
                    ? new LetterShapes(source.Object(file).Stream(MostBytes))
                    : null
            ),
        };
    }

    /// <summary>Its name without the mark of its subset.</summary>
    public string Name { get; private init; } = "";

    /// <summary>Whether a code draws something; true where that cannot be told.</summary>
    public bool Draws(ReadOnlySpan<byte> bytes) => _bytes != 2 || _shapes?.Value?.Draws((bytes[0] << 8) | bytes[1]) is not false;

    /// <summary>Bytes of one code.</summary>
    public int CodeLength => _bytes;

    /// <summary>What a code stands for, null where the font does not say; and its width in thousandths of the font's size.</summary>
    public (string? Text, double Width) Letter(ReadOnlySpan<byte> bytes)
    {
        var code = _bytes == 2 ? (bytes[0] << 8) | bytes[1] : bytes[0];
        return (_text.GetValueOrDefault(code), _widths.GetValueOrDefault(code, _otherwise));
    }

    /// <summary>ISO 32000-1, 9.7.4.3: a first code and a list of widths, or a first and last code and one width for all.</summary>
    private static Dictionary<int, double> Wide(PdfSource source, PdfDictionary font)
    {
        var widths = new Dictionary<int, double>();
        if (Direct(source, font, "W") is not { } list)
            return widths;
        var lexer = new PdfLexer(list.Span[1..]);
        while (lexer.Next() && PdfNumber.Whole(lexer.Token) is { } first && lexer.Next())
        {
            if (lexer.Kind is PdfToken.ArrayOpen)
            {
                for (var code = first; lexer.Next() && lexer.Kind is PdfToken.Number; code++)
                    widths[code] = PdfNumber.Real(lexer.Token) ?? 0;
            }
            else if (PdfNumber.Whole(lexer.Token) is { } last && lexer.Next())
            {
                var width = PdfNumber.Real(lexer.Token) ?? 0;
                for (var code = first; code <= Math.Min(last, ushort.MaxValue); code++)
                    widths[code] = width;
            }
        }
        return widths;
    }

    private static Dictionary<int, double> Simple(PdfSource source, PdfDictionary font)
    {
        var widths = new Dictionary<int, double>();
        if (Direct(source, font, "Widths") is not { } list)
            return widths;
        // A font of drawings has a measure of its own (ISO 32000-1, 9.6.5).
        var scale = font.Find("FontMatrix") is { } matrix ? First(matrix.Span) * 1000 : 1;
        var lexer = new PdfLexer(list.Span[1..]);
        for (var code = font.Number("FirstChar") ?? 0; lexer.Next() && lexer.Kind is PdfToken.Number; code++)
            widths[code] = (PdfNumber.Real(lexer.Token) ?? 0) * scale;
        return widths;
    }

    private static double First(ReadOnlySpan<byte> list)
    {
        var lexer = new PdfLexer(list[1..]);
        return lexer.Next() ? PdfNumber.Real(lexer.Token) ?? 0 : 0;
    }

    private static ReadOnlyMemory<byte>? Direct(PdfSource source, PdfDictionary owner, string name) =>
        owner.Reference(name) is { } number ? source.Object(number).Body : owner.Find(name);
}
