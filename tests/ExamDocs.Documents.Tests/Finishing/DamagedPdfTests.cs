using System.Text;
using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.PdfSyntax;
using ExamDocs.Documents.Tests.Printing;

namespace ExamDocs.Documents.Tests.Finishing;

/// <summary>Files that are not what the browser writes: each is refused by name, none breaks the program.</summary>
public sealed class DamagedPdfTests(SharedBrowser browser)
{
    [Theory]
    [InlineData("")]
    [InlineData("%PDF-1.4\n")]
    [InlineData("%PDF-1.4\nstartxref\n99999999999\n%%EOF")]
    [InlineData("%PDF-1.4\nxref\n0 2000000000\nstartxref\n9\n%%EOF")]
    [InlineData("%PDF-1.4\n1 0 obj\n<< /A (\nendobj\nxref\n0 1\n0000000000 65535 f \ntrailer\n<</Root 1 0 R>>\nstartxref\n34\n%%EOF")]
    [InlineData("%PDF-1.4\nxref\n0 1\n0000000000 65535 f \ntrailer\n<</Root 1 0 R/Info 1 0 R>>\nstartxref\n9\n%%EOF")]
    public void It_is_refused(string pdf) => Assert.ThrowsAny<PrintException>(() => Finisher.Finish(Encoding.Latin1.GetBytes(pdf), []));

    /// <summary>Cut short or altered at any place, it is finished or refused; nothing else may happen.</summary>
    [Fact]
    public async Task Damage_anywhere_is_refused_or_harmless()
    {
        var printed = await browser.PrintAsync(
            "<!DOCTYPE html><html lang='en'><title>t</title><h1>One</h1><table><tr><th>a<td>b</table><ul><li>x</ul>"
        );
        var random = new Random(20260512);
        var refused = 0;
        for (var n = 0; n < 400; n++)
        {
            var damaged = (byte[])printed.Clone();
            if (n % 2 == 0)
                damaged = damaged[..random.Next(damaged.Length)];
            else
                for (var hits = random.Next(1, 6); hits > 0; hits--)
                    damaged[random.Next(damaged.Length)] = (byte)random.Next(256);
            try
            {
                Finisher.Finish(damaged, []);
            }
            catch (PdfSyntaxException)
            {
                refused++;
            }
        }
        Assert.InRange(refused, 200, 400);
    }

    [Fact]
    public void A_stream_that_unpacks_to_more_than_a_page_is_refused()
    {
        var bomb = new PdfObject(1, PdfTarget.Stream("", new byte[PdfPage.MostContent + 1]));
        Assert.Throws<PdfSyntaxException>(() => bomb.Stream(PdfPage.MostContent));
        Assert.Equal(100, new PdfObject(1, PdfTarget.Stream("", new byte[100])).Stream(100).Length);
    }
}
