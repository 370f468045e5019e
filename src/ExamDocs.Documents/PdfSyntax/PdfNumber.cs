using System.Buffers.Text;

namespace ExamDocs.Documents.PdfSyntax;

/// <summary>Numbers and references as PDF writes them.</summary>
internal static class PdfNumber
{
    /// <summary>Null where it is not a whole number.</summary>
    public static int? Whole(ReadOnlySpan<byte> text) =>
        Utf8Parser.TryParse(text, out int value, out var used) && used == text.Length && used > 0 ? value : null;

    /// <summary>Null where it is not a number. ISO 32000-1 has no exponents.</summary>
    public static double? Real(ReadOnlySpan<byte> text) =>
        Utf8Parser.TryParse(text, out double value, out var used, 'f') && used == text.Length && used > 0 ? value : null;

    /// <summary>The object number of a reference, 12 0 R; null where it is not a reference.</summary>
    public static int? Reference(ReadOnlySpan<byte> text)
    {
        var lexer = new PdfLexer(text);
        if (!lexer.Next() || lexer.Kind is not PdfToken.Number || Whole(lexer.Token) is not { } number)
            return null;
        return lexer.Next() && lexer.Kind is PdfToken.Number && lexer.Next() && lexer.Is("R"u8) ? number : null;
    }
}
