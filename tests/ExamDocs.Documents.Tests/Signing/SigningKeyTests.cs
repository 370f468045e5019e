using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using System.Text;
using ExamDocs.Documents.Signing;
using NodaTime;

namespace ExamDocs.Documents.Tests.Signing;

/// <summary>Keys that can be used, and why others cannot.</summary>
public sealed class SigningKeyTests
{
    private static readonly TestAuthority Authority = TestAuthority.One;

    [Theory]
    [InlineData(null)]
    [InlineData("geheim, παράδειγμα")]
    public void Pkcs12_is_read(string? password) =>
        Assert.Equal("Ada Invented", Read(Authority.Pkcs12(Authority.Certificate(), password), password).Key?.Name);

    [Theory]
    [InlineData(false, null)]
    [InlineData(true, "secret")]
    public void Pem_is_read_in_any_order(bool isLocked, string? password)
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var (certificate, secret) = (
            Authority.Certificate(key: key).ExportCertificatePem(),
            isLocked ? key.ExportEncryptedPkcs8PrivateKeyPem(password, Locking) : key.ExportECPrivateKeyPem()
        );
        string[] orders =
        [
            $"{certificate}\n{Authority.MiddlePem}\n{secret}\n",
            $"{secret}\n{Authority.MiddlePem}\n{Authority.RootPem}\n{certificate}\n",
        ];
        foreach (var order in orders)
        {
            var read = Read(order, password);
            Assert.Null(read.Fault);
            Assert.Equal(["Ada Invented", "Invented Signing Authority"], read.Key!.Path.Select(CertificateFacts.Name));
        }
    }

    [Fact]
    public void Openssl_made_keys_are_read() =>
        SignatureTool.InFolder(folder =>
        {
            SignatureTool.Run(
                folder,
                "openssl",
                "req",
                "-x509",
                "-newkey",
                "rsa:2048",
                "-keyout",
                "k.pem",
                "-passout",
                "pass:abc",
                "-out",
                "c.pem",
                "-days",
                "3650",
                "-subj",
                "/CN=Made Up"
            );
            SignatureTool.Run(
                folder,
                "openssl",
                "pkcs12",
                "-export",
                "-inkey",
                "k.pem",
                "-passin",
                "pass:abc",
                "-in",
                "c.pem",
                "-out",
                "k.p12",
                "-passout",
                "pass:abc"
            );
            var now = SystemClock.Instance.GetCurrentInstant();
            Assert.Equal("Made Up", SigningKeyFile.Read(File.ReadAllBytes(Path.Combine(folder, "k.p12")), "abc", now).Key?.Name);
            var pem = File.ReadAllText(Path.Combine(folder, "k.pem")) + File.ReadAllText(Path.Combine(folder, "c.pem"));
            Assert.Equal("Made Up", SigningKeyFile.Read(Encoding.ASCII.GetBytes(pem), "abc", now).Key?.Name);
            return true;
        });

    [Fact]
    public void Each_refusal_is_said_in_a_sentence_of_its_own()
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        using var other = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var own = Authority.Certificate(key: key);
        var secret = key.ExportPkcs8PrivateKeyPem();
        Refuses("the password does not open it", Read(Authority.Pkcs12(own, "right"), "wrong"));
        Refuses("it is locked, and no password was given", Read(Authority.Pkcs12(own, "right"), null));
        Refuses(
            "the password does not open it",
            Read($"{own.ExportCertificatePem()}\n{key.ExportEncryptedPkcs8PrivateKeyPem("right", Locking)}", "wrong")
        );
        Refuses(
            "it is locked, and no password was given",
            Read($"{own.ExportCertificatePem()}\n{key.ExportEncryptedPkcs8PrivateKeyPem("right", Locking)}", null)
        );
        Refuses("it holds no private key", Read(own.ExportCertificatePem(), null));
        Refuses(
            "it holds no private key",
            Read(new X509Certificate2Collection(Certificates.Public(own)).Export(X509ContentType.Pkcs12)!, null)
        );
        Refuses("it holds several private keys", Read($"{secret}\n{other.ExportPkcs8PrivateKeyPem()}\n{own.ExportCertificatePem()}", null));
        Refuses("it holds no certificate", Read(secret, null));
        Refuses(
            "its private key does not belong to any certificate in it",
            Read($"{own.ExportCertificatePem()}\n{other.ExportPkcs8PrivateKeyPem()}", null)
        );
        Refuses("it is neither PKCS#12 nor PEM", Read("nonsense", null));
        Refuses("it is neither PKCS#12 nor PEM", Read("", null));
    }

    [Fact]
    public void Certificates_that_nobody_should_sign_with_are_refused()
    {
        var now = TestAuthority.Now;
        Refuses("is not valid before 2026-05-12T09:30:01Z", Sign(Authority.Certificate(from: now + Duration.FromSeconds(1))));
        Refuses("ran out on 2026-05-12T09:29:59Z", Sign(Authority.Certificate(until: now - Duration.FromSeconds(1))));
        Assert.Null(Sign(Authority.Certificate(from: now, until: now)).Fault);
        Refuses("its RSA key has 1024 bits; sign with one of at least 2048", Sign(Authority.Certificate(key: RSA.Create(1024))));
        Refuses("neither digitalSignature nor nonRepudiation", Sign(Authority.Certificate(usage: X509KeyUsageFlags.KeyEncipherment)));
        Refuses("on a curve that is not known here", Sign(Authority.Certificate(key: ECDsa.Create(ECCurve.NamedCurves.brainpoolP256r1))));
        Refuses("characters that cannot be seen", Sign(Authority.Certificate("Ada\u202Edetnevni")));
        Assert.All(
            [
                null,
                X509KeyUsageFlags.DigitalSignature,
                X509KeyUsageFlags.NonRepudiation,
                (X509KeyUsageFlags?)(X509KeyUsageFlags.NonRepudiation | X509KeyUsageFlags.KeyEncipherment),
            ],
            usage => Assert.Null(Sign(Authority.Certificate(usage: usage)).Fault)
        );
    }

    [Fact]
    public void Damage_is_refused_and_never_thrown()
    {
        var (good, random) = (Authority.Pkcs12(Authority.Certificate(), null), new Random(20260512));
        for (var n = 0; n < 200; n++)
        {
            var damaged = (byte[])good.Clone();
            damaged[random.Next(damaged.Length)] ^= (byte)random.Next(1, 256);
            var read = Read(damaged, null);
            Assert.True(read.Key is null != read.Fault is null);
        }
    }

    private static readonly PbeParameters Locking = new(PbeEncryptionAlgorithm.Aes256Cbc, HashAlgorithmName.SHA256, 1000);

    private static SigningKeyRead Sign(X509Certificate2 certificate) => Read(Authority.Pkcs12(certificate, null), null);

    private static SigningKeyRead Read(string pem, string? password) => Read(Encoding.UTF8.GetBytes(pem), password);

    private static SigningKeyRead Read(byte[] file, string? password) => SigningKeyFile.Read(file, password, TestAuthority.Now);

    private static void Refuses(string why, SigningKeyRead read)
    {
        Assert.Null(read.Key);
        Assert.Contains(why, read.Fault, StringComparison.Ordinal);
    }
}
