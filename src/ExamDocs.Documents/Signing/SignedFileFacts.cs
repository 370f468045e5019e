using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.Signing;

/// <summary>What a signed file says of its signature, without asking whether it holds.</summary>
public static class SignedFileFacts
{
    /// <param name="pdf">The whole file.</param>
    /// <returns>The name that the signature gives; null where there is no signature.</returns>
    public static string? SignerOf(byte[] pdf)
    {
        try
        {
            return SignedFile.Open(pdf)?.Signature.Find("Name") is { } name ? PdfText.Read(name.Span) : null;
        }
        catch (PdfSyntaxException)
        {
            return null;
        }
    }
}
