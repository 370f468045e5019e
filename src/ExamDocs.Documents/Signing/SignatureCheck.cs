using System.Formats.Asn1;
using System.Security.Cryptography;
using ExamDocs.Documents.PdfSyntax;
using NodaTime;

namespace ExamDocs.Documents.Signing;

/// <summary>
/// Checks the signature of a file that this program signed. Stricter than ETSI EN 319 142-1 asks: everything that follows from
/// other parts must be written in the one form that <see cref="CmsForm"/> has for it. A file signed by another program can be
/// sound and yet not be called intact here.
/// </summary>
public static class SignatureCheck
{
    /// <summary>Whether a file just signed is sound, without asking who signed it.</summary>
    internal static bool IsIntact(byte[] file) =>
        SignedFile.Open(file) is { } signed && CheckedSignature.Of(signed, trust: null, Instant.MinValue).IsIntact;

    /// <summary>Never throws, whatever the bytes are.</summary>
    /// <param name="pdf">The whole file.</param>
    /// <param name="trust">What the signer's certificate must go back to.</param>
    /// <param name="now">The time that counts where no trusted timestamp says when it was signed.</param>
    public static SignatureReport Of(ReadOnlyMemory<byte> pdf, SignatureTrust trust, Instant now)
    {
        var isMarked = pdf.Span.IndexOf("/ByteRange"u8) >= 0 || pdf.Span.IndexOf("ETSI.CAdES.detached"u8) >= 0;
        try
        {
            // An array of its own: places in the file are counted from its beginning.
            var file = pdf.ToArray();
            if (SignedFile.Open(file) is { } signed)
                return CheckedSignature.Of(signed, trust, now);
            return isMarked
                ? SignatureReport.Broken("It holds parts of a signature, but none that it names as its own.")
                : SignatureReport.Unsigned;
        }
        catch (PdfSyntaxException e)
        {
            return isMarked ? SignatureReport.Broken($"It is damaged: {e.Why}.") : SignatureReport.Unsigned;
        }
        catch (Exception e)
            when (e
                    is CryptographicException
                        or AsnContentException
                        or ArgumentException
                        or InvalidOperationException
                        or OverflowException
                        or NotSupportedException
            )
        {
            return SignatureReport.Broken("Its signature is damaged and cannot be read.");
        }
    }
}
