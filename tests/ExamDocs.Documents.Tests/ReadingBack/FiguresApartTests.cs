using ExamDocs.Core.Records;
using ExamDocs.Documents.ReadingBack;
using ExamDocs.Documents.Tests.Printing;
using ExamDocs.Documents.Tests.ReadingBack.Fuzz;
using ExamDocs.Templates;
using ExamDocs.Templates.Report;

namespace ExamDocs.Documents.Tests.ReadingBack;

/// <summary>
/// A figure is never taken for the end of one and the beginning of the next: 253 was found in 25 and 30, and then 25 was
/// missing. Each of these once held a lawful report back.
/// </summary>
public sealed class FiguresApartTests(SharedBrowser browser)
{
    [Theory]
    [InlineData("<p>25</p><p>30</p><p>253</p>")]
    [InlineData("<svg><text x='0' y='20'>50</text><text x='40' y='20'>100</text><text x='90' y='20'>150</text></svg><p>501</p><p>0015</p>")]
    [InlineData("<table><tr><td>200<td>15<td>15.00<tr><td>250<td>12.5<td>12.50</table><p>20015</p><p>1515</p>")]
    [InlineData("<p>12</p><p>550</p><p>100</p><p>12.550100</p><p>1255</p>")]
    public async Task Figures_beside_each_other_are_told_apart(string body)
    {
        var html = $"<!DOCTYPE html><html lang='en'><body style=\"font-family:'Noto Sans'\">{body}</body></html>";
        Assert.Empty(FaithfulPrint.Faults(html, await browser.PrintAsync(html)));
    }

    /// <summary>Drawn visits of which the reading back once said that 25 or 50 was missing from the plot.</summary>
    [Theory]
    [InlineData(16)]
    [InlineData(34)]
    [InlineData(194)]
    public async Task Plots_of_drawn_visits_are_faithful(int seed)
    {
        var html = await new DrawnVisit(seed).HtmlAsync(browser.Renderer);
        Assert.Empty(FaithfulPrint.Faults(html, await browser.PrintAsync(html)));
    }

    [Theory]
    [InlineData(50, 7, 4, 12.5, 15.0, 1)]
    [InlineData(25, 7, 3, 12.5, 10.0, 2)]
    [InlineData(50, 12, 4, 11.5, 15.0, 1)]
    public async Task Stations_of_one_bridge_with_one_that_stands_out(int stepMm, int count, int odd, double mm, double oddMm, int readings)
    {
        var record = Example.Record with
        {
            Limits =
            [
                .. Example.Record.Limits.Select(l =>
                    l.NominalDiameterMm is null ? l : l with { NominalDiameterMm = 12.5m, DiameterTolerancePercent = 8 }
                ),
            ],
            Examinations =
            [
                .. Example.Record.Examinations.Select(e =>
                    e.Diameters.Count == 0
                        ? e
                        : e with
                        {
                            Diameters =
                            [
                                .. Enumerable
                                    .Range(1, count)
                                    .Select(n => new DiameterStation
                                    {
                                        PositionMm = stepMm * n,
                                        ReadingsMm = [.. Enumerable.Repeat<decimal?>((decimal)(n == odd ? oddMm : mm), readings)],
                                    }),
                            ],
                        }
                ),
            ],
        };
        var visit = Example.Determined(record);
        var items = visit.Items.Where(i => i.MayBeReported && i.RegimeId == "gb-loler").ToList();
        var html = await browser.Renderer.HtmlAsync(
            new ReportModel(Example.Identity(DocumentTypes.Report), visit, items, browser.ReportModel.Author, browser.ReportModel.Author)
        );
        Assert.Contains("class=\"plot\"", html, StringComparison.Ordinal);
        Assert.Empty(FaithfulPrint.Faults(html, await browser.PrintAsync(html)));
    }
}
