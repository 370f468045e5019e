using ExamDocs.Documents.ReadingCopies;
using ExamDocs.Documents.Tests.Printing;
using SkiaSharp;

namespace ExamDocs.Documents.Tests.ReadingCopies;

public sealed class PicturePageTests
{
    [Theory]
    [InlineData(40, 30)]
    [InlineData(3000, 200)]
    [InlineData(200, 4000)]
    public void A_picture_lies_whole_on_a_page_of_A4(int width, int height)
    {
        using var red = new SKBitmap(width, height);
        red.Erase(SKColors.Red);
        using var jpeg = red.Encode(SKEncodedImageFormat.Jpeg, 90);
        var page = PicturePage.Of(jpeg.ToArray(), width, height);
        Tool.QpdfCheck(page);
        Assert.Equal(1, CopyPart.PagesOf(page));
        using var seen = SKBitmap.Decode(Tool.ColourRaster(page, 50));
        var drawn = seen
            .Pixels.Select((p, at) => (p, X: at % seen.Width, Y: at / seen.Width))
            .Where(p => p.p is { Red: > 200, Green: < 90 })
            .ToList();
        var (wide, high) = (drawn.Max(p => p.X) - drawn.Min(p => p.X) + 1, drawn.Max(p => p.Y) - drawn.Min(p => p.Y) + 1);
        Assert.InRange(wide / (double)high / (width / (double)height), 0.85, 1.15);
        Assert.True(drawn.Min(p => p.X) > 10 && drawn.Max(p => p.X) < seen.Width - 10);
    }
}
