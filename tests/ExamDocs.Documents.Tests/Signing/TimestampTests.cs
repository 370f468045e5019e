using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.Pkcs;
using System.Security.Cryptography.X509Certificates;
using ExamDocs.Documents.Signing;
using NodaTime;

namespace ExamDocs.Documents.Tests.Signing;

/// <summary>PAdES baseline B-T: somebody else says when the signature was there (ETSI EN 319 142-1, 6.3; RFC 3161).</summary>
public sealed class TimestampTests
{
    private static readonly TestAuthority Authority = TestAuthority.One;

    [Theory]
    [InlineData("P-256")]
    [InlineData("RSA-2048")]
    public async Task It_is_in_the_signature_and_holds(string kind)
    {
        using var clock = new Clock(Authority.TimestampCertificate(kind is "P-256" ? null : RSA.Create(2048)));
        var signed = await SignedAsync(clock);
        var report = SignatureCheck.Of(signed, Authority.Trust, TestAuthority.Now + Duration.FromDays(9));
        Assert.Empty(report.Faults);
        Assert.True(report is { IsIntact: true, IsTrusted: true });
        Assert.Equal(TestAuthority.Now, report.TimestampedAt);
        Assert.Single(report.NotChecked);
        Assert.Equal(1, clock.Asked);
    }

    [Fact]
    public async Task Poppler_and_openssl_find_it_sound()
    {
        using var clock = new Clock(Authority.TimestampCertificate());
        var signed = await SignedAsync(clock);
        var said = SignatureTool.PdfSig(signed, Authority.RootPem);
        Assert.Contains("Signature is Valid", said, StringComparison.Ordinal);
        Assert.Contains("Total document signed", said, StringComparison.Ordinal);
        Assert.Contains(
            "CAdES Verification successful",
            SignatureTool.OpenSsl(signed, Authority.RootPem, "1778578200"),
            StringComparison.Ordinal
        );
        var (signature, token) = Token(signed);
        Assert.Contains("Verification: OK", OpenSslTs(signature, token), StringComparison.Ordinal);
        signature[^1] ^= 1;
        Assert.DoesNotContain("Verification: OK", OpenSslTs(signature, token), StringComparison.Ordinal);
    }

    /// <summary>
    /// The lowest bit of every seventh byte; with EXAMDOCS_PROOF=full each byte, by the patterns that the whole file is tried with.
    /// </summary>
    public static TheoryData<byte, int> Patterns => EveryByteTests.IsFull ? EveryByteTests.Patterns : new([(0x01, 7)]);

    [Theory]
    [MemberData(nameof(Patterns))]
    public async Task Each_byte_of_the_timestamp_changed_is_found(byte pattern, int step)
    {
        using var clock = new Clock(Authority.TimestampCertificate());
        var signed = await SignedAsync(clock);
        var (from, unfound) = (signed.AsSpan().IndexOf("/Contents <3"u8), new List<int>());
        var end = from + signed.AsSpan(from).IndexOf((byte)'>');
        for (var at = from; at < end; at += step)
        {
            signed[at] ^= pattern;
            if (SignatureCheck.Of(signed, Authority.Trust, TestAuthority.Now) is { IsIntact: true, Faults.Count: 0 })
                unfound.Add(at);
            signed[at] ^= pattern;
        }
        Assert.Empty(unfound);
        Assert.True(SignatureCheck.Of(signed, Authority.Trust, TestAuthority.Now).IsIntact);
    }

    [Fact]
    public async Task Its_time_counts_where_the_certificate_has_run_out_since()
    {
        using var clock = new Clock(Authority.TimestampCertificate());
        var later = Instant.FromUtc(2031, 1, 1, 0, 0);
        Assert.True(SignatureCheck.Of(await SignedAsync(clock), Authority.Trust, later) is { IsTrusted: true, Faults.Count: 0 });
        var without = SignatureCheck.Of(await SmallPdf.SignedAsync(new DocumentSigner(Authority.Key())), Authority.Trust, later);
        Assert.True(without is { IsIntact: true, IsTrusted: false, Faults.Count: 0 });
        Assert.Contains(without.NotChecked, s => s.Contains("ran out on 2028-01-01", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_time_outside_of_the_certificate_is_a_fault()
    {
        using var clock = new Clock(Authority.TimestampCertificate()) { Time = Instant.FromUtc(2029, 1, 1, 0, 0) };
        var report = SignatureCheck.Of(await SignedAsync(clock), Authority.Trust, TestAuthority.Now);
        Assert.False(report.IsTrusted);
        Assert.Contains("before it was signed", Assert.Single(report.Faults), StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_that_nobody_trusts_proves_no_time()
    {
        using var clock = new Clock(Authority.TimestampCertificate());
        var other = SignatureTrust.FromPem(new TestAuthority().RootPem)!;
        var report = SignatureCheck.Of(await SignedAsync(clock), other, TestAuthority.Now);
        Assert.True(report is { IsIntact: true, IsTrusted: false, Faults.Count: 0 });
        Assert.Contains(report.NotChecked, s => s.StartsWith("The time is not certain", StringComparison.Ordinal));
        Assert.Contains(report.NotChecked, s => s.StartsWith("Who signed is not certain", StringComparison.Ordinal));
    }

    public static TheoryData<string> Wrongs => ["status", "another hash", "nothing", "nonsense", "cut", "changed", "refused", "too long"];

    [Theory]
    [MemberData(nameof(Wrongs))]
    public async Task Without_a_right_answer_nothing_is_signed(string wrong)
    {
        using var clock = new Clock(Authority.TimestampCertificate());
        switch (wrong)
        {
            case "status":
                clock.Status = HttpStatusCode.ServiceUnavailable;
                break;
            case "another hash":
                clock.StampsAnother = true;
                break;
            case "nothing":
                clock.Answer = _ => [];
                break;
            case "nonsense":
                clock.Answer = _ => "<html>"u8.ToArray();
                break;
            case "cut":
                clock.Answer = a => a[..^1];
                break;
            case "changed":
                clock.Answer = a => [.. a[..^1], (byte)(a[^1] ^ 1)];
                break;
            case "refused":
                clock.Answer = _ => [0x30, 5, 0x30, 3, 2, 1, 2];
                break;
            default:
                clock.Answer = _ => new byte[100_000];
                break;
        }
        var said = await Assert.ThrowsAsync<TimestampMissing>(() => SignedAsync(clock));
        Assert.StartsWith($"no timestamp from {clock.Address}: ", said.Message, StringComparison.Ordinal);
        Assert.EndsWith("without one the document is not issued", said.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_there_is_no_server_nothing_is_signed()
    {
        Uri gone;
        using (var clock = new Clock(Authority.TimestampCertificate()))
            gone = clock.Address;
        await Assert.ThrowsAsync<TimestampMissing>(() =>
            SmallPdf.SignedAsync(new DocumentSigner(Authority.Key(), new TimestampServer(gone, TimestampServer.NewClient())))
        );
    }

    private static Task<byte[]> SignedAsync(Clock clock) => SmallPdf.SignedAsync(new DocumentSigner(Authority.Key(), clock.Server));

    private static (byte[] Signature, byte[] Token) Token(byte[] signed)
    {
        var cms = new SignedCms();
        cms.Decode(SignatureTool.Parts(signed).Cms);
        return (cms.SignerInfos[0].GetSignature(), cms.SignerInfos[0].UnsignedAttributes[0].Values[0].RawData);
    }

    private static string OpenSslTs(byte[] signature, byte[] token) =>
        SignatureTool.InFolder(folder =>
        {
            File.WriteAllBytes(Path.Combine(folder, "signature"), signature);
            File.WriteAllBytes(Path.Combine(folder, "token"), token);
            File.WriteAllText(Path.Combine(folder, "root.pem"), Authority.RootPem);
            return SignatureTool.Run(
                folder,
                "openssl",
                "ts",
                "-verify",
                "-data",
                "signature",
                "-in",
                "token",
                "-token_in",
                "-CAfile",
                "root.pem",
                "-attime",
                "1778578200"
            );
        });
}
