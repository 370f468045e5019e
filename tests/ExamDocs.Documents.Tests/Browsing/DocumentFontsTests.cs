using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.Tests.Printing;

namespace ExamDocs.Documents.Tests.Browsing;

/// <summary>A document is printed in its own type wherever it is printed, or not at all.</summary>
public sealed class DocumentFontsTests(SharedBrowser shared)
{
    private static readonly TimeSpan Limit = TimeSpan.FromMinutes(2);

    private static readonly string[] Faces = ["NotoSans-Regular", "NotoSans-Bold", "NotoSans-Italic", "NotoSansDisplay-Bold"];

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_system_that_lacks_the_fonts_prints_the_same_pages_with_those_of_the_program()
    {
        using var system = new WithoutFonts();
        await using var browser = await Browser.StartAsync(system.Program, Limit, Bundled());
        var printed = await browser.PrintAsync(await shared.Renderer.HtmlAsync(shared.ReportModel), Cancellation);
        Assert.Equal(Names(shared.Report), Names(printed));
        Assert.Equal(shared.ReportText, Tool.PdfText(printed));
        Assert.Equal(Tool.Raster(shared.Report, 60), Tool.Raster(printed, 60));
    }

    [Fact]
    public async Task Where_nobody_has_the_fonts_nothing_is_printed_in_another()
    {
        using var system = new WithoutFonts();
        await using var browser = await Browser.StartAsync(system.Program, Limit, new DocumentFonts([]));
        var missing = await Assert.ThrowsAsync<FontsMissing>(() => browser.PrintAsync(Page("Do not use"), Cancellation));
        Assert.Contains("fonts-noto-core", missing.Message, StringComparison.Ordinal);
        // What asks for no type of ours prints as it stands.
        Assert.Contains("plain", Tool.PdfText(await browser.PrintAsync("<p>plain", Cancellation)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_the_system_has_the_fonts_those_of_the_program_stay_unused()
    {
        var others = new DocumentFonts([FontFace.Of("NotoSans-Regular.ttf", await File.ReadAllBytesAsync(OtherFont, Cancellation))]);
        await using var browser = await Browser.StartAsync(BrowserPath.Find(), Limit, others);
        var pdf = await browser.PrintAsync(Page("Do not use"), Cancellation);
        Assert.Equal(["NotoSans-Regular"], Names(pdf));
    }

    [Fact]
    public async Task A_font_of_the_program_that_is_another_prints_nothing()
    {
        using var system = new WithoutFonts();
        var others = new DocumentFonts([FontFace.Of("NotoSans-Regular.ttf", await File.ReadAllBytesAsync(OtherFont, Cancellation))]);
        await using var browser = await Browser.StartAsync(system.Program, Limit, others);
        await Assert.ThrowsAsync<FontsMissing>(() => browser.PrintAsync(Page("Do not use"), Cancellation));
    }

    [Theory]
    [InlineData("NotoSans-Regular.ttf", "Noto Sans", false, false)]
    [InlineData("NotoSans-BoldItalic.ttf", "Noto Sans", true, true)]
    [InlineData("NotoSansDisplay-Bold.ttf", "Noto Sans Display", true, false)]
    public void A_face_is_known_by_its_file(string file, string family, bool bold, bool italic)
    {
        var face = FontFace.Of(file, [1, 2, 3]);
        Assert.Equal((family, bold, italic), (face.Family, face.IsBold, face.IsItalic));
        Assert.Contains("base64,AQID", face.Rule, StringComparison.Ordinal);
    }

    [Fact]
    public void Another_font_is_refused() => Assert.Throws<ArgumentException>(() => FontFace.Of("Other-Regular.ttf", []));

    private const string OtherFont = "/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf";

    private static string Page(string text) =>
        $"<!DOCTYPE html><html lang='en'><head><style>body {{ font: 12pt \"Noto Sans\", sans-serif; }}</style></head><body><p>{text}</p></body></html>";

    private static DocumentFonts Bundled() =>
        new([.. Faces.Select(f => FontFace.Of($"{f}.ttf", File.ReadAllBytes($"/usr/share/fonts/truetype/noto/{f}.ttf")))]);

    private static List<string> Names(byte[] pdf) =>
        [
            .. Tool.PdfFonts(pdf)
                .Split('\n', StringSplitOptions.RemoveEmptyEntries)
                .Skip(2)
                .Select(line => line.Split(' ')[0].Split('+')[^1])
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal),
        ];
}
