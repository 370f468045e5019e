using ExamDocs.Documents.ReadingBack;
using ExamDocs.Documents.Tests.Printing;
using ExamDocs.Proof.Tests;

namespace ExamDocs.Documents.Tests.ReadingBack.Fuzz;

/// <summary>A lawful document is never held back.</summary>
public sealed class NoFalseAlarmTests(SharedBrowser browser)
{
    private static int Visits => Effort.Of(6, 300);

    [Fact]
    public async Task Ordinary_words_and_numbers_give_no_false_alarm()
    {
        var alarms = new List<string>();
        for (var seed = 0; seed < Visits; seed++)
        {
            var html = await new DrawnVisit(seed).HtmlAsync(browser.Renderer);
            alarms.AddRange(FaithfulPrint.Faults(html, await browser.PrintAsync(html)).Select(f => $"visit {seed}: {f}"));
        }
        TestContext.Current.SendDiagnosticMessage($"{Visits} visits, {alarms.Count} false alarms");
        Assert.Empty(alarms);
    }
}
