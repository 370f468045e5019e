using System.Globalization;
using System.Net.Http.Headers;
using System.Security.Cryptography;
using System.Security.Cryptography.Pkcs;
using ExamDocs.Documents.Browsing;

namespace ExamDocs.Documents.Signing;

/// <summary>A timestamp was asked for and cannot be had.</summary>
public sealed class TimestampMissing(Uri server, string why, Exception? inner = null)
    : PrintException($"no timestamp from {server}: {why}; without one the document is not issued", inner);

/// <summary>A server that says when a signature was there, asked over HTTP (RFC 3161, 3.4).</summary>
public sealed class TimestampServer(Uri address, HttpClient client)
{
    /// <summary>Bytes, inclusive. Our own bound: with two certificates of 4096 bits above the signer's it takes about 6,000.</summary>
    internal const int LongestToken = 12_000;

    private const int LongestAnswer = 64 * 1024;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    /// <returns>Why it is not an address to ask at; null where it is one.</returns>
    public static string? ObjectionTo(string address) =>
        Uri.TryCreate(address, UriKind.Absolute, out var uri)
        && (
            string.Equals(uri.Scheme, Uri.UriSchemeHttp, StringComparison.Ordinal)
            || string.Equals(uri.Scheme, Uri.UriSchemeHttps, StringComparison.Ordinal)
        )
            ? null
            : $"{address} is not an http or https address";

    /// <summary>A client that keeps to the bounds set here.</summary>
    public static HttpClient NewClient() =>
        new(new HttpClientHandler { AllowAutoRedirect = false }) { Timeout = Patience, MaxResponseContentBufferSize = LongestAnswer };

    /// <returns>The token in the form in which it is kept, checked.</returns>
    /// <exception cref="TimestampMissing">The server does not answer, or not as it should.</exception>
    internal async Task<byte[]> StampAsync(byte[] signature, SignatureDigest digest, CancellationToken cancellation)
    {
        try
        {
            var request = Rfc3161TimestampRequest.CreateFromData(
                signature,
                digest.Name,
                nonce: RandomNumberGenerator.GetBytes(8),
                requestSignerCertificates: true
            );
            var answer = await AskAsync(request.Encode(), cancellation);
            var token = TimestampToken.InOneForm(request.ProcessResponse(answer, out _).AsSignedCms().Encode());
            TimestampToken.Of(token, signature);
            return token.Length <= LongestToken ? token : throw new CryptographicException("its answer is too long");
        }
        catch (Exception e)
            when (e is HttpRequestException or CryptographicException or ArgumentException
                || (e is TaskCanceledException && !cancellation.IsCancellationRequested)
            )
        {
            throw new TimestampMissing(address, e is TaskCanceledException ? "it did not answer in time" : e.Message.TrimEnd('.'), e);
        }
    }

    private async Task<byte[]> AskAsync(byte[] request, CancellationToken cancellation)
    {
        using var content = new ByteArrayContent(request);
        content.Headers.ContentType = new MediaTypeHeaderValue("application/timestamp-query");
        using var answer = await client.PostAsync(address, content, cancellation);
        return answer.IsSuccessStatusCode
            ? await answer.Content.ReadAsByteArrayAsync(cancellation)
            : throw new HttpRequestException(
                string.Create(CultureInfo.InvariantCulture, $"it answered with status {(int)answer.StatusCode}")
            );
    }
}
