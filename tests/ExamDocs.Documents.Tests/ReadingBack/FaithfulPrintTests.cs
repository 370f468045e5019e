using System.Globalization;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Documents.ReadingBack;
using ExamDocs.Documents.Tests.Printing;
using ExamDocs.Documents.Tests.Signing;
using ExamDocs.Templates;
using ExamDocs.Templates.Certificate;
using ExamDocs.Templates.CheckSheet;
using ExamDocs.Templates.EquipmentRecord;
using ExamDocs.Templates.Label;
using ExamDocs.Templates.Notice;

namespace ExamDocs.Documents.Tests.ReadingBack;

/// <summary>What was typed is what is printed, or it is said. Each fault is planted, so that the check can fail.</summary>
public sealed class FaithfulPrintTests(SharedBrowser browser)
{
    [Fact]
    public async Task The_examples_report_is_faithful() =>
        Assert.Empty(FaithfulPrint.Faults(await browser.Renderer.HtmlAsync(browser.ReportModel), browser.Report));

    [Fact]
    public async Task Every_label_and_notice_of_the_example_is_faithful()
    {
        foreach (
            var item in Example
                .Visit.Everything.Where(i => i.Outcome is Outcome.Withdraw or Outcome.Undetermined)
                .Where((_, n) => EveryByteTests.IsFull || n % 4 == 0)
        )
        {
            await AssertFaithful(
                await browser.Renderer.HtmlAsync(new LabelModel(Example.Identity(DocumentTypes.QuarantineLabel), Example.Visit, item))
            );
            if (item.Outcome is Outcome.Withdraw)
                await AssertFaithful(
                    await browser.Renderer.HtmlAsync(new NoticeModel(Example.Identity(DocumentTypes.Notice), Example.Visit, item))
                );
        }
    }

    /// <summary>What lies above is drawn after all else: its figures were taken for parts of the figures below.</summary>
    [Fact]
    public async Task Figures_within_figures_are_told_apart_whatever_is_drawn_first() =>
        Assert.Empty(await Faults("<p><b style='position:relative'>1</b> <b style='position:relative'>40</b></p><p>110</p><p>340</p>"));

    [Fact]
    public async Task Every_check_sheet_and_equipment_record_of_the_example_is_faithful()
    {
        foreach (
            var item in Example
                .Visit.Everything.Where((_, n) => EveryByteTests.IsFull || n % 30 == 0)
                .Concat(Example.Visit.Items.Where(i => i.Item.Id is "BRG-02" or "CLR-01" or "RGR-01"))
        )
        {
            await AssertFaithful(
                await browser.Renderer.HtmlAsync(new CheckSheetModel(Example.Identity(DocumentTypes.CheckSheet), Example.Visit, item))
            );
            await AssertFaithful(
                await browser.Renderer.HtmlAsync(
                    new EquipmentRecordModel(Example.Identity(DocumentTypes.EquipmentRecord), Example.Visit, item)
                )
            );
        }
    }

    [Theory]
    [InlineData("<p>Serial SN-100234</p>", "SN-100234", "SN-10234", "a digit lost")]
    [InlineData("<p>Serial SN-100234</p>", "SN-100234", "SN-100243", "two digits changed")]
    [InlineData("<p>11 May 2026</p>", "11 May 2026", "11 May 2025", "another year")]
    [InlineData("<p>5</p><p>5</p>", "<p>5</p><p>5</p>", "<p>5</p>", "the second of two that are alike")]
    [InlineData("<table><tr><td>A<td>150 kg<tr><td>B<td>25 kN</table>", "150 kg", "", "a value left out")]
    public async Task What_differs_from_the_page_is_found(string page, string typed, string printed, string why) =>
        Assert.True(
            FaithfulPrint.Faults(page, await browser.PrintAsync(page.Replace(typed, printed, StringComparison.Ordinal))).Count > 0,
            why
        );

    [Theory]
    [InlineData(
        "<div style='width:60mm;overflow:hidden;white-space:nowrap'>An identity that is far too long for its place: SN-100234-AB-77</div>",
        "right"
    )]
    [InlineData("<div style='height:3mm;overflow:hidden;font-size:10mm;line-height:10mm'>SN-100234</div>", "below")]
    [InlineData("<div style='position:absolute;left:-12mm'>SN-100234</div>", "the page's left")]
    [InlineData("<div style='position:absolute;top:-6mm'>SN-100234</div>", "the page's top")]
    [InlineData(
        "<div style='overflow:hidden;width:20mm;text-overflow:ellipsis;white-space:nowrap'>SN-100234-AB-77-LONG</div>",
        "an ellipsis"
    )]
    [InlineData("<div style='clip-path:inset(0 15mm 0 0);width:30mm'>SN-100234-ABCDE</div>", "a clip")]
    [InlineData(
        "<div style='columns:2;height:6mm;overflow:hidden'>one two three four five six seven eight nine ten eleven twelve "
            + "thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty one two three four five six seven eight nine "
            + "ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty one two three four five six "
            + "seven eight nine ten</div>",
        "columns"
    )]
    public async Task What_is_cut_is_found(string cut, string where) => Assert.True((await Faults(cut)).Count > 0, where);

    [Theory]
    [InlineData("<p style='display:none'>SN-100234</p>")]
    [InlineData("<p style='visibility:hidden'>SN-100234</p>")]
    [InlineData("<p style='font-size:0'>SN-100234</p>")]
    [InlineData("<p style='content-visibility:hidden'>SN-100234</p>")]
    [InlineData("<p>Connector \U00030EDE</p>")]
    [InlineData("<p style='text-transform:uppercase'>sn-100234a</p>")]
    public async Task What_is_not_shown_is_found(string hidden) =>
        Assert.Contains("is not printed whole", Assert.Single(await Faults(hidden)), StringComparison.Ordinal);

    [Theory]
    [InlineData("Żółć Ærøskøbing façade naïve office fluffy first waffle")]
    [InlineData("Ελένη Καραβά, Юрий Щедрин ёж")]
    [InlineData("½ ° ± × → ≤ € № 25 µm Ω 5 m² H₂O")]
    [InlineData("e\u0301 combined, A\u030A and n\u0303")]
    [InlineData("non\u2011breaking and soft\u2010hyphen\u00A0space")]
    [InlineData("שלום עולם")]
    [InlineData("יעל כהן 12 Yard")]
    [InlineData("محمد الأمين")]
    [InlineData("سلامة الحبال رقم 45")]
    [InlineData("Elm (שלום) 123-456 מספר AB-7")]
    [InlineData("สวัสดี हिन्दी தமிழ்")]
    [InlineData("a < b & c > d \"quoted\" 'single' — dash … dots")]
    [InlineData("SN-1/2\\3_4|5")]
    public async Task Other_writing_is_printed_and_read_back(string typed)
    {
        Assert.Empty(
            await Faults(
                $"<p>{System.Net.WebUtility.HtmlEncode(typed)}</p><table><tr><th>Name<td "
                    + $"style='width:14mm;overflow-wrap:anywhere'>{System.Net.WebUtility.HtmlEncode(typed)}</table>"
            )
        );
    }

    /// <summary>Not every computer has fonts for these: then each sign that is missing is named.</summary>
    [Theory]
    [InlineData("山田太郎 株式会社")]
    [InlineData("漢字（かな）カタカナ 高島屋")]
    [InlineData("김철수 한국")]
    public async Task Chinese_japanese_and_korean_are_printed_whole_or_named(string typed)
    {
        var html = Page($"<p>{typed}</p>");
        var pdf = await browser.PrintAsync(html);
        Assert.Equal(MissingGlyphs.In(html, pdf).Count == 0, FaithfulPrint.Faults(html, pdf).Count == 0);
    }

    [Theory]
    [InlineData("שלום עולם", "שלום")]
    [InlineData("שלום עולם", "שלום עול")]
    [InlineData("محمد الأمين", "محمد الأمن")]
    [InlineData("יעל כהן 12", "יעל כהן 13")]
    public async Task A_letter_lost_is_found_in_other_writing_too(string typed, string printed) =>
        Assert.NotEmpty(FaithfulPrint.Faults($"<p>{typed}</p>", await browser.PrintAsync(Page($"<p>{printed}</p>"))));

    [Fact]
    public async Task A_long_note_may_run_on_to_the_next_page_between_words()
    {
        var words = string.Join(' ', Enumerable.Range(0, 1500).Select(n => "word" + n.ToString(CultureInfo.InvariantCulture)));
        Assert.Empty(await Faults($"<table><thead><tr><th>Head</thead><tr><td>before<tr><td>{words}<tr><td>after</table>"));
        Assert.NotEmpty(
            FaithfulPrint.Faults(
                $"<p>{words}</p>",
                await browser.PrintAsync(Page($"<p>{words.Replace("word777", "word77", StringComparison.Ordinal)}</p>"))
            )
        );
    }

    [Fact]
    public void Letters_are_read_as_poppler_reads_them()
    {
        var ours = string.Concat(PrintedText.Of(browser.Report).SelectMany(p => p).Select(l => l.Text));
        Assert.Equal(Sorted(browser.ReportText), Sorted(ours));
    }

    private static string Sorted(string text) => string.Concat(FoldedText.Of(text).Where(c => c is not '\f').Order());

    private async Task<IReadOnlyList<string>> Faults(string body) =>
        [.. FaithfulPrint.Faults(Page(body), await browser.PrintAsync(Page(body))).Select(f => f.Words)];

    private async Task AssertFaithful(string html) => Assert.Empty(FaithfulPrint.Faults(html, await browser.PrintAsync(html)));

    private static string Page(string body) =>
        $"<!DOCTYPE html><html lang='en'><head><title>not printed</title><style>@page {{ size: A4; margin: 15mm; @top-left {{ "
        + $"content: 'margin'; }} }} body {{ font-family: 'Noto Sans'; }}</style></head><body>{body}</body></html>";
}
