using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.Signing;

/// <summary>A file with the signature that its form names.</summary>
/// <param name="File">The whole file.</param>
/// <param name="Signature">The signature's dictionary.</param>
/// <param name="IsFinal">Whether the file says that no later change is allowed.</param>
internal sealed record SignedFile(byte[] File, PdfDictionary Signature, bool IsFinal)
{
    /// <returns>Null where no form names a signature.</returns>
    /// <exception cref="PdfSyntaxException">The file was not finished here, or is damaged.</exception>
    public static SignedFile? Open(byte[] file)
    {
        var source = PdfSource.Read(file);
        var catalog = source.Catalog.Dictionary();
        if (Inner(source, catalog, "AcroForm")?.Find("Fields") is not { } fields)
            return null;
        var lexer = new PdfLexer(fields.Span[1..^1]);
        if (PdfNumber.Reference(fields.Span[1..^1]) is not { } field || !SkipOne(ref lexer) || lexer.Next())
            throw new PdfSyntaxException("its form has other fields than one signature");
        var signature = source.Object(source.Object(field).Dictionary().Reference("V"));
        return new SignedFile(file, signature.Dictionary(), IsCertified(source, catalog, signature.Number));
    }

    private static bool SkipOne(ref PdfLexer lexer) => lexer.Value().End > 0;

    /// <summary>ISO 32000-1, 12.8.2.2: a permission of 1 allows no change at all.</summary>
    private static bool IsCertified(PdfSource source, PdfDictionary catalog, int signature) =>
        Inner(source, catalog, "Perms")?.Reference("DocMDP") == signature
        && source
            .Object(signature)
            .Dictionary()
            .Word("Reference")
            ?.Contains("/TransformMethod /DocMDP\n/TransformParams <</Type /TransformParams\n/P 1\n", StringComparison.Ordinal) == true;

    private static PdfDictionary? Inner(PdfSource source, PdfDictionary owner, string name) =>
        owner.Reference(name) is { } number ? source.Object(number).Dictionary()
        : owner.Find(name) is { } value ? PdfDictionary.Read(value)
        : null;
}
