using ExamDocs.Documents.LabelSheets;
using ExamDocs.Documents.Tests.Printing;
using SkiaSharp;

namespace ExamDocs.Documents.Tests.LabelSheets;

public sealed class BlackInkTests(SharedBrowser browser)
{
    private readonly PrintedLabels _labels = new(browser);

    public static TheoryData<string> Kinds => [.. LabelFormat.All.Select(f => f.Type.Kind)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Only_black_and_white_are_left_and_every_word(string kind)
    {
        var stock = LabelStock.Find(LabelFormat.Of(kind)!.UsualStock)!;
        foreach (var label in await _labels.OfAsync(stock.Format))
        {
            var black = BlackInk.Only(label);
            using var before = SKBitmap.Decode(Tool.ColourRaster(label, 203, smooth: false));
            using var after = SKBitmap.Decode(Tool.ColourRaster(black, 203, smooth: false));
            Assert.Contains(before.Pixels, p => !IsBlackOrWhite(p));
            Assert.DoesNotContain(after.Pixels, p => !IsBlackOrWhite(p));
            // Neither a blank nor a black page: whatever was printed is printed, and nothing else.
            var (inked, blackened) = (before.Pixels.Count(p => p.Green < 200), after.Pixels.Count(p => p.Green < 200));
            Assert.InRange(blackened / (double)inked, 0.98, 1.02);
            Assert.Equal(Tool.PdfText(label), Tool.PdfText(black));
            using var smooth = SKBitmap.Decode(Tool.ColourRaster(LabelSheet.Impose([black], stock, new Placing()), 203));
            Assert.DoesNotContain(smooth.Pixels, p => p.Red != p.Green || p.Green != p.Blue);
            Assert.NotNull(QrCode.Read(Tool.Raster(black, 203)));
        }
    }

    [Fact]
    public void A_page_with_pictures_or_patterns_is_not_let_through_in_part()
    {
        using var document = new PdfSharp.Pdf.PdfDocument();
        var page = document.AddPage();
        using (var paper = PdfSharp.Drawing.XGraphics.FromPdfPage(page))
        {
            var brush = new PdfSharp.Drawing.XLinearGradientBrush(
                new PdfSharp.Drawing.XPoint(0, 0),
                new PdfSharp.Drawing.XPoint(50, 50),
                PdfSharp.Drawing.XColors.Red,
                PdfSharp.Drawing.XColors.Blue
            );
            paper.DrawRectangle(brush, 0, 0, 50, 50);
        }
        using var saved = new MemoryStream();
        document.Save(saved, closeStream: false);
        Assert.Throws<NotSupportedException>(() => BlackInk.Only(saved.ToArray()));
    }

    [Theory]
    [InlineData(".6078 .1412 .1373 RG .6078 .1412 .1373 rg\n", "0 G 0 g\n")]
    [InlineData("1 1 1 rg 0 0 10 10 re f", "1 g 0 0 10 10 re f")]
    [InlineData("0.5 g 0.95 G", "0 g 1 G")]
    [InlineData("/F1 9 Tf (1 0 0 rg \\) 0 1 0 RG) Tj", "/F1 9 Tf (1 0 0 rg \\) 0 1 0 RG) Tj")]
    [InlineData("<0102> Tj % 1 0 0 rg\n1 0 0 rg", "<0102> Tj % 1 0 0 rg\n0 g")]
    [InlineData("/P <</MCID 3 >>BDC\n0 0 0 rg", "/P <</MCID 3 >>BDC\n0 g")]
    [InlineData("[(a)-20(b)]TJ 1 0 0 rg[(c)]TJ", "[(a)-20(b)]TJ 0 g[(c)]TJ")]
    [InlineData("", "")]
    public void Colours_are_turned_where_they_are_set_and_nowhere_else(string content, string wanted) =>
        Assert.Equal(wanted, ColourOperators.Blacken(content));

    [Theory]
    [InlineData("/Pattern cs /P9 scn")]
    [InlineData("0 1 1 0 k")]
    [InlineData("/Sh1 sh")]
    [InlineData("/CS0 CS 1 0 0 SC")]
    public void Colours_set_in_another_way_are_refused(string content) =>
        Assert.Throws<NotSupportedException>(() => ColourOperators.Blacken(content));

    private static bool IsBlackOrWhite(SKColor p) => p.Red == p.Green && p.Green == p.Blue && p.Red is 0 or 255;
}
