using ExamDocs.Documents.LabelSheets;
using ExamDocs.Templates;
using ExamDocs.Templates.Label;
using ExamDocs.Templates.Shared.Wording;
using UglyToad.PdfPig;

namespace ExamDocs.Documents.Tests.Printing;

public sealed class HandTagTests(SharedBrowser browser)
{
    [Theory]
    [InlineData("en", "DO NOT USE", "Item Serial Why Since By Ring")]
    [InlineData("de", "NICHT BENUTZEN", "Gegenstand Seriennr. Grund Seit Von Anrufen")]
    [InlineData("fr", "NE PAS UTILISER", "Équipement N° de série Motif Depuis Par Appeler")]
    public async Task It_forbids_in_the_language_and_has_a_line_for_each_answer_and_no_number(string language, string signal, string heads)
    {
        var pdf = await PrintAsync(language, null);
        var text = Tool.Squeeze(Tool.PdfText(pdf));
        Assert.Contains(Tool.Squeeze(signal), text, StringComparison.Ordinal);
        Assert.Contains(Tool.Squeeze(heads), text, StringComparison.Ordinal);
        Assert.DoesNotMatch("[A-Z]-20[0-9]{2}-", text);
        using var read = PdfDocument.Open(pdf);
        var page = Assert.Single(read.GetPages());
        Overlaps.Refuse(page);
        // Room to write by hand: one line for each head, and a second for the reason.
        var lines = page
            .Paths.Select(p => p.GetBoundingRectangle()!.Value)
            .Where(r => r is { Height: > 0 and < 1.5 } && r.Width > 0.8 * page.Width)
            .Select(r => Math.Round(r.Bottom))
            .Distinct()
            .Order()
            .ToList();
        var gaps = lines.Zip(lines.Skip(1), (lower, upper) => (upper - lower) * 25.4 / 72).ToList();
        Assert.True(gaps.Count(g => g >= 8) >= 7, string.Join(", ", gaps));
    }

    [Fact]
    public async Task The_issuer_s_number_is_printed_and_the_tag_turns_to_black()
    {
        var pdf = await PrintAsync("en", new Letterhead { Name = "Oakhollow Examinations", Telephone = "0000 555 0142" });
        Assert.Contains("Ring 0000 555 0142 Oakhollow Examinations", Tool.PdfText(pdf).ReplaceLineEndings(" "), StringComparison.Ordinal);
        var stock = LabelStock.Find("tag-100x150")!;
        using var read = PdfDocument.Open(LabelSheet.Impose([BlackInk.Only(pdf), BlackInk.Only(pdf)], stock, new Placing()));
        Assert.Equal(2, read.NumberOfPages);
    }

    private async Task<byte[]> PrintAsync(string language, Letterhead? head) =>
        await browser.PrintAsync(await Language.Find(language)!.InAsync(() => browser.Renderer.HtmlAsync(new HandTagModel(head))));
}
