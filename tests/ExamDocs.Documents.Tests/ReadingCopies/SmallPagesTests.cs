using ExamDocs.Documents.ReadingCopies;
using ExamDocs.Documents.Tests.Printing;
using UglyToad.PdfPig;

namespace ExamDocs.Documents.Tests.ReadingCopies;

/// <summary>Labels on a page are all there, in their own size, beside and not over each other.</summary>
public sealed class SmallPagesTests
{
    [Theory]
    [InlineData(595, 842)]
    [InlineData(420, 300)]
    [InlineData(200, 600)]
    public void A_page_of_a_document_stays_alone(int width, int height) => Assert.Null(SmallPages.Of(TestPages.Sized(width, height, "A")));

    [Fact]
    public void A_document_of_several_small_pages_stays_alone() => Assert.Null(SmallPages.Of(TestPages.Of("one", "two")));

    [Theory]
    [InlineData(198, 105, 12)]
    [InlineData(283, 425, 1)]
    [InlineData(71, 28, 108)]
    public void As_many_as_fit_lie_side_by_side(int width, int height, int fit)
    {
        var words = Enumerable.Range(0, fit).Select(n => FormattableString.Invariant($"L{n}x")).ToList();
        var labels = words.ConvertAll(w => TestPages.Sized(width, height, w));
        Assert.Equal(fit, SmallPages.Of(labels[0])!.PerPage);
        var sheet = SmallPages.Sheet(labels);
        Tool.QpdfCheck(sheet);
        using var read = PdfDocument.Open(sheet);
        var found = read.GetPage(1).GetWords().ToList();
        Assert.Equal(words.Order(StringComparer.Ordinal), found.Select(w => w.Text).Order(StringComparer.Ordinal));
        Assert.All(found, w => Assert.True(w.BoundingBox.Left > 20 && w.BoundingBox.Bottom > 20 && w.BoundingBox.Top < 822));
        var corners = found.Select(w => (Math.Round(w.BoundingBox.Left), Math.Round(w.BoundingBox.Bottom))).ToList();
        foreach (var (n, one) in corners.Index())
        {
            foreach (var other in corners.Skip(n + 1))
                Assert.True(Math.Abs(one.Item1 - other.Item1) >= width || Math.Abs(one.Item2 - other.Item2) >= height);
        }
    }
}
