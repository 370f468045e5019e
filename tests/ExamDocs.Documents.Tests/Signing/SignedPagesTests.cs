using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.Joining;
using ExamDocs.Documents.LabelSheets;
using ExamDocs.Documents.ReadingBack;
using ExamDocs.Documents.Signing;
using ExamDocs.Documents.Tests.LabelSheets;
using ExamDocs.Documents.Tests.Printing;
using ExamDocs.Templates;
using ExamDocs.Templates.Notice;
using ExamDocs.Templates.Report;
using ExamDocs.Templates.Shared;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Common;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;

namespace ExamDocs.Documents.Tests.Signing;

/// <summary>What is done with signed documents, and what they say in print.</summary>
public sealed class SignedPagesTests(SharedBrowser browser)
{
    private static readonly TestAuthority Authority = TestAuthority.One;
    private static readonly DocumentSigner Signer = new(Authority.Key());

    private static ElectronicSignature Said =>
        new(Signer.Key.Name, Signer.Key.Issuer, Signer.Key.SerialNumber, Signer.Key.Fingerprint, IsTimestamped: false);

    [Theory]
    [InlineData("quarantine-label")]
    [InlineData("due-label")]
    public async Task Signed_labels_are_blackened_and_placed_as_unsigned_ones(string kind)
    {
        var stock = LabelStock.Find(LabelFormat.Of(kind)!.UsualStock)!;
        var label = (await new PrintedLabels(browser).OfAsync(stock.Format))[0];
        var (plain, signed) = (Finisher.Finish(label, []), await SignedAsync(label));
        Assert.Equal(
            Tool.ColourRaster(LabelSheet.Impose([plain], stock, new Placing()), 100),
            Tool.ColourRaster(LabelSheet.Impose([signed], stock, new Placing()), 100)
        );
        var (black, blackSigned) = (BlackInk.Only(plain), BlackInk.Only(signed));
        Assert.Equal(
            Tool.ColourRaster(LabelSheet.Impose([black], stock, new Placing()), 100),
            Tool.ColourRaster(LabelSheet.Impose([blackSigned], stock, new Placing()), 100)
        );
        Assert.Empty(Fields(LabelSheet.Impose([blackSigned], stock, new Placing())));
    }

    [Fact]
    public async Task Joined_pages_hold_no_broken_signature()
    {
        var signed = await SignedAsync(browser.Report);
        var joined = JoinedPages.Of([signed, signed], "pile");
        Assert.Contains("No syntax or stream encoding errors", Tool.QpdfCheck(joined), StringComparison.Ordinal);
        Assert.Empty(Fields(joined));
        Assert.Contains("does not contain any signatures", SignatureTool.PdfSig(joined, Authority.RootPem), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_field_lies_on_the_block_that_says_so()
    {
        var html = await browser.Renderer.HtmlAsync(Report(Said));
        var printed = await browser.PrintAsync(html);
        Assert.Empty(FaithfulPrint.Faults(html, printed));
        var signed = await SignedAsync(printed);
        Assert.Empty(FaithfulPrint.Faults(html, signed));
        using var document = PdfDocument.Open(signed);
        var (page, field) = document
            .GetPages()
            .SelectMany(p => p.GetAnnotations().Where(a => a.Type is UglyToad.PdfPig.Annotations.AnnotationType.Widget).Select(a => (p, a)))
            .Single();
        var inside = string.Concat(page.Letters.Where(l => Holds(field.Rectangle, l.Location)).Select(l => l.Value));
        Assert.Contains(
            Tool.Squeeze($"Signed electronically with the certificate of {Said.Name}."),
            Tool.Squeeze(inside.Normalize(System.Text.NormalizationForm.FormKC)),
            StringComparison.Ordinal
        );
        Assert.Contains(
            Tool.Squeeze($"beginning {Said.ShortFingerprint}."),
            Tool.Squeeze(inside.Normalize(System.Text.NormalizationForm.FormKC)),
            StringComparison.Ordinal
        );
        var tag = Tool.QpdfJson(signed).Values.Single(o => o["/S"]?.ToString() is "/Form");
        Assert.Contains("OBJR", tag["/K"]!.ToJsonString(), StringComparison.Ordinal);
        Assert.DoesNotContain(Tool.QpdfJson(signed).Values, o => o["/S"]?.ToString() is "/Link");
        Assert.True(SignatureCheck.Of(signed, Authority.Trust, TestAuthority.Now) is { IsIntact: true, IsTrusted: true });
    }

    public static TheoryData<string> Languages => [.. Language.All.Select(l => l.Tag)];

    [Theory]
    [MemberData(nameof(Languages))]
    public async Task A_signed_report_has_no_line_to_sign_on_and_an_unsigned_one_has(string tag)
    {
        var language = Language.Find(tag)!;
        var (signed, unsigned) = (
            await language.InAsync(() => browser.Renderer.HtmlAsync(Report(Said))),
            await language.InAsync(() => browser.Renderer.HtmlAsync(Report(null)))
        );
        var words = CommonPhrases.Languages.In(language);
        Assert.Contains(words.SignedElectronically(Said.Name), System.Net.WebUtility.HtmlDecode(signed), StringComparison.Ordinal);
        Assert.DoesNotContain(words.ToBeSigned, System.Net.WebUtility.HtmlDecode(signed), StringComparison.Ordinal);
        Assert.Contains(words.ToBeSigned, System.Net.WebUtility.HtmlDecode(unsigned), StringComparison.Ordinal);
        Assert.DoesNotContain(words.HowToCheckSignature, System.Net.WebUtility.HtmlDecode(unsigned), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_received_is_still_signed_for_by_hand()
    {
        var identity = Example.Identity(DocumentTypes.Notice) with { Signature = Said };
        var html = await browser.Renderer.HtmlAsync(new NoticeModel(identity, Example.Visit, Example.Item("CON-07")));
        Assert.Contains("signature-electronic", html, StringComparison.Ordinal);
        Assert.Contains("signature-lines", html, StringComparison.Ordinal);
    }

    private static bool Holds(PdfRectangle area, PdfPoint at) =>
        at.X >= area.Left && at.X <= area.Right && at.Y >= area.Bottom && at.Y <= area.Top;

    private static ReportModel Report(ElectronicSignature? signature)
    {
        var author = Example.Visit.Person(Example.Item("BRG-08").Examination!.Examiner)!;
        return new ReportModel(
            Example.Identity(DocumentTypes.Report) with
            {
                Signature = signature,
            },
            Example.Visit,
            [Example.Item("BRG-08")],
            author,
            author
        );
    }

    private static IEnumerable<string> Fields(byte[] pdf) =>
        Tool.QpdfJson(pdf)
            .Where(o => o.Value["/Subtype"]?.ToString() is "/Widget" || o.Value["/AcroForm"] is not null || o.Value["/Perms"] is not null)
            .Select(o => o.Key);

    private static Task<byte[]> SignedAsync(byte[] printed) => Finisher.FinishSignedAsync(printed, [], Signer, SmallPdf.Description);
}
