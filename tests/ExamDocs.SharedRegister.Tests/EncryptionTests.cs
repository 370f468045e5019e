using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Register.Opening;
using ExamDocs.Register.Tests;

namespace ExamDocs.SharedRegister.Tests;

/// <summary>The server shows a certificate of an authority; whoever asks for proof is content with that one alone.</summary>
[Collection(nameof(EncryptionTests))]
public sealed class EncryptionTests : Workplace
{
    private static readonly DateTimeOffset Now = TimeProvider.System.GetUtcNow();

    [Fact]
    public void Only_the_right_certificate_of_a_known_authority_in_its_time_is_taken()
    {
        using var ours = Authority("Our authority");
        using var other = Authority("Another authority");
        var (trusted, stranger) = (Pem("ours.pem", ours), Pem("other.pem", other));
        try
        {
            Show(ours, Now.AddDays(30));
            using (var register = DocumentRegister.Open(Address("localhost", trusted)))
            {
                Issue(register, "a");
                using var connection = register.Rows.Database.Connection.CreateCommand();
                connection.CommandText = "SELECT ssl FROM pg_stat_ssl WHERE pid = pg_backend_pid()";
                Assert.Equal(true, connection.ExecuteScalar());
            }
            Refused(Address("127.0.0.1", trusted), "its certificate is for another name");
            Refused(Address("localhost", stranger), "its certificate is from an authority that is not trusted here");
            Refused(Address("localhost", null), "its certificate is from an authority that is not trusted here");
            Show(ours, Now.AddDays(-1));
            Refused(Address("localhost", trusted), "its certificate expired on 20");
        }
        finally
        {
            OnTheServer("ALTER SYSTEM RESET ssl");
            OnTheServer("SELECT pg_reload_conf()");
            Assert.True(SpinWait.SpinUntil(() => ServerCertificate.Of("localhost", Server.Port) is null, TimeSpan.FromSeconds(60)));
        }
    }

    private static void Refused(string address, string why)
    {
        var message = Assert.Throws<RegisterRefusedException>(() => DocumentRegister.Open(address)).Message;
        Assert.StartsWith("The server ", message, StringComparison.Ordinal);
        Assert.Contains(why, message, StringComparison.Ordinal);
    }

    private string Address(string host, string? authority) =>
        Database.Replace("127.0.0.1", host, StringComparison.Ordinal)
        + "?sslmode=verify-full"
        + (authority is null ? "" : $"&Root%20Certificate={Uri.EscapeDataString(authority)}");

    /// <summary>Has the server show a certificate for localhost from now on.</summary>
    private void Show(X509Certificate2 authority, DateTimeOffset until)
    {
        using var key = RSA.Create(2048);
        var request = new CertificateRequest("CN=localhost", key, HashAlgorithmName.SHA256, RSASignaturePadding.Pkcs1);
        var names = new SubjectAlternativeNameBuilder();
        names.AddDnsName("localhost");
        request.CertificateExtensions.Add(names.Build());
        using var shown = request.Create(authority, Now.AddDays(-10), until, RandomNumberGenerator.GetBytes(8));
        Give("server.crt", shown.ExportCertificatePem());
        Give("server.key", key.ExportPkcs8PrivateKeyPem());
        OnTheServer("ALTER SYSTEM SET ssl = on");
        OnTheServer("SELECT pg_reload_conf()");
        Assert.True(
            SpinWait.SpinUntil(
                () => string.Equals(ServerCertificate.Of("localhost", Server.Port)?.Thumbprint, shown.Thumbprint, StringComparison.Ordinal),
                TimeSpan.FromSeconds(60)
            )
        );
    }

    /// <summary>The server reads no key that others may read, and none of another user.</summary>
    private void Give(string name, string pem)
    {
        var given = Path.Combine(Server.Folder, $"given-{name}");
        File.WriteAllText(given, pem);
        Server.Run("/usr/bin/install", "-m", "600", given, Path.Combine(Server.Folder, "data", name));
        File.Delete(given);
    }

    private static X509Certificate2 Authority(string name)
    {
        using var key = RSA.Create(2048);
        var request = new CertificateRequest($"CN={name}", key, HashAlgorithmName.SHA256, RSASignaturePadding.Pkcs1);
        request.CertificateExtensions.Add(new X509BasicConstraintsExtension(true, false, 0, true));
        return request.CreateSelfSigned(Now.AddYears(-1), Now.AddYears(1));
    }

    private string Pem(string name, X509Certificate2 authority)
    {
        var path = Path.Combine(Root, name);
        File.WriteAllText(path, authority.ExportCertificatePem());
        return path;
    }
}
