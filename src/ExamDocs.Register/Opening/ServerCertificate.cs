using System.Net.Security;
using System.Net.Sockets;
using System.Security.Authentication;
using System.Security.Cryptography.X509Certificates;

namespace ExamDocs.Register.Opening;

/// <summary>Why a server's certificate was refused: the driver says only that it was.</summary>
internal static class ServerCertificate
{
    /// <summary>Asks a server of PostgreSQL for encryption (postgresql.org/docs/15/protocol-message-formats.html, SSLRequest).</summary>
    private static readonly byte[] AskForEncryption = [0, 0, 0, 8, 4, 210, 22, 47];

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(15);

    /// <summary>One sentence for the user.</summary>
    public static string WhyRefused(string host, int port)
    {
        var why = Of(host, port) switch
        {
            null => "its certificate was refused",
            var certificate when !certificate.MatchesHostname(host) => "its certificate is for another name",
            var certificate when certificate.NotAfter.ToUniversalTime() < TimeProvider.System.GetUtcNow().UtcDateTime =>
                $"its certificate expired on {StoredDate(certificate.NotAfter)}",
            var certificate when certificate.NotBefore.ToUniversalTime() > TimeProvider.System.GetUtcNow().UtcDateTime =>
                $"its certificate is not valid before {StoredDate(certificate.NotBefore)}",
            _ => "its certificate is from an authority that is not trusted here (Root%20Certificate names the file of one that is)",
        };
        return $"The server {host} of the register cannot prove that it is the one: {why}. Nothing was sent to it.";
    }

    /// <summary>The certificate that a server shows; null where it shows none.</summary>
    public static X509Certificate2? Of(string host, int port)
    {
        X509Certificate2? shown = null;
        try
        {
            using var client = new TcpClient(host, port);
            using var stream = client.GetStream();
            stream.ReadTimeout = stream.WriteTimeout = (int)Patience.TotalMilliseconds;
            stream.Write(AskForEncryption);
            if (stream.ReadByte() != 'S')
                return null;
            using var encrypted = new SslStream(stream);
            encrypted.AuthenticateAsClient(
                new SslClientAuthenticationOptions
                {
                    TargetHost = host,
                    RemoteCertificateValidationCallback = (_, certificate, _, _) =>
                    {
                        shown = certificate is null
                            ? null
                            : X509CertificateLoader.LoadCertificate(certificate.Export(X509ContentType.Cert));
                        return false;
                    },
                }
            );
        }
        catch (Exception ended) when (ended is IOException or SocketException or AuthenticationException)
        {
            // It was only asked for what it shows.
        }
        return shown;
    }

    private static string StoredDate(DateTime day) => day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
