using ExamDocs.Documents.ReadingBack;
using ExamDocs.Documents.Tests.Printing;
using ExamDocs.Proof.Tests;

namespace ExamDocs.Documents.Tests.ReadingBack.Fuzz;

/// <summary>Whatever cuts, covers or hides a text is found, wherever it is planted.</summary>
public sealed class PlantedFaultTests(SharedBrowser browser)
{
    private static int Faults => Effort.Of(8, 200);

    [Fact]
    public async Task Planted_cuts_overlaps_and_covers_are_all_found()
    {
        var missed = new List<string>();
        for (var seed = 0; seed < Faults; seed++)
        {
            var fault = new PlantedFault(seed);
            var html = await new DrawnVisit(seed).HtmlAsync(browser.Renderer);
            var (spoilt, what) = fault.IsInTheFile ? (html, "") : fault.InPage(html);
            var pdf = await browser.PrintAsync(spoilt);
            if (fault.IsInTheFile)
                (pdf, what) = fault.InFile(pdf);
            if (FaithfulPrint.Faults(html, pdf).Count == 0)
                missed.Add($"fault {seed}: {what}");
        }
        TestContext.Current.SendDiagnosticMessage($"{Faults} planted, {missed.Count} missed");
        Assert.Empty(missed);
    }
}
