using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.Tests.Printing;
using SkiaSharp;

namespace ExamDocs.Documents.Tests.Finishing;

/// <summary>What other people's programs find in a finished file.</summary>
public sealed class FinisherTests(SharedBrowser browser)
{
    private static readonly XNamespace Rdf = "http://www.w3.org/1999/02/22-rdf-syntax-ns#";
    private static readonly XNamespace PdfA = "http://www.aiim.org/pdfa/ns/id/";
    private static readonly XNamespace PdfUa = "http://www.aiim.org/pdfua/ns/id/";
    private static readonly XNamespace Dublin = "http://purl.org/dc/elements/1.1/";
    private static readonly XNamespace Xmp = "http://ns.adobe.com/xap/1.0/";

    [Fact]
    public void Qpdf_finds_nothing_wrong() =>
        Assert.Contains("No syntax or stream encoding errors", Tool.QpdfCheck(FinishedReport.Of(browser)), StringComparison.Ordinal);

    [Fact]
    public void The_same_file_and_data_give_the_same_bytes() => Assert.Equal(FinishedReport.Of(browser), FinishedReport.Anew(browser));

    [Fact]
    public void Another_record_gives_another_identifier()
    {
        var other = Finisher.Finish(browser.Report, [new("examdocs.json", "What was recorded", "{}"u8.ToArray())]);
        Assert.NotEqual(Identifier(FinishedReport.Of(browser)), Identifier(other));
    }

    [Fact]
    public void The_data_come_out_byte_for_byte()
    {
        var files = Tool.Attachments(FinishedReport.Of(browser));
        Assert.Equal(["examdocs.json", "outcome.json"], files.Keys.Order(StringComparer.Ordinal));
        Assert.Equal(FinishedReport.Record, files["examdocs.json"]);
        Assert.Equal(FinishedReport.Outcome, files["outcome.json"]);
    }

    [Fact]
    public void Each_file_says_how_the_document_depends_on_it()
    {
        // ISO 19005-3, 6.8: AF in the catalog, AFRelationship, and the type of each file.
        var json = Tool.QpdfJson(FinishedReport.Of(browser));
        var catalog = json.Values.Single(o => o["/Type"]?.ToString() is "/Catalog");
        Assert.Equal(2, catalog["/AF"]!.AsArray().Count);
        Assert.Equal(2, json.Values.Count(o => o["/AFRelationship"]?.ToString() is "/Data"));
        var streams = json.Values.Where(o => o["/Type"]?.ToString() is "/EmbeddedFile").ToList();
        Assert.Equal(2, streams.Count);
        Assert.All(streams, s => Assert.Equal("/application/json", s["/Subtype"]!.ToString()));
        Assert.Contains(FinishedReport.Record.Length, streams.Select(s => (int)s["/Params"]!["/Size"]!));
    }

    [Fact]
    public void Pages_text_and_fonts_stay()
    {
        var finished = FinishedReport.Of(browser);
        Assert.Equal(browser.ReportText, Tool.PdfText(finished));
        Assert.Equal(Tool.PdfFonts(browser.Report).Split('\n').Select(FontName), Tool.PdfFonts(finished).Split('\n').Select(FontName));
        Assert.Equal(Tool.Raster(browser.Report, 60), Tool.Raster(finished, 60));
    }

    [Fact]
    public async Task Tags_and_bookmarks_stay()
    {
        var printed = await browser.PrintAsync(
            "<!DOCTYPE html><html lang='en'><title>t</title><h1>One</h1><h2>Two</h2>"
                + "<table><thead><tr><th>a<th>b<tbody><tr><td>c<td>d</table><ul><li>x</ul>"
        );
        var finished = Finisher.Finish(printed, FinishedReport.Attached);
        Assert.Equal(Tool.Structure(printed), Tool.Structure(finished));
        Assert.All(["H1", "H2", "Table", "/Scope /Column", "LI"], tag =>
            Assert.Contains(tag, Tool.Structure(finished), StringComparison.Ordinal)
        );
        Assert.Equal(2, Tool.QpdfJson(finished).Values.Count(o => o["/Dest"] is not null && o["/Title"] is not null));
    }

    [Fact]
    public void It_says_what_it_is_as_pdf_a_and_pdf_ua_ask()
    {
        var metadata = Metadata(FinishedReport.Of(browser));
        Assert.Equal("3", Assert.Single(metadata.Descendants(PdfA + "part")).Value);
        Assert.Equal("A", Assert.Single(metadata.Descendants(PdfA + "conformance")).Value);
        Assert.Equal("1", Assert.Single(metadata.Descendants(PdfUa + "part")).Value);
        Assert.Equal("en", metadata.Descendants(Dublin + "language").Single().Descendants(Rdf + "li").Single().Value);
    }

    [Fact]
    public void Title_and_dates_are_the_same_in_both_places()
    {
        var finished = FinishedReport.Of(browser);
        var metadata = Metadata(finished);
        var info = Tool.PdfInfo(finished);
        Assert.Contains($"Title:           {metadata.Descendants(Dublin + "title").Single().Value}\n", info, StringComparison.Ordinal);
        var created = metadata.Descendants(Xmp + "CreateDate").Single().Value;
        Assert.Contains($"CreationDate:    {created[..19]}", Tool.PdfInfo(finished, "-isodates"), StringComparison.Ordinal);
        Assert.Contains($"ModDate:         {created[..19]}", Tool.PdfInfo(finished, "-isodates"), StringComparison.Ordinal);
        Assert.Contains("PDF version:     1.7", info, StringComparison.Ordinal);
        Assert.Contains("Tagged:          yes", info, StringComparison.Ordinal);
    }

    [Fact]
    public void The_colour_profile_is_srgb()
    {
        using var space = SKColorSpace.CreateIcc(SrgbProfile.Bytes);
        Assert.NotNull(space);
        Assert.True(space.IsSrgb);
    }

    [Fact]
    public void A_page_with_an_undescribed_picture_claims_less()
    {
        var finished = Finisher.Finish(Replace(browser.Report, "/Alt (", "/Xlt ("), []);
        var metadata = Metadata(finished);
        Assert.Empty(metadata.Descendants(PdfUa + "part"));
        Assert.Equal("U", metadata.Descendants(PdfA + "conformance").Single().Value);
    }

    [Theory]
    [InlineData(
        "<h1>One</h1><h2>Two</h2><h3>Three</h3><h2>Two</h2><svg role='img' aria-label='a plot' width='9' height='9'><rect "
            + "width='9' height='9'/></svg>",
        true
    )]
    [InlineData("<h2>Two</h2>", false)]
    [InlineData("<h1>One</h1><h3>Three</h3>", false)]
    [InlineData("<p>no heading</p>", false)]
    [InlineData("<h1>One</h1><img width='9' height='9' src='data:image/gif;base64,R0lGODlhAQABAAAAACwAAAAAAQABAAA='>", false)]
    public async Task Accessible_is_claimed_only_where_headings_and_pictures_allow_it(string body, bool claimed)
    {
        var metadata = Metadata(Finisher.Finish(await browser.PrintAsync($"<!DOCTYPE html><html lang='en'><title>t</title>{body}"), []));
        Assert.Equal(claimed ? 1 : 0, metadata.Descendants(PdfUa + "part").Count());
        Assert.Equal(claimed ? "A" : "U", metadata.Descendants(PdfA + "conformance").Single().Value);
    }

    [Fact]
    public async Task A_title_of_any_letters_is_kept()
    {
        var printed = await browser.PrintAsync("<!DOCTYPE html><html lang='de'><title>Prüfung (漢) \\ & <b></title><p>x");
        var metadata = Metadata(Finisher.Finish(printed, []));
        Assert.Equal("Prüfung (漢) \\ & <b>", metadata.Descendants(Dublin + "title").Single().Value);
        Assert.Equal("de", metadata.Descendants(Dublin + "language").Single().Descendants(Rdf + "li").Single().Value);
    }

    private static string FontName(string line) => Regex.Replace(line, @"\s+\d+\s+\d+$", "", RegexOptions.None, TimeSpan.FromSeconds(1));

    private static string Identifier(byte[] pdf) =>
        Regex
            .Match(Encoding.Latin1.GetString(pdf), "/ID \\[<([0-9A-F]{32})>", RegexOptions.RightToLeft, TimeSpan.FromSeconds(5))
            .Groups[1]
            .Value;

    private static XDocument Metadata(byte[] pdf)
    {
        var text = Encoding.UTF8.GetString(pdf);
        var from = text.IndexOf("<x:xmpmeta", StringComparison.Ordinal);
        return XDocument.Parse(text[from..(text.IndexOf("</x:xmpmeta>", StringComparison.Ordinal) + "</x:xmpmeta>".Length)]);
    }

    private static byte[] Replace(byte[] pdf, string what, string with) =>
        Encoding.Latin1.GetBytes(Encoding.Latin1.GetString(pdf).Replace(what, with, StringComparison.Ordinal));
}
