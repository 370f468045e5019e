using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Tokens;

namespace ExamDocs.UseCases.Tests.Company.Packing;

/// <summary>The links of a file with the words that they lie on and the page that they lead to, by a reader that is not ours.</summary>
internal static class PdfLinks
{
    public static IReadOnlyList<(string Text, int From, int To)> Of(string file)
    {
        using var pdf = PdfDocument.Open(file);
        var pages = PageReferences(pdf);
        return
        [
            .. pdf.GetPages()
                .SelectMany(page =>
                    page.GetAnnotations()
                        .Where(a => a.AnnotationDictionary.TryGet(NameToken.Subtype, out NameToken kind) && kind.Data is "Link")
                        .Select(a => (TextUnder(page, a.Rectangle), page.Number, Target(a.AnnotationDictionary, pages)))
                ),
        ];
    }

    private static int Target(DictionaryToken link, IReadOnlyList<IndirectReference> pages) =>
        link.TryGet(NameToken.Dest, out ArrayToken to) && to.Data[0] is IndirectReferenceToken page
            ? pages.ToList().IndexOf(page.Data) + 1
            : 0;

    private static IReadOnlyList<IndirectReference> PageReferences(PdfDocument pdf)
    {
        var catalog = pdf.Structure.Catalog.CatalogDictionary;
        Assert.True(catalog.TryGet(NameToken.Pages, out IndirectReferenceToken root));
        var tree = (DictionaryToken)pdf.Structure.GetObject(root.Data).Data;
        Assert.True(tree.TryGet(NameToken.Kids, out ArrayToken kids));
        return [.. kids.Data.OfType<IndirectReferenceToken>().Select(k => k.Data)];
    }

    private static string TextUnder(Page page, PdfRectangle at) =>
        string.Concat(
            page.Letters.Where(l =>
                {
                    var (x, y) = (l.BoundingBox.Centroid.X, l.BoundingBox.Centroid.Y);
                    return x >= at.Left && x <= at.Right && y >= at.Bottom && y <= at.Top;
                })
                .Select(l => l.Value)
        );
}
