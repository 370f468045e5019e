using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;

namespace ExamDocs.Documents.Tests.Printing;

/// <summary>Words that are printed over one another.</summary>
internal static class Overlaps
{
    // Points; the boxes are those of the letters' shapes, and shapes that only touch are read.
    private const double Slack = 0.3;

    public static void Refuse(Page page)
    {
        var words = page.GetWords().ToList();
        Assert.NotEmpty(words);
        var over =
            from i in Enumerable.Range(0, words.Count)
            from j in Enumerable.Range(i + 1, words.Count - i - 1)
            where Meet(words[i].BoundingBox, words[j].BoundingBox)
            select $"{words[i].Text} over {words[j].Text}";
        Assert.Empty(over);
    }

    private static bool Meet(PdfRectangle one, PdfRectangle other) =>
        one.Left + Slack < other.Right
        && other.Left + Slack < one.Right
        && one.Bottom + Slack < other.Top
        && other.Bottom + Slack < one.Top;
}
