using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.Rendering;
using ExamDocs.Documents.Signing;
using ExamDocs.Documents.Tests.Signing;
using ExamDocs.Templates.Shared.Wording.Common;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Tests.Issuing;
using ExamDocs.UseCases.Verifying;
using static ExamDocs.UseCases.Tests.Verifying.IssuedForVerifying;

namespace ExamDocs.UseCases.Tests.Verifying;

/// <summary>A signature counts by the certificate that was named, or by one that a named authority issued for documents.</summary>
public sealed class TrustTests
{
    private const string ForServers = "1.3.6.1.5.5.7.3.1",
        ForClients = "1.3.6.1.5.5.7.3.2",
        ForMail = "1.3.6.1.5.5.7.3.4",
        ForDocuments = "1.3.6.1.5.5.7.3.36",
        ForCode = "1.3.6.1.5.5.7.3.3",
        ForAll = "2.5.29.37.0";

    [Theory]
    [InlineData(true, ForDocuments)]
    [InlineData(true, ForMail)]
    [InlineData(true, ForMail, ForClients)]
    [InlineData(true)]
    [InlineData(false, ForServers)]
    [InlineData(false, ForServers, ForClients)]
    [InlineData(false, ForCode)]
    [InlineData(false, ForAll)]
    public async Task An_authority_counts_only_for_certificates_that_sign_documents(bool counts, params string[] purposes)
    {
        using var workspace = new Workspace();
        var certificate = TestAuthority.One.Certificate("fit.example", usage: X509KeyUsageFlags.DigitalSignature, purposes: purposes);
        var label = await LabelAsync(workspace, certificate);
        foreach (var authority in new[] { TestAuthority.One.RootPem, TestAuthority.One.MiddlePem })
            Assert.Equal(counts, IsGenuine(await VerifiedAsync(label, authority)));
        Assert.True(IsGenuine(await VerifiedAsync(label, certificate.ExportCertificatePem())));
    }

    [Fact]
    public async Task A_certificate_named_beside_the_signers_does_not_count_for_it()
    {
        using var workspace = new Workspace();
        var label = await LabelAsync(workspace, TestAuthority.One.Certificate());
        Assert.False(IsGenuine(await VerifiedAsync(label, TestAuthority.One.Certificate().ExportCertificatePem())));
        Assert.False(IsGenuine(await VerifiedAsync(label, SelfSigned("Ada Invented").ExportCertificatePem())));
        Assert.False(IsGenuine(await VerifiedAsync(label, null)));
        Assert.Equal(Verdict.CannotTell, (await VerifiedAsync(label, null)).Verdict);
    }

    /// <summary>What the computer trusts for the web is asked by nobody: a store of roots is refused before it is asked.</summary>
    [Fact]
    public void A_store_of_roots_is_no_ones_certificate()
    {
        var store = SignatureTrust.FromPem(
            string.Join(
                '\n',
                Enumerable.Range(0, SignatureTrust.MostCertificates + 1).Select(n => SelfSigned($"Root {n}").ExportCertificatePem())
            )
        )!;
        Assert.True(store.IsStore);
        Assert.False(SignatureTrust.FromPem(TestAuthority.One.RootPem)!.IsStore);
    }

    [Fact]
    public async Task Who_signed_stands_beside_who_examined()
    {
        using var workspace = new Workspace();
        var certificate = TestAuthority.One.Certificate("Somebody Else");
        var verified = await VerifiedAsync(await LabelAsync(workspace, certificate), certificate.ExportCertificatePem());
        Assert.Contains(verified.Statements, s =>
            s.Question == "signature"
            && s.Text.Text.Contains("signed by Somebody Else", StringComparison.Ordinal)
            && s.Text.Text.Contains("examined, as it says, by ", StringComparison.Ordinal)
        );
    }

    /// <summary>
    /// The page is covered and lettered anew, or printed from other words; then signed with the very certificate that is trusted.
    /// </summary>
    [Fact]
    public async Task A_page_lettered_anew_is_not_valid_whoever_signs_it()
    {
        using var workspace = new Workspace();
        var certificate = TestAuthority.One.Certificate();
        var label = await LabelAsync(workspace, certificate);
        foreach (
            var change in (Func<string, string>[])
                [
                    html =>
                        html.Replace(
                            "</body>",
                            "<div style='position:absolute;inset:0;background:#fff;font-size:30px'>FIT FOR USE</div></body>",
                            StringComparison.Ordinal
                        ),
                    html => html.Replace("CON-07", "CON-08", StringComparison.Ordinal),
                    html => html.Replace("</style>", "h1, svg { opacity: 0 } </style>", StringComparison.Ordinal),
                    html =>
                        html.Replace(
                            "</body>",
                            "<svg style='position:absolute;left:0;top:0;width:20mm' viewBox='0 0 10 10'><path d='M0 0L10 10' "
                                + "stroke='#000'/></svg></body>",
                            StringComparison.Ordinal
                        ),
                    html => html.Replace("</style>", "body { transform: rotate(1deg) } </style>", StringComparison.Ordinal),
                ]
        )
        {
            var forged = await SignedAnewAsync(label, certificate, change);
            var path = Path.Combine(workspace.Folder, "forged.pdf");
            await File.WriteAllBytesAsync(path, forged, TestContext.Current.CancellationToken);
            var verified = await VerifiedAsync(path, certificate.ExportCertificatePem());
            Assert.Contains(verified.Statements, s => s is { Question: "genuine", Answer: Answer.Holds });
            Assert.Equal(Verdict.NotValid, verified.Verdict);
        }
        await File.WriteAllBytesAsync(
            Path.Combine(workspace.Folder, "forged.pdf"),
            await SignedAnewAsync(label, certificate, html => html),
            TestContext.Current.CancellationToken
        );
        Assert.Equal(
            Verdict.CannotTell,
            (await VerifiedAsync(Path.Combine(workspace.Folder, "forged.pdf"), certificate.ExportCertificatePem())).Verdict
        );
    }

    private async Task<byte[]> SignedAnewAsync(string label, X509Certificate2 certificate, Func<string, string> change)
    {
        var pdf = await File.ReadAllBytesAsync(label);
        var contents = DocumentContents.Of(pdf).Contents!;
        await using var renderer = new DocumentRenderer();
        var html = await RecomposedDocument.HtmlAsync(
            RecomposedDocument.Jobs(contents, contents.Determined(Core.Regimes.KnownRules.BuiltIn)!)[0],
            contents.Basis,
            renderer,
            []
        );
        return await Finisher.FinishSignedAsync(
            await IssuedForVerifying.PrintAsync(change(html)),
            EmbeddedFiles.Within(pdf),
            new DocumentSigner(TestAuthority.One.Key(certificate)),
            CommonPhrases.Languages.In(contents.Basis.Language).SignatureField
        );
    }

    private static X509Certificate2 SelfSigned(string name)
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        return new CertificateRequest($"CN={name}", key, HashAlgorithmName.SHA256).CreateSelfSigned(
            Certificates.From.ToDateTimeOffset(),
            Certificates.Until.ToDateTimeOffset()
        );
    }

    private static async Task<string> LabelAsync(Workspace workspace, X509Certificate2 certificate)
    {
        var request = workspace.Request(workspace.Write(Workspace.Example().Only("CON-07"))) with
        {
            Only = ["quarantine-label"],
            Style = new PrintStyle { Signer = new DocumentSigner(TestAuthority.One.Key(certificate)) },
        };
        return workspace.FileOf(Assert.Single((await IssueDocuments.RunAsync(request, TestContext.Current.CancellationToken)).Documents));
    }

    private static async Task<VerifiedFile> VerifiedAsync(string file, string? named) =>
        Assert.Single(
            await VerifyDocuments.RunAsync(
                new VerifyRequest
                {
                    Browser = OpenBrowser.Instance,
                    Files = [file],
                    Now = Now,
                    Trust = named is null ? SignatureTrust.InNobody : SignatureTrust.FromPem(named)!,
                },
                TestContext.Current.CancellationToken
            )
        );

    private static bool IsGenuine(VerifiedFile verified) =>
        verified.Statements.Any(s => s is { Question: "genuine", Answer: Answer.Holds });
}
