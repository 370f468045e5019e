using System.Formats.Asn1;
using System.Security.Cryptography;
using System.Security.Cryptography.Pkcs;
using System.Security.Cryptography.X509Certificates;
using NodaTime;

namespace ExamDocs.Documents.Signing;

/// <summary>Goes through one signature and collects what is wrong with it.</summary>
internal sealed class CheckedSignature
{
    private readonly List<string> _faults = [];
    private readonly List<string> _open = ["Whether a certificate was revoked was not asked: nothing is fetched from the network."];

    private CheckedSignature() { }

    /// <param name="trust">Null where it is not asked who signed.</param>
    /// <exception cref="CryptographicException">The signature cannot be read.</exception>
    public static SignatureReport Of(SignedFile signed, SignatureTrust? trust, Instant now) =>
        new CheckedSignature().Report(signed, trust, now);

    private SignatureReport Report(SignedFile signed, SignatureTrust? trust, Instant now)
    {
        if (SignaturePlace.Of(signed.File, signed.Signature) is not { } place)
            return SignatureReport.Broken("It does not sign all of the file: bytes were added, taken away or left out.");
        if (SignatureContents.Read(signed.File.AsSpan(place.From, place.To - place.From)) is not { } contents)
            return SignatureReport.Broken("The signature is not written as it was: its digits, or the zeros after it, were changed.");
        var (cms, signer) = Open(contents, signed.File, place);
        var path = CertificateFacts.Path(signer.Certificate!, cms.Certificates);
        var timestamp = CheckBytes(contents, signed, place, (cms, signer, path));
        if (!string.Equals(signed.Signature.Word("SubFilter"), "/ETSI.CAdES.detached", StringComparison.Ordinal))
            _faults.Add("It is not the kind of signature that these documents have (ETSI.CAdES.detached).");
        if (!signed.IsFinal)
            _faults.Add("It does not forbid later changes, as these documents do.");
        var isIntact = _faults.Count == 0;
        // Who signed a file that was changed does not matter any more.
        var anchor = trust is null || !isIntact ? null : new SignerTrust(trust, now, _faults, _open).AnchorOf(path, timestamp);
        return new SignatureReport
        {
            IsSigned = true,
            IsIntact = isIntact,
            SignedBy = CertificateFacts.Name(path[0]),
            Issuer = CertificateFacts.Issuer(path[0]),
            SerialNumber = path[0].SerialNumber,
            Fingerprint = CertificateFacts.Fingerprint(path[0]),
            IsTrusted = _faults.Count == 0 && anchor is not null,
            IsNamed = anchor is not null && trust!.Names(path[0]),
            TrustedBy = anchor is null ? null : CertificateFacts.Name(anchor),
            TimestampedAt = timestamp?.At,
            Faults = _faults,
            NotChecked = _open,
        };
    }

    private static (SignedCms Cms, SignerInfo Signer) Open(byte[] contents, ReadOnlySpan<byte> file, SignaturePlace place)
    {
        var cms = new SignedCms(new ContentInfo([.. file[..place.From], .. file[place.To..]]), detached: true);
        cms.Decode(contents);
        return cms.SignerInfos.Count == 1 && cms.SignerInfos[0] is { Certificate: not null } signer
            ? (cms, signer)
            : throw new CryptographicException("it is not by one signer");
    }

    /// <summary>
    /// Writes what must be there, from the file and from what does not follow from the file, and compares it with what is there.
    /// </summary>
    /// <returns>The timestamp; null where there is none that is sound.</returns>
    private TimestampToken? CheckBytes(
        byte[] contents,
        SignedFile signed,
        SignaturePlace place,
        (SignedCms Cms, SignerInfo Signer, IReadOnlyList<X509Certificate2> Path) read
    )
    {
        var digest = SignatureDigest.Find(read.Signer.DigestAlgorithm.Value)
            ?? throw new CryptographicException("its hash function is not known");
        var attributes = CmsAttribute.OfDocument(place.DigestOf(signed.File, digest), read.Path);
        var token = Token(read.Signer);
        var expected = new CmsForm(CmsForm.Data, null, digest, read.Path, attributes, read.Signer.GetSignature()) { Timestamp = token };
        if (!expected.Bytes().AsSpan().SequenceEqual(contents))
            _faults.Add("Bytes of the file or of its signature are not as they were signed.");
        else if (!Holds(read.Cms))
            _faults.Add("The signature does not hold: it was not made with the key of this certificate, or was changed.");
        return token is null ? null : Timestamp(token, read.Signer.GetSignature());
    }

    private static bool Holds(SignedCms cms)
    {
        try
        {
            cms.CheckSignature(verifySignatureOnly: true);
            return true;
        }
        catch (CryptographicException)
        {
            return false;
        }
    }

    private static byte[]? Token(SignerInfo signer) =>
        signer
            .UnsignedAttributes.Cast<CryptographicAttributeObject>()
            .FirstOrDefault(a => string.Equals(a.Oid.Value, CmsAttribute.TimestampOid, StringComparison.Ordinal))
            is { Values.Count: 1 } found
            ? found.Values[0].RawData
            : null;

    private TimestampToken? Timestamp(byte[] token, byte[] signature)
    {
        try
        {
            return TimestampToken.Of(token, signature);
        }
        catch (Exception e) when (e is CryptographicException or AsnContentException or ArgumentException)
        {
            _faults.Add("The timestamp does not hold: it was changed, or is about another signature.");
            return null;
        }
    }
}
