using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.Signing;
using ExamDocs.Documents.Tests.Finishing;
using ExamDocs.Documents.Tests.Printing;
using NodaTime;

namespace ExamDocs.Documents.Tests.Signing;

/// <summary>A signed report in the eyes of other people's programs.</summary>
public sealed class SignedReportTests(SharedBrowser browser)
{
    private static readonly TestAuthority Authority = TestAuthority.One;
    private static readonly ConcurrentDictionary<string, Lazy<Task<byte[]>>> Signed = new(StringComparer.Ordinal);

    public static TheoryData<string> Keys => ["P-256", "P-384", "P-521", "RSA-2048", "RSA-4096"];

    [Theory]
    [MemberData(nameof(Keys))]
    public async Task Poppler_finds_it_valid_and_the_whole_document_signed(string kind)
    {
        var said = SignatureTool.PdfSig(await SignedAsync(kind), Authority.RootPem);
        Assert.Contains("Signature Validation: Signature is Valid.", said, StringComparison.Ordinal);
        Assert.Contains("Total document signed", said, StringComparison.Ordinal);
        Assert.Contains("Signature Type: ETSI.CAdES.detached", said, StringComparison.Ordinal);
        Assert.Contains("Signer Certificate Common Name: Ada Invented", said, StringComparison.Ordinal);
        if (SignatureTool.HasTrustStore)
            Assert.Contains("Certificate Validation: Certificate is Trusted.", said, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public async Task Openssl_verifies_it_as_cades(string kind) =>
        Assert.Contains(
            "CAdES Verification successful",
            SignatureTool.OpenSsl(await SignedAsync(kind), Authority.RootPem, "1778578200"),
            StringComparison.Ordinal
        );

    [Fact]
    public async Task Both_find_a_changed_byte()
    {
        var changed = await SignedAsync("P-256");
        changed[1000] ^= 1;
        Assert.DoesNotContain("Signature is Valid", SignatureTool.PdfSig(changed, Authority.RootPem), StringComparison.Ordinal);
        Assert.DoesNotContain("successful", SignatureTool.OpenSsl(changed, Authority.RootPem, "1778578200"), StringComparison.Ordinal);
    }

    /// <summary>ETSI EN 319 142-1, 6.3: attributes that must be there, and the one that must not.</summary>
    [Fact]
    public async Task It_has_the_attributes_of_the_baseline()
    {
        var (_, cms) = SignatureTool.Parts(await SignedAsync("RSA-2048"));
        var said = SignatureTool.InFolder(folder =>
        {
            File.WriteAllBytes(Path.Combine(folder, "cms"), cms);
            return SignatureTool.Run(folder, "openssl", "asn1parse", "-inform", "DER", "-in", "cms");
        });
        Assert.All(["contentType", "messageDigest", "id-smime-aa-signingCertificateV2"], a =>
            Assert.Contains(":" + a, said, StringComparison.Ordinal)
        );
        Assert.DoesNotContain("signingTime", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Qpdf_finds_nothing_wrong() =>
        Assert.Contains("No syntax or stream encoding errors", Tool.QpdfCheck(await SignedAsync("P-256")), StringComparison.Ordinal);

    [Fact]
    public async Task All_but_the_signature_is_the_same_each_time()
    {
        var key = new DocumentSigner(Authority.Key());
        var (first, second) = (await SignedAsync(key), await SignedAsync(key));
        Assert.Equal(SignatureTool.Parts(first).Signed, SignatureTool.Parts(second).Signed);
        Assert.NotEqual(first, second);
    }

    [Fact]
    public async Task It_looks_and_reads_as_without_a_signature()
    {
        var signed = await SignedAsync("P-256");
        Assert.Equal(browser.ReportText, Tool.PdfText(signed));
        Assert.Equal(Tool.Raster(browser.Report, 60), Tool.Raster(signed, 60));
        Assert.Equal(FinishedReport.Record, AttachedFiles.Find(signed, "examdocs.json", 100_000));
    }

    /// <summary>
    /// ISO 14289-1, 7.18: a field has a tag, and words; ISO 19005-3, 6.3 and 6.1.12: it is printed, and nothing but DocMDP is in Perms.
    /// </summary>
    [Fact]
    public async Task The_field_is_tagged_and_has_words()
    {
        var signed = await SignedAsync("P-256");
        var objects = Tool.QpdfJson(signed);
        var (number, field) = objects.Single(o => o.Value["/Subtype"]?.ToString() is "/Widget");
        var tag = objects.Values.Single(o => o["/S"]?.ToString() is "/Form");
        Assert.Equal(number["obj:".Length..], tag["/K"]!["/Obj"]!.ToString());
        Assert.Equal("u:" + SmallPdf.Description, field["/TU"]!.ToString());
        Assert.Equal(132, (int)field["/F"]!);
        Assert.Equal("/S", objects[$"obj:{field["/P"]}"]["/Tabs"]!.ToString());
        var catalog = objects.Values.Single(o => o["/Type"]?.ToString() is "/Catalog");
        Assert.Equal(3, (int)catalog["/AcroForm"]!["/SigFlags"]!);
        Assert.Equal(field["/V"]!.ToString(), catalog["/Perms"]!["/DocMDP"]!.ToString());
        Assert.Contains("<pdfuaid:part>1</pdfuaid:part>", Encoding.UTF8.GetString(signed), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public async Task Our_own_check_finds_it_sound(string kind)
    {
        var report = SignatureCheck.Of(await SignedAsync(kind), Authority.Trust, TestAuthority.Now);
        Assert.Empty(report.Faults);
        Assert.True(
            report
                is {
                    IsSigned: true,
                    IsIntact: true,
                    IsTrusted: true,
                    SignedBy: "Ada Invented",
                    Issuer: "Invented Signing Authority",
                    TrustedBy: "Invented Root",
                    TimestampedAt: null
                }
        );
        Assert.Contains("revoked", Assert.Single(report.NotChecked), StringComparison.Ordinal);
    }

    /// <summary>Signed once with each kind of key; a copy for each test.</summary>
    private async Task<byte[]> SignedAsync(string kind) =>
        [.. await Signed.GetOrAdd(kind, k => new Lazy<Task<byte[]>>(() => SignedAsync(SignerOf(k)))).Value];

    private static DocumentSigner SignerOf(string kind) =>
        new(
            Authority.Key(
                Authority.Certificate(
                    key: kind switch
                    {
                        "P-256" => ECDsa.Create(ECCurve.NamedCurves.nistP256),
                        "P-384" => ECDsa.Create(ECCurve.NamedCurves.nistP384),
                        "P-521" => ECDsa.Create(ECCurve.NamedCurves.nistP521),
                        "RSA-2048" => RSA.Create(2048),
                        _ => RSA.Create(4096),
                    }
                )
            )
        );

    private Task<byte[]> SignedAsync(DocumentSigner signer) =>
        Finisher.FinishSignedAsync(browser.Report, FinishedReport.Attached, signer, SmallPdf.Description);
}
