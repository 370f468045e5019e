using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.Finishing;

/// <summary>Takes attached data out of a finished file.</summary>
public static class AttachedFiles
{
    /// <param name="pdf">The whole file.</param>
    /// <param name="name">The name it was attached under.</param>
    /// <param name="most">The most that it may unpack to, bytes, inclusive.</param>
    /// <returns>Its bytes; null where nothing of that name is attached.</returns>
    /// <exception cref="PdfSyntaxException">The file was not finished here, or what is attached is damaged or too
    /// large.</exception>
    public static byte[]? Find(ReadOnlyMemory<byte> pdf, string name, int most)
    {
        var source = PdfSource.Read(pdf);
        if (Inner(source.Catalog.Dictionary(), "Names") is not { } names || Inner(names, "EmbeddedFiles")?.Find("Names") is not { } list)
            return null;
        return Specification(list.Span, name) is { } number && Inner(source.Object(number).Dictionary(), "EF") is { } file
            ? source.Object(file.Reference("F")).Stream(most)
            : null;
    }

    private static PdfDictionary? Inner(PdfDictionary owner, string name) =>
        owner.Find(name) is { } value ? PdfDictionary.Read(value) : null;

    /// <summary>A list of names, each before the object that specifies its file (ISO 32000-1, 7.9.6).</summary>
    private static int? Specification(ReadOnlySpan<byte> list, string name)
    {
        var lexer = new PdfLexer(list[1..^1]);
        while (lexer.Next())
        {
            var isNamed =
                lexer.Kind is PdfToken.Text or PdfToken.Hex && string.Equals(PdfText.Read(lexer.Token), name, StringComparison.Ordinal);
            var (start, end) = lexer.Value();
            if (isNamed)
                return PdfNumber.Reference(list[(start + 1)..(end + 1)]);
        }
        return null;
    }
}
