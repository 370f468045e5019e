using System.Numerics;
using System.Text;
using System.Text.RegularExpressions;
using ExamDocs.Documents.PdfSyntax;
using ExamDocs.Documents.ReadingBack;
using ExamDocs.Documents.Tests.Printing;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace ExamDocs.Documents.Tests.ReadingBack;

/// <summary>Our reader of prints against PdfPig, which shares no code with it.</summary>
public sealed class OtherReaderTests(SharedBrowser browser)
{
    /// <summary>Points: both reckon with fractions, and not in the same order.</summary>
    private const float Tolerance = 0.05f;

    [Fact]
    public void Every_letter_of_the_report_is_the_same_and_stands_in_the_same_place()
    {
        using var document = PdfDocument.Open(browser.Report);
        var theirs = document.GetPages().SelectMany(p => p.Letters).ToList();
        var ours = PrintedText.Of(browser.Report).SelectMany(p => p).ToList();
        Assert.NotEmpty(ours);
        Assert.Equal(theirs.Select(l => l.Value), ours.Select(l => l.Drawn));
        Assert.Empty(ours.Zip(theirs).Where(l => !IsSame(l.First, l.Second)).Select(l => $"{l.First} and {l.Second}").Take(3));
    }

    /// <summary>A reader that takes the code for the letter would say that 漢, number 6F22, is printed.</summary>
    [Fact]
    public async Task A_sign_that_stands_for_no_letter_is_not_taken_for_the_letter_of_its_number()
    {
        var printed = await browser.PrintAsync("<!DOCTYPE html><html lang='en'><title>t</title><body><p>A</p></body></html>");
        var forged = WithFirstLetter(printed, "6F22");
        Assert.Equal([new Rune(0x6F22)], MissingGlyphs.In("<p>漢</p>", forged));
        using var document = PdfDocument.Open(forged);
        Assert.Equal("漢", document.GetPage(1).Letters[0].Value);
    }

    private static bool IsSame(PrintedLetter ours, Letter theirs)
    {
        var (start, end) = (At(theirs.StartBaseLine), At(theirs.EndBaseLine));
        var (red, green, blue) = theirs.FillColor.ToRGBValues();
        return Vector2.Distance(ours.Corners[0], Vector2.Lerp(start, end, 0.1f)) < Tolerance
            && Vector2.Distance(ours.Corners[1], Vector2.Lerp(start, end, 0.9f)) < Tolerance
            && theirs.FontName!.EndsWith(ours.Font, StringComparison.Ordinal)
            && Vector3.Distance(new(ours.Ink.Red, ours.Ink.Green, ours.Ink.Blue), new((float)red, (float)green, (float)blue)) < 0.01f;
    }

    private static Vector2 At(UglyToad.PdfPig.Core.PdfPoint point) => new((float)point.X, (float)point.Y);

    /// <summary>The file with another code in the place of the first letter of its first page.</summary>
    private static byte[] WithFirstLetter(byte[] pdf, string code)
    {
        var source = PdfSource.Read(pdf);
        var page = PageTree.Of(source)[0];
        var content = new Regex("<[0-9A-F]{4}> Tj", RegexOptions.None, TimeSpan.FromSeconds(5)).Replace(
            Encoding.Latin1.GetString(page.Content()),
            $"<{code}> Tj",
            1
        );
        var target = new PdfTarget(source);
        target.Replace(page.ContentNumber, PdfTarget.Stream("", Encoding.Latin1.GetBytes(content)));
        return target.Write(source.Catalog.Number, source.Trailer.Reference("Info")!.Value);
    }
}
