using System.Buffers.Binary;
using System.Text;
using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>Reads the table that says which letters the codes of a font stand for (ISO 32000-1, 9.10.3).</summary>
internal static class CodeMap
{
    public static Dictionary<int, string> Read(byte[] map)
    {
        var text = new Dictionary<int, string>();
        var lexer = new PdfLexer(map);
        while (lexer.Next())
        {
            if (lexer.Is("beginbfchar"u8))
                Characters(ref lexer, text);
            else if (lexer.Is("beginbfrange"u8))
                Ranges(ref lexer, text);
        }
        return text;
    }

    private static void Characters(ref PdfLexer lexer, Dictionary<int, string> text)
    {
        while (lexer.Next() && lexer.Kind is PdfToken.Hex)
        {
            var code = Code(lexer.Token);
            if (lexer.Next() && lexer.Kind is PdfToken.Hex)
                text[code] = Letters(lexer.Token);
        }
    }

    private static void Ranges(ref PdfLexer lexer, Dictionary<int, string> text)
    {
        while (lexer.Next() && lexer.Kind is PdfToken.Hex)
        {
            var first = Code(lexer.Token);
            if (!lexer.Next())
                return;
            var last = Math.Min(Code(lexer.Token), first + ushort.MaxValue);
            if (!lexer.Next())
                return;
            if (lexer.Kind is PdfToken.ArrayOpen)
            {
                for (var code = first; lexer.Next() && lexer.Kind is PdfToken.Hex; code++)
                    text[code] = Letters(lexer.Token);
            }
            else
            {
                var letters = Letters(lexer.Token);
                for (var code = first; code <= last && letters.Length > 0; code++)
                    text[code] = letters[..^1] + (char)(letters[^1] + code - first);
            }
        }
    }

    private static int Code(ReadOnlySpan<byte> hex)
    {
        var bytes = PdfText.Bytes(hex);
        Span<byte> four = stackalloc byte[4];
        bytes.AsSpan(0, Math.Min(4, bytes.Length)).CopyTo(four[Math.Max(0, 4 - bytes.Length)..]);
        return BinaryPrimitives.ReadInt32BigEndian(four);
    }

    private static string Letters(ReadOnlySpan<byte> hex) => Encoding.BigEndianUnicode.GetString(PdfText.Bytes(hex));
}
