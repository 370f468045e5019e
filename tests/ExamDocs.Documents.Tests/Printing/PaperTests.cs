using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates;
using ExamDocs.Templates.Certificate;
using ExamDocs.Templates.Notice;
using UglyToad.PdfPig;

namespace ExamDocs.Documents.Tests.Printing;

/// <summary>Sizes, fonts and soundness of what comes out of the printer.</summary>
public sealed class PaperTests(SharedBrowser browser)
{
    // ISO 216: A4 is 210 x 297 mm.
    [Fact]
    public void The_report_is_A4()
    {
        using var pdf = PdfDocument.Open(browser.Report);
        Assert.All(pdf.GetPages(), p =>
        {
            Assert.Equal(210, p.Width * 25.4 / 72, 0.2);
            Assert.Equal(297, p.Height * 25.4 / 72, 0.2);
        });
    }

    [Fact]
    public void Every_font_is_embedded_and_none_is_type_3()
    {
        var fonts = Tool.PdfFonts(browser.Report).Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(2).ToList();
        Assert.NotEmpty(fonts);
        Assert.All(fonts, f =>
        {
            Assert.Contains("NotoSans", f, StringComparison.Ordinal);
            Assert.Contains("TrueType", f, StringComparison.Ordinal);
            Assert.Matches(@"\syes\s+yes\s+yes\s", f);
        });
    }

    [Fact]
    public void Qpdf_finds_nothing_wrong() =>
        Assert.Contains("No syntax or stream encoding errors", Tool.QpdfCheck(browser.Report), StringComparison.Ordinal);

    [Fact]
    public async Task A_notice_goes_to_the_health_and_safety_executive_where_hired_kit_is_an_imminent_risk()
    {
        // SI 1998/2307 reg 10(1)(c) and 10(4).
        var item = Example.Visit.Items.First(i => i.Examination?.Defects.Any(d => d.ImminentRisk is true) is true);
        var text = await Notice(Example.Visit, item);
        Assert.Contains("HealthandSafetyExecutive", text, StringComparison.Ordinal);
        Assert.Contains("Existingorimminentriskofseriouspersonalinjury", text, StringComparison.Ordinal);
        Assert.Contains("regulation10(3)(a)", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_notice_is_printed_where_every_address_is_missing()
    {
        var bare = Example.Record with
        {
            Visit = Example.Record.Visit with { Employer = null, Premises = null, HiredFrom = null, EnforcingAuthority = null },
            People = [],
        };
        var visit = Example.Determined(bare);
        var item = visit.Items.First(i => i.Outcome == Outcome.Withdraw && i.Examination?.Defects.Count > 0);
        var text = await Notice(visit, item);
        Assert.Contains("Donotuse", text, StringComparison.Ordinal);
        Assert.Contains("addressnotrecorded", text, StringComparison.Ordinal);
        Assert.Contains(Tool.Squeeze(item.Examination!.Defects[0].Description!), text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_later_defect_is_noticed_with_its_last_day()
    {
        var item = Example.Visit.Items.First(i => i.Outcome == Outcome.FitUntil && i.Examination?.Defects.Count > 0);
        var text = await Notice(Example.Visit, item);
        Assert.Contains("Donotuseafter", text, StringComparison.Ordinal);
        Assert.Contains("regulation10(3)(b)", text, StringComparison.Ordinal);
    }

    [Fact]
    public void There_is_no_notice_where_there_is_nothing_to_tell()
    {
        var item = Example.Visit.Items.First(i => i.Outcome == Outcome.Fit && i.Examination?.Defects.Count == 0);
        Assert.Throws<ArgumentException>(() => new NoticeModel(Example.Identity(DocumentTypes.Notice), Example.Visit, item));
    }

    // ISO/IEC 17050-1:2004, 6.1 (a) to (h).
    [Fact]
    public async Task A_certificate_holds_the_eight_contents_and_says_whose_statement_it_is()
    {
        var renewal = Example.Record.Renewals.First(r => r.FittedPart is not null);
        var (parent, part) = (Example.Item(renewal.Item!), Example.Item(renewal.FittedPart!));
        var model = new CertificateModel(Example.Identity(DocumentTypes.Certificate), Example.Visit, parent, [renewal], [part]);
        var text = Tool.Squeeze(Tool.PdfText(await browser.PrintAsync(await browser.Renderer.HtmlAsync(model))));
        Assert.All("abcdefgh", clause => Assert.Contains($"({clause})", text, StringComparison.Ordinal));
        string[] wanted =
        [
            "C-2026-000001",
            model.Signatory!.Name!,
            model.Signatory.Address!,
            renewal.RemovedPart!,
            renewal.FittedPart!,
            model.Name(renewal.DoneBy),
            model.Name(renewal.SupervisedBy),
            model.DocumentOf(renewal),
            model.Statement,
            "It is not the maker's declaration of conformity",
            .. model.Requirements,
            .. model.Limits,
        ];
        Assert.All(wanted, w => Assert.Contains(Tool.Squeeze(w), text, StringComparison.Ordinal));
    }

    [Fact]
    public void No_certificate_is_made_for_an_item_that_is_not_fit()
    {
        var renewal = Example.Record.Renewals[0];
        var withdrawn = Example.Visit.Items.First(i => i.Outcome == Outcome.Withdraw);
        Assert.Throws<ArgumentException>(() =>
            new CertificateModel(Example.Identity(DocumentTypes.Certificate), Example.Visit, withdrawn, [renewal], [])
        );
    }

    [Theory]
    [InlineData("R-2026-000001\"; } body { display: none")]
    [InlineData("R-2026-1")]
    [InlineData("Q-2026-000001")]
    [InlineData("R-2026-000001\n")]
    public void A_number_of_another_form_is_refused(string number) =>
        Assert.Throws<ArgumentException>(() => new DocumentIdentity("report", number, Example.Today, "0.1.0"));

    private async Task<string> Notice(DeterminedVisit visit, DeterminedItem item) =>
        Tool.Squeeze(
            Tool.PdfText(
                await browser.PrintAsync(
                    await browser.Renderer.HtmlAsync(new NoticeModel(Example.Identity(DocumentTypes.Notice), visit, item))
                )
            )
        );
}
