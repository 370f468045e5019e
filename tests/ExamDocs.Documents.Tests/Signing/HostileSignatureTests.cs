using System.Diagnostics;
using System.Security.Cryptography;
using System.Security.Cryptography.Pkcs;
using System.Text;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.Signing;
using NodaTime;

namespace ExamDocs.Documents.Tests.Signing;

/// <summary>Files made to deceive the check, or to break it.</summary>
public sealed class HostileSignatureTests
{
    private static readonly TestAuthority Authority = TestAuthority.One;

    [Fact]
    public void A_file_without_a_signature_is_none_and_has_no_fault()
    {
        var report = Check(Finisher.Finish(SmallPdf.Printed, []));
        Assert.True(report is { IsSigned: false, IsIntact: false, IsTrusted: false, Faults.Count: 0 });
        Assert.False(Check([]).IsSigned);
        Assert.False(Check("no pdf"u8.ToArray()).IsSigned);
    }

    [Fact]
    public async Task Anybody_can_sign_in_any_name_and_is_not_trusted()
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var own = new System.Security.Cryptography.X509Certificates.CertificateRequest(
            "CN=Ada Invented",
            key,
            HashAlgorithmName.SHA256
        ).CreateSelfSigned(Certificates.From.ToDateTimeOffset(), Certificates.Until.ToDateTimeOffset());
        var read = SigningKeyFile.Read(
            Encoding.ASCII.GetBytes($"{own.ExportCertificatePem()}\n{key.ExportPkcs8PrivateKeyPem()}"),
            null,
            TestAuthority.Now
        );
        var signed = await SmallPdf.SignedAsync(new DocumentSigner(read.Key!));
        Assert.True(Check(signed) is { IsIntact: true, IsTrusted: false, SignedBy: "Ada Invented", TrustedBy: null });
        Assert.True(
            SignatureCheck.Of(signed, SignatureTrust.FromPem(own.ExportCertificatePem())!, TestAuthority.Now)
                is { IsIntact: true, IsTrusted: true }
        );
    }

    /// <summary>A sound signature of another program: without the certificate's name in it, or with more beside it.</summary>
    [Fact]
    public async Task A_signature_that_does_not_name_its_certificate_is_no_signature_of_ours()
    {
        var signed = await SmallPdf.SignedAsync(new DocumentSigner(Authority.Key()));
        var cms = new SignedCms(new ContentInfo(SignatureTool.Parts(signed).Signed), detached: true);
        cms.ComputeSignature(
            new CmsSigner(Authority.Certificate())
            {
                IncludeOption = System.Security.Cryptography.X509Certificates.X509IncludeOption.EndCertOnly,
            }
        );
        Assert.False(Check(With(signed, cms.Encode())).IsIntact);
    }

    [Fact]
    public async Task The_signature_of_another_file_is_none_of_this()
    {
        var signer = new DocumentSigner(Authority.Key());
        var (one, other) = (
            await SmallPdf.SignedAsync(signer),
            await Finisher.FinishSignedAsync(SmallPdf.Printed, [new("a.json", "a", "{}"u8.ToArray())], signer, SmallPdf.Description)
        );
        var moved = With(one, SignatureTool.Parts(other).Cms);
        Assert.Contains("not as they were signed", Assert.Single(Check(moved).Faults), StringComparison.Ordinal);
    }

    /// <summary>Nothing is thrown, and nothing takes long, whatever is done to the bytes.</summary>
    [Fact]
    public async Task Damage_of_any_kind_is_said_and_never_thrown()
    {
        using var clock = new Clock(Authority.TimestampCertificate());
        var signed = await SmallPdf.SignedAsync(new DocumentSigner(Authority.Key(), clock.Server));
        var (random, longest) = (new Random(20260512), TimeSpan.Zero);
        for (var n = 0; n < 3000; n++)
        {
            var damaged = Damaged(signed, random, n % 4);
            var watch = Stopwatch.StartNew();
            var report = Check(damaged);
            longest = watch.Elapsed > longest ? watch.Elapsed : longest;
            Assert.False(report.IsIntact && !damaged.AsSpan().SequenceEqual(signed));
        }
        Assert.True(longest < TimeSpan.FromSeconds(5), $"one took {longest}");
    }

    private static byte[] Damaged(byte[] signed, Random random, int kind)
    {
        var damaged = (byte[])signed.Clone();
        var from = kind == 0 ? 0 : damaged.AsSpan().IndexOf("/Contents <3"u8);
        var digits = "0123456789ABCDEF"u8;
        for (var hits = random.Next(1, 8); hits > 0; hits--)
            damaged[random.Next(from, kind == 1 ? from + 4000 : damaged.Length)] =
                kind == 1 ? digits[random.Next(16)] : (byte)random.Next(256);
        return kind == 3 ? damaged[..random.Next(damaged.Length)] : damaged;
    }

    private static byte[] With(byte[] signed, byte[] cms)
    {
        var file = (byte[])signed.Clone();
        var place = SignaturePlace.After(file, 0);
        file.AsSpan(place.From + 1, place.To - place.From - 2).Fill((byte)'0');
        Assert.True(place.TryWrite(file, cms));
        return file;
    }

    private static SignatureReport Check(byte[] file) => SignatureCheck.Of(file, Authority.Trust, TestAuthority.Now);
}
