using System.Globalization;
using ExamDocs.Documents.ReadingCopies;

namespace ExamDocs.Documents.Tests.ReadingCopies;

/// <summary>Files of plain pages that say something.</summary>
internal static class TestPages
{
    public static byte[] Of(params string[] pages) => Of("", 595, 842, pages);

    /// <summary>A page of this size, points, with words at its lower left corner.</summary>
    public static byte[] Sized(int width, int height, string words) => Of("", width, height, words);

    /// <summary>A page that runs a program when it is opened.</summary>
    public static byte[] WithAction() => Of("/AA <</O <</S /JavaScript /JS (app.alert)>>>>", 595, 842, "page");

    private static byte[] Of(string more, int width, int height, params string[] words)
    {
        using var file = new MemoryStream();
        using var pdf = new StreamedPdf(file);
        var (font, pages) = (pdf.Add("<</Type /Font /Subtype /Type1 /BaseFont /Helvetica>>"), pdf.Reserve());
        var kids = words.Select(w => Page(pdf, pages, font, w, $"/MediaBox [0 0 {width} {height}] {more}")).ToList();
        pdf.Put(pages, $"<</Type /Pages /Kids [{string.Join(' ', kids.Select(StreamedPdf.Reference))}] /Count {kids.Count}>>");
        pdf.Finish(pdf.Add($"<</Type /Catalog /Pages {pages} 0 R>>"), pdf.Add("<</Creator (test)>>"));
        return file.ToArray();
    }

    private static int Page(StreamedPdf pdf, int pages, int font, string words, string more)
    {
        var text = string.Create(CultureInfo.InvariantCulture, $"BT /F 8 Tf 4 4 Td ({words}) Tj ET");
        var content = pdf.Add($"<</Length {text.Length}>>\nstream\n{text}\nendstream");
        return pdf.Add($"<</Type /Page /Parent {pages} 0 R /Resources <</Font <</F {font} 0 R>>>> /Contents {content} 0 R {more}>>");
    }
}
