using ExamDocs.Core.Determination;
using ExamDocs.Documents.LabelSheets;
using ExamDocs.Documents.Tests.Printing;
using ExamDocs.Templates;
using ExamDocs.Templates.Label;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace ExamDocs.Documents.Tests.LabelSheets;

public sealed class LabelSheetTests(Press press)
{
    [Fact]
    public void Every_stock_lies_on_its_page_and_its_labels_do_not_overlap() => Assert.All(LabelStock.All, s =>
    {
        Assert.True(s.LeftMm + ((s.Columns - 1) * s.PitchXMm) + s.LabelWidthMm <= s.PageWidthMm);
        Assert.True(s.TopMm + ((s.Rows - 1) * s.PitchYMm) + s.LabelHeightMm <= s.PageHeightMm);
        Assert.True(s.PitchXMm >= s.LabelWidthMm && s.PitchYMm >= s.LabelHeightMm);
        Assert.Equal(1.5, s.LabelHeightMm / s.LabelWidthMm, 6);
    });

    [Theory]
    [InlineData("single-100x150", 1, 3)]
    [InlineData("a4-2", 2, 2)]
    [InlineData("a4-4", 3, 2)]
    public async Task Labels_go_to_their_places_with_their_words(string stock, int start, int sheets)
    {
        var pdf = LabelSheet.Impose(await Labels(), LabelStock.Find(stock)!, start);
        using var read = PdfDocument.Open(pdf);
        Assert.Equal(sheets, read.NumberOfPages);
        var text = Tool.PdfText(pdf);
        Assert.All(Enumerable.Range(1, 3), n => Assert.Contains($"Q-2026-{n:000000}", text, StringComparison.Ordinal));
        Assert.Contains("No syntax or stream encoding errors", Tool.QpdfCheck(pdf), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_offset_moves_a_label_by_as_much()
    {
        var labels = await Labels();
        var plain = Number(LabelSheet.Impose(labels, LabelStock.Find("a4-2")!));
        var moved = Number(LabelSheet.Impose(labels, LabelStock.Find("a4-2")!, 1, (2, -1.5)));
        Assert.Equal(2, (moved.Left - plain.Left) * 25.4 / 72, 0.05);
        Assert.Equal(1.5, (moved.Bottom - plain.Bottom) * 25.4 / 72, 0.05);
    }

    [Fact]
    public async Task What_does_not_fit_is_refused()
    {
        var labels = await Labels();
        var stock = LabelStock.Find("a4-2")!;
        Assert.Throws<ArgumentOutOfRangeException>(() => LabelSheet.Impose(labels, stock, 3));
        Assert.Throws<ArgumentException>(() => LabelSheet.Impose(labels, stock, 1, (80, 0)));
        Assert.Throws<ArgumentException>(() => LabelSheet.Impose([press.Report], stock));
    }

    private static UglyToad.PdfPig.Core.PdfRectangle Number(byte[] pdf)
    {
        using var read = PdfDocument.Open(pdf);
        return read.GetPage(1).GetWords().First(w => w.Text == "Q-2026-000001").BoundingBox;
    }

    private async Task<List<byte[]>> Labels()
    {
        var labels = new List<byte[]>();
        foreach (var item in Example.Visit.Items.Where(i => i.Outcome == Outcome.Withdraw).Take(3))
        {
            var model = new LabelModel(Example.Identity(DocumentTypes.QuarantineLabel, labels.Count + 1), Example.Visit, item);
            labels.Add(await press.PrintAsync(await press.Renderer.HtmlAsync(model)));
        }
        return labels;
    }
}
