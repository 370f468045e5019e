using System.Net;
using System.Text.RegularExpressions;
using SkiaSharp;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Outline;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace ExamDocs.Documents.Tests.Printing;

/// <summary>A rectangle drawn on a page; millimetres from the page's upper left corner.</summary>
internal sealed record DrawnBox(int Page, double Left, double Top, double Width, double Height);

/// <summary>Looks at a printed paper as a reader does who has not made it.</summary>
internal sealed class PrintedPaper(string html, byte[] pdf)
{
    private const double PointsPerMm = 72 / 25.4;
    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(5);
    private readonly Lazy<string> _text = new(() => Tool.Squeeze(Tool.PdfText(pdf)));

    public byte[] Pdf => pdf;

    public string Html => html;

    /// <summary>All text by pdftotext, without white space.</summary>
    public string Text => _text.Value;

    public bool Says(string sentence) => Text.Contains(Tool.Squeeze(sentence), StringComparison.Ordinal);

    /// <summary>The visible texts of the HTML that are not in the printed file whole.</summary>
    public IReadOnlyList<string> Lost()
    {
        var body = Regex.Replace(html, "<head>.*?</head>|<svg.*?</svg>", " ", RegexOptions.Singleline, Limit);
        return
        [
            .. Regex
                .Split(body, "<[^>]*>", RegexOptions.None, Limit)
                .Select(WebUtility.HtmlDecode)
                .Select(t => t!.Trim())
                .Where(t => t.Length > 0 && !Says(t))
                .Distinct(),
        ];
    }

    /// <summary>Letters nearer to the edge of their page than a printer reaches, 5 mm.</summary>
    public IReadOnlyList<string> NearEdge()
    {
        using var document = PdfDocument.Open(pdf);
        return
        [
            .. from page in document.GetPages()
            from letter in page.Letters
            let box = letter.BoundingBox
            where
                box.Left < 5 * PointsPerMm
                || box.Bottom < 5 * PointsPerMm
                || box.Right > page.Width - (5 * PointsPerMm)
                || box.Top > page.Height - (5 * PointsPerMm)
            select $"{page.Number}: {letter.Value}",
        ];
    }

    public IReadOnlyList<(double Width, double Height)> PageSizesMm()
    {
        using var document = PdfDocument.Open(pdf);
        return [.. document.GetPages().Select(p => (p.Width / PointsPerMm, p.Height / PointsPerMm))];
    }

    public IReadOnlyList<string> Bookmarks()
    {
        using var document = PdfDocument.Open(pdf);
        return document.TryGetBookmarks(out var bookmarks) ? [.. bookmarks.GetNodes().Select(n => Tool.Squeeze(n.Title))] : [];
    }

    /// <summary>The largest type in which the word stands on a page, points.</summary>
    public double PointsOf(string word, int page)
    {
        using var document = PdfDocument.Open(pdf);
        return document
            .GetPage(page)
            .GetWords()
            .Where(w => w.Text == word)
            .SelectMany(w => w.Letters)
            .Select(l => l.PointSize)
            .DefaultIfEmpty(0)
            .Max();
    }

    /// <summary>Every square of about this side that is drawn as a box.</summary>
    public IReadOnlyList<DrawnBox> Squares(double fromMm, double toMm)
    {
        using var document = PdfDocument.Open(pdf);
        var found =
            from page in document.GetPages()
            from path in page.Paths
            let box = path.GetBoundingRectangle()
            where box is not null
            let b = box.Value
            let drawn = new DrawnBox(
                page.Number,
                Math.Round(b.Left / PointsPerMm, 1),
                Math.Round((page.Height - b.Top) / PointsPerMm, 1),
                b.Width / PointsPerMm,
                b.Height / PointsPerMm
            )
            where drawn.Width >= fromMm && drawn.Width <= toMm && Math.Abs(drawn.Width - drawn.Height) < 0.3
            select drawn;
        // A box is drawn as its ground and its line, one inside the other: the outer one is the box.
        var boxes = new List<DrawnBox>();
        foreach (var box in found.OrderByDescending(b => b.Width))
        {
            if (
                !boxes.Exists(b =>
                    b.Page == box.Page && Math.Abs(Middle(b).X - Middle(box).X) < 1 && Math.Abs(Middle(b).Y - Middle(box).Y) < 1
                )
            )
                boxes.Add(box);
        }
        return boxes;

        static (double X, double Y) Middle(DrawnBox b) => (b.Left + (b.Width / 2), b.Top + (b.Height / 2));
    }

    /// <summary>
    /// What the QR code at the upper right of the first page says, read from the page as a printer of 203 dots to the inch
    /// has it. The reader is shown that corner, as a hand would hold it: a page full of tick boxes leads it astray.
    /// </summary>
    public string? QrOfFirstPage()
    {
        using var page = SKBitmap.Decode(Tool.Raster(pdf, 203));
        using var corner = new SKBitmap();
        Assert.True(page.ExtractSubset(corner, new SKRectI(page.Width * 6 / 10, 0, page.Width, page.Height * 45 / 100)));
        var grey = new byte[corner.Width * corner.Height];
        for (var y = 0; y < corner.Height; y++)
        {
            for (var x = 0; x < corner.Width; x++)
                grey[(y * corner.Width) + x] = corner.GetPixel(x, y).Red;
        }
        var source = new RGBLuminanceSource(grey, corner.Width, corner.Height, RGBLuminanceSource.BitmapFormat.Gray8);
        var hints = new Dictionary<DecodeHintType, object> { [DecodeHintType.TRY_HARDER] = true, [DecodeHintType.CHARACTER_SET] = "UTF-8" };
        return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(source)), hints)?.Text;
    }

    /// <summary>Whether anything is printed inside the box, its line left out; on the first page.</summary>
    public IReadOnlyList<DrawnBox> NotEmpty(IEnumerable<DrawnBox> onFirstPage)
    {
        const double dotsPerMm = 150 / 25.4;
        using var bitmap = SKBitmap.Decode(Tool.Raster(pdf, 150));
        return [.. onFirstPage.Where(b => Inside(b).Any(p => bitmap.GetPixel(p.X, p.Y).Red < 250))];

        static IEnumerable<(int X, int Y)> Inside(DrawnBox b) =>
            from x in Enumerable.Range(0, (int)((b.Width - 2) * dotsPerMm))
            from y in Enumerable.Range(0, (int)((b.Height - 2) * dotsPerMm))
            select ((int)((b.Left + 1) * dotsPerMm) + x, (int)((b.Top + 1) * dotsPerMm) + y);
    }
}
