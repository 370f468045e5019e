namespace ExamDocs.Documents.Signing;

/// <summary>Signs documents: CMS as PAdES baseline B-B asks for, B-T with a timestamp (ETSI EN 319 142-1, 6.3).</summary>
/// <param name="key">What is signed with.</param>
/// <param name="timestamps">Who says when; null for nobody.</param>
public sealed class DocumentSigner(SigningKey key, TimestampServer? timestamps = null)
{
    /// <summary>What is signed with.</summary>
    public SigningKey Key => key;

    /// <summary>Whether a server vouches for when it was signed.</summary>
    public bool IsTimestamped => timestamps is not null;

    internal SignatureDigest Digest => key.Digest;

    /// <summary>The most that a signature takes, bytes; the same for every document of a key.</summary>
    internal int Room =>
        Form(new byte[Digest.Of([]).Length], new byte[key.LongestSignature], null).Bytes().Length
        + (timestamps is null ? 0 : TimestampServer.LongestToken);

    /// <param name="digest">Hash of the bytes to be signed, by <see cref="Digest"/>.</param>
    /// <exception cref="TimestampMissing">A timestamp is asked for and cannot be had: nothing is signed then.</exception>
    internal async Task<byte[]> SignAsync(byte[] digest, CancellationToken cancellation)
    {
        var signature = key.Sign(CmsForm.ToBeSigned(CmsAttribute.OfDocument(digest, key.Path)));
        var timestamp = timestamps is null ? null : await timestamps.StampAsync(signature, Digest, cancellation);
        return Form(digest, signature, timestamp).Bytes();
    }

    private CmsForm Form(byte[] digest, byte[] signature, byte[]? timestamp) =>
        new(CmsForm.Data, null, Digest, key.Path, CmsAttribute.OfDocument(digest, key.Path), signature) { Timestamp = timestamp };
}
