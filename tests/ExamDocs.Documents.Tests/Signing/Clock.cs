using System.Formats.Asn1;
using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.Pkcs;
using System.Security.Cryptography.X509Certificates;
using ExamDocs.Documents.Signing;
using NodaTime;

namespace ExamDocs.Documents.Tests.Signing;

/// <summary>A timestamp server on this machine (RFC 3161), written with the platform's own CMS; it can be told to answer wrongly.</summary>
internal sealed class Clock : IDisposable
{
    private readonly HttpListener _listener = new();
    private readonly X509Certificate2 _certificate;
    private readonly X509Certificate2[] _others;

    public Clock(X509Certificate2 certificate, params X509Certificate2[] others)
    {
        (_certificate, _others) = (certificate, others);
        Address = Listen();
        _ = ServeAsync();
    }

    public Uri Address { get; }

    public Instant Time { get; init; } = TestAuthority.Now;

    /// <summary>What becomes of each answer on its way.</summary>
    public Func<byte[], byte[]> Answer { get; set; } = static answer => answer;

    public HttpStatusCode Status { get; set; } = HttpStatusCode.OK;

    /// <summary>Whether it stamps another hash than it was asked to.</summary>
    public bool StampsAnother { get; set; }

    public int Asked { get; private set; }

    public TimestampServer Server => new(Address, TimestampServer.NewClient());

    public void Dispose() => _listener.Close();

    private Uri Listen()
    {
        for (var port = 45_000 + RandomNumberGenerator.GetInt32(10_000); ; port++)
        {
            try
            {
                var address = new Uri($"http://127.0.0.1:{port}/stamp/");
                _listener.Prefixes.Add(address.ToString());
                _listener.Start();
                return address;
            }
            catch (HttpListenerException)
            {
                _listener.Prefixes.Clear();
            }
        }
    }

    private async Task ServeAsync()
    {
        while (_listener.IsListening)
        {
            HttpListenerContext context;
            try
            {
                context = await _listener.GetContextAsync();
            }
            catch (Exception e) when (e is HttpListenerException or ObjectDisposedException)
            {
                return;
            }
            Asked++;
            using var asked = new MemoryStream();
            await context.Request.InputStream.CopyToAsync(asked);
            var isQuery = context.Request.ContentType is "application/timestamp-query";
            context.Response.StatusCode = (int)(isQuery ? Status : HttpStatusCode.UnsupportedMediaType);
            await context.Response.OutputStream.WriteAsync(Answer(Response(asked.ToArray())));
            context.Response.Close();
        }
    }

    private byte[] Response(byte[] asked)
    {
        Rfc3161TimestampRequest.TryDecode(asked, out var request, out _);
        var hash = StampsAnother ? new byte[request!.GetMessageHash().Length] : request!.GetMessageHash();
        var info = new Rfc3161TimestampTokenInfo(
            new Oid("1.3.6.1.4.1.99999.1"),
            request.HashAlgorithmId,
            hash,
            new byte[] { 7 },
            Time.ToDateTimeOffset(),
            nonce: request.GetNonce()
        );
        var cms = new SignedCms(new ContentInfo(new Oid("1.2.840.113549.1.9.16.1.4"), info.Encode()));
        var signer = new CmsSigner(SubjectIdentifierType.IssuerAndSerialNumber, _certificate)
        {
            IncludeOption = X509IncludeOption.EndCertOnly,
        };
        signer.Certificates.AddRange(_others);
        signer.SignedAttributes.Add(new AsnEncodedData(new Oid("1.2.840.113549.1.9.16.2.47"), SigningCertificate(_certificate)));
        signer.SignedAttributes.Add(new Pkcs9SigningTime(Time.ToDateTimeUtc()));
        cms.ComputeSignature(signer);
        var writer = new AsnWriter(AsnEncodingRules.DER);
        using (writer.PushSequence())
        {
            using (writer.PushSequence())
                writer.WriteInteger(0);
            writer.WriteEncodedValue(cms.Encode());
        }
        return writer.Encode();
    }

    private static byte[] SigningCertificate(X509Certificate2 certificate)
    {
        var writer = new AsnWriter(AsnEncodingRules.DER);
        using (writer.PushSequence())
        using (writer.PushSequence())
        using (writer.PushSequence())
            writer.WriteOctetString(SHA256.HashData(certificate.RawData));
        return writer.Encode();
    }
}
