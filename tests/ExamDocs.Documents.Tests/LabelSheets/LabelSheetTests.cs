using ExamDocs.Documents.LabelSheets;
using ExamDocs.Documents.Tests.Printing;
using ExamDocs.Templates;
using SkiaSharp;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;

namespace ExamDocs.Documents.Tests.LabelSheets;

/// <summary>Every stock, filled, and measured by programs that did not make it.</summary>
public sealed class LabelSheetTests(SharedBrowser browser)
{
    private const double PointsPerMm = 72 / 25.4;

    private readonly PrintedLabels _labels = new(browser);

    public static TheoryData<string> Stocks => [.. LabelStock.All.Select(s => s.Name)];

    [Fact]
    public void Every_stock_is_without_fault_and_one_is_the_usual_of_each_kind()
    {
        Assert.All(LabelStock.All, s => Assert.Empty(StockFaults.Of(s)));
        Assert.Equal(LabelStock.All.Count, LabelStock.All.Select(s => s.Name).Distinct().Count());
        Assert.All(LabelFormat.All, f => Assert.Equal(f, LabelStock.Find(f.UsualStock)!.Format));
        Assert.All(LabelFormat.Faces, f => Assert.Contains(LabelStock.All, s => s.Format == f));
    }

    [Theory]
    [MemberData(nameof(Stocks))]
    public async Task Every_letter_lies_within_a_fifth_of_a_millimetre_of_its_place(string name)
    {
        var stock = LabelStock.Find(name)!;
        var labels = await _labels.FillAsync(stock);
        using var sheet = PdfDocument.Open(LabelSheet.Impose(labels, stock, new Placing()));
        var page = Assert.Single(sheet.GetPages());
        Assert.Equal(stock.PageWidthMm, page.Width / PointsPerMm, 0.01);
        Assert.Equal(stock.PageHeightMm, page.Height / PointsPerMm, 0.01);
        var printed = page.Letters.ToList();
        var at = 0;
        foreach (var (label, place) in labels.Select((l, p) => (l, p)))
        {
            using var single = PdfDocument.Open(label);
            var alone = single.GetPage(1);
            var (left, top) = (
                stock.LeftMm + (place % stock.Columns * stock.PitchXMm),
                stock.TopMm + (place / stock.Columns * stock.PitchYMm)
            );
            Assert.NotEmpty(alone.Letters);
            foreach (var letter in alone.Letters)
            {
                var there = printed[at++];
                Assert.Equal(letter.Value, there.Value);
                Assert.Equal(left + (letter.StartBaseLine.X / PointsPerMm * stock.Scale), there.StartBaseLine.X / PointsPerMm, 0.1);
                Assert.Equal(
                    top + ((alone.Height - letter.StartBaseLine.Y) / PointsPerMm * stock.Scale),
                    (page.Height - there.StartBaseLine.Y) / PointsPerMm,
                    0.1
                );
            }
        }
        Assert.Equal(printed.Count, at);
    }

    [Theory]
    [MemberData(nameof(Stocks))]
    public async Task Every_code_reads_at_203_dots_an_inch_with_modules_of_at_least_two_dots(string name)
    {
        var stock = LabelStock.Find(name)!;
        var pdf = LabelSheet.Impose(await _labels.FillAsync(stock), stock, new Placing());
        // 0.4 mm on what forbids, three dots on the issued next-examination label, two on small metal.
        var least =
            stock.Format.Type == DocumentTypes.QuarantineLabel ? 0.4
            : stock.Format.Face is { } face ? (double)face.ModulesMm[^1] - 0.01
            : 0.37;
        foreach (var place in new[] { 0, stock.PerSheet - 1 }.Distinct())
        {
            var made = await _labels.MadeAsync(stock, place);
            var read = QrCode.Read(Tool.Raster(pdf, 600, Part(stock, place, 600)))!;
            Assert.Equal(made.Code.Text, read.Text);
            Assert.InRange(read.Module(made.Code.Matrix!.Modules) / 600 * 25.4, least, 1.2);
            if (least > 0.3)
                Assert.Equal(made.Code.Text, QrCode.Read(Tool.Raster(pdf, 203, Part(stock, place, 203)))?.Text);
        }
    }

    [Theory]
    [InlineData("a4-2")]
    [InlineData("a4-4")]
    [InlineData("a4-12")]
    public async Task Crop_marks_stand_at_every_edge_and_on_no_label(string name)
    {
        var stock = LabelStock.Find(name)!;
        var placing = new Placing(OffsetX: 0.5, OffsetY: -0.5, CropMarks: true);
        using var sheet = PdfDocument.Open(LabelSheet.Impose(await _labels.FillAsync(stock), stock, placing));
        using var plain = PdfDocument.Open(LabelSheet.Impose(await _labels.FillAsync(stock), stock, placing with { CropMarks = false }));
        var page = sheet.GetPage(1);
        var marks = page.Paths.Skip(plain.GetPage(1).Paths.Count).Select(p => p.GetBoundingRectangle()!.Value).ToList();
        Assert.Equal(4 * (stock.Rows + stock.Columns), marks.Count);
        var upright = marks.Where(m => m.Height > m.Width).Select(m => ((m.Left + m.Right) / 2 / PointsPerMm) - 0.5).Order().ToList();
        var level = marks
            .Where(m => m.Width > m.Height)
            .Select(m => ((page.Height - ((m.Top + m.Bottom) / 2)) / PointsPerMm) + 0.5)
            .Order()
            .ToList();
        Same(Edges(stock.LeftMm, stock.Columns, stock.PitchXMm, stock.LabelWidthMm), upright);
        Same(Edges(stock.TopMm, stock.Rows, stock.PitchYMm, stock.LabelHeightMm), level);
        var labels = Enumerable.Range(0, stock.PerSheet).Select(p => OnPage(stock, p, page.Height)).ToList();
        Assert.All(marks, m =>
            Assert.DoesNotContain(labels, l => m.Left < l.Right && l.Left < m.Right && m.Bottom < l.Top && l.Bottom < m.Top)
        );
        Assert.All(marks, m => Assert.True(m.Left >= 0 && m.Bottom >= 0 && m.Right <= page.Width && m.Top <= page.Height));

        static void Same(IEnumerable<double> wanted, List<double> found)
        {
            // Each edge has a mark on either side of the sheet.
            var twice = wanted.SelectMany(w => new[] { w, w }).Order().ToList();
            Assert.Equal(twice.Count, found.Count);
            Assert.All(twice.Zip(found), pair => Assert.Equal(pair.First, pair.Second, 0.2));
        }
    }

    [Theory]
    [InlineData("tag-100x150")]
    [InlineData("tag-86x54")]
    [InlineData("tag-120x60")]
    public async Task Nothing_is_printed_in_the_eyelet(string name)
    {
        var stock = LabelStock.Find(name)!;
        foreach (var label in await _labels.OfAsync(stock.Format))
        {
            using var bitmap = SKBitmap.Decode(Tool.Raster(LabelSheet.Impose([label], stock, new Placing()), 203));
            const double perMm = 203 / 25.4;
            var eyelet = stock.Eyelet!;
            var within = (
                from x in Enumerable.Range(0, Math.Min(bitmap.Width, (int)((eyelet.XMm + eyelet.DiameterMm) * perMm)))
                from y in Enumerable.Range(0, Math.Min(bitmap.Height, (int)((eyelet.YMm + eyelet.DiameterMm) * perMm)))
                where
                    Math.Sqrt(Math.Pow(((x + 0.5) / perMm) - eyelet.XMm, 2) + Math.Pow(((y + 0.5) / perMm) - eyelet.YMm, 2))
                    <= eyelet.DiameterMm / 2
                select bitmap.GetPixel(x, y).Red
            ).ToList();
            Assert.True(within.Count > 3000, $"{within.Count} dots");
            Assert.DoesNotContain(within, tone => tone != 255);
            Assert.Contains(bitmap.Pixels, p => p.Red < 50);
        }
    }

    [Theory]
    [InlineData("single-100x150", 1, 3)]
    [InlineData("a4-2", 2, 2)]
    [InlineData("a4-4", 3, 2)]
    [InlineData("a4-24", 24, 2)]
    public async Task Labels_start_where_asked_and_go_on_to_the_next_sheet(string name, int start, int sheets)
    {
        var stock = LabelStock.Find(name)!;
        var pdf = LabelSheet.Impose([.. (await _labels.OfAsync(stock.Format)).Take(3)], stock, new Placing(start));
        using var read = PdfDocument.Open(pdf);
        Assert.Equal(sheets, read.NumberOfPages);
        var text = Tool.PdfText(pdf);
        Assert.All(Enumerable.Range(1, 3), n =>
            Assert.Contains($"{stock.Format.Type.Letter}-2026-{n:000000}", text, StringComparison.Ordinal)
        );
        var first = read.GetPage(1).Letters[0].StartBaseLine;
        var place = OnPage(stock, start - 1, read.GetPage(1).Height);
        Assert.InRange(first.X, place.Left, place.Right);
        Assert.InRange(first.Y, place.Bottom, place.Top);
        Assert.Contains("No syntax or stream encoding errors", Tool.QpdfCheck(pdf), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_offset_moves_a_label_by_as_much()
    {
        var (stock, labels) = (LabelStock.Find("a4-2")!, await _labels.OfAsync(LabelFormat.Quarantine));
        var plain = Number(LabelSheet.Impose(labels, stock, new Placing()));
        var moved = Number(LabelSheet.Impose(labels, stock, new Placing(1, 2, -1.5)));
        Assert.Equal(2, (moved.Left - plain.Left) / PointsPerMm, 0.05);
        Assert.Equal(1.5, (moved.Bottom - plain.Bottom) / PointsPerMm, 0.05);
    }

    [Theory]
    [InlineData("a4-2", 3, 0, 0, false, "places 1 to 2")]
    [InlineData("a4-2", 0, 0, 0, false, "places 1 to 2")]
    [InlineData("a4-2", 1, 80, 0, false, "off the sheet")]
    [InlineData("a4-2", 1, 0, -30.1, false, "off the sheet")]
    [InlineData("a4-24", 1, 0, 0, true, "crop marks")]
    [InlineData("single-70x37", 1, 0, 0, true, "crop marks")]
    [InlineData("tag-86x54", 1, -3, 0, false, "eyelet")]
    [InlineData("tag-120x60", 1, -6, 0, false, "eyelet")]
    public async Task What_does_not_fit_is_refused(string name, int start, double x, double y, bool cropMarks, string why)
    {
        var stock = LabelStock.Find(name)!;
        var placing = new Placing(start, x, y, cropMarks);
        Assert.Contains(why, placing.Objection(stock), StringComparison.Ordinal);
        var labels = await _labels.OfAsync(stock.Format);
        Assert.Throws<ArgumentException>(() => LabelSheet.Impose(labels, stock, placing));
    }

    [Fact]
    public async Task What_is_no_label_for_the_stock_is_refused()
    {
        Assert.Throws<ArgumentException>(() => LabelSheet.Impose([browser.Report], LabelStock.Find("a4-2")!, new Placing()));
        var due = await _labels.OfAsync(LabelFormat.Due);
        Assert.Throws<ArgumentException>(() => LabelSheet.Impose(due, LabelStock.Find("a4-2")!, new Placing()));
        Assert.Throws<ArgumentException>(() => LabelSheet.Impose([], LabelStock.Find("a4-2")!, new Placing()));
    }

    private static IEnumerable<double> Edges(double first, int count, double pitch, double size) =>
        Enumerable.Range(0, count).SelectMany(n => new[] { first + (n * pitch), first + (n * pitch) + size });

    private static PdfRectangle OnPage(LabelStock stock, int place, double height)
    {
        var (left, top) = (stock.LeftMm + (place % stock.Columns * stock.PitchXMm), stock.TopMm + (place / stock.Columns * stock.PitchYMm));
        return new PdfRectangle(
            left * PointsPerMm,
            height - ((top + stock.LabelHeightMm) * PointsPerMm),
            (left + stock.LabelWidthMm) * PointsPerMm,
            height - (top * PointsPerMm)
        );
    }

    private static SKRectI Part(LabelStock stock, int place, int dpi)
    {
        var (left, top) = (stock.LeftMm + (place % stock.Columns * stock.PitchXMm), stock.TopMm + (place / stock.Columns * stock.PitchYMm));
        var perMm = dpi / 25.4;
        var part = new SKRectI(
            (int)(left * perMm),
            (int)(top * perMm),
            (int)((left + stock.LabelWidthMm) * perMm),
            (int)((top + stock.LabelHeightMm) * perMm)
        );
        part.Intersect(new SKRectI(0, 0, (int)(stock.PageWidthMm * perMm), (int)(stock.PageHeightMm * perMm)));
        return part;
    }

    private static PdfRectangle Number(byte[] pdf)
    {
        using var read = PdfDocument.Open(pdf);
        return read.GetPage(1).GetWords().First(w => w.Text == "Q-2026-000001").BoundingBox;
    }
}
