using ExamDocs.Documents.Signing;

namespace ExamDocs.UseCases.Reading;

/// <summary>The certificates whose signatures count, or why they cannot be used.</summary>
/// <param name="Trust">Null where there is a fault.</param>
/// <param name="Fault">One sentence; null where there is none.</param>
public sealed record TrustRead(SignatureTrust? Trust, string? Fault);

/// <summary>Reads the certificates of issuers that the user trusts.</summary>
public static class ReadTrust
{
    /// <param name="file">A file in PEM, which must exist; null to trust nobody.</param>
    /// <exception cref="IOException">It cannot be read.</exception>
    public static TrustRead From(string? file)
    {
        if (file is null)
            return new(SignatureTrust.InNobody, null);
        return SignatureTrust.FromPem(File.ReadAllText(file)) switch
        {
            null => new(null, $"{file}: the file holds no certificate in PEM"),
            { IsStore: true } => new(
                null,
                $"{file}: the file holds more than {SignatureTrust.MostCertificates} certificates, as a "
                    + "store of roots does; give the issuer's own certificate"
            ),
            var trust => new(trust, null),
        };
    }
}
