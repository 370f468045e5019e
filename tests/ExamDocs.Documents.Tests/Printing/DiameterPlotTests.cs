using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates;
using ExamDocs.Templates.Report;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Documents.Tests.Printing;

/// <summary>What the diameters tell is on the paper, in words as well as drawn.</summary>
public sealed class DiameterPlotTests(SharedBrowser browser)
{
    private const string WithTrend = "BRG-01",
        WithoutTrend = "BRG-06";

    [Fact]
    public async Task The_trend_is_printed_with_its_proposal_limits_and_what_binds()
    {
        var trend = Example.Item(WithTrend).Trend!;
        var text = Tool.Squeeze(Tool.PdfText(await browser.PrintAsync(await Html(Example.Visit, Example.Item(WithTrend)))));

        Assert.Contains(Tool.Squeeze($"could become a danger: {Printed.Day(trend.Proposed)}"), text, StringComparison.Ordinal);
        Assert.Contains(Tool.Squeeze("binds only when the examiner enters it among the defects"), text, StringComparison.Ordinal);
        Assert.Contains(
            Tool.Squeeze("the maker's limits, 9.90 and 12.10 mm. Source: Instructions for use, Hazelcroft bridge"),
            text,
            StringComparison.Ordinal
        );
        Assert.Contains(Tool.Squeeze("after the last day of service by the limits recorded"), text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_earlier_examinations_print_no_trend()
    {
        Assert.Null(Example.Item(WithoutTrend).Trend);
        var withdrawn = Example.Item(WithoutTrend);
        Assert.DoesNotContain("class=\"plot trend\"", await Html(Example.Visit, withdrawn), StringComparison.Ordinal);
        Assert.Contains("class=\"plot trend\"", await Html(Example.Visit, Example.Item(WithTrend)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_station_that_stands_out_or_is_too_close_is_named_in_words_with_its_place()
    {
        var now = Example.Item(WithTrend).Examination;
        var (visit, item) = Example.WithExamination(WithTrend, e => ReferenceEquals(e, now) ? e with { Diameters = Thin(e.Diameters) } : e);
        var html = await Html(visit, item);
        var text = Tool.Squeeze(Tool.PdfText(await browser.PrintAsync(html)));

        Assert.Equal(Outcome.Fit, item.Outcome);
        Assert.Contains(
            Tool.Squeeze("stands out from the rest of the rope (modified z above 3.5, Iglewicz and Hoaglin 1993): 9.95 mm at 190 mm"),
            text,
            StringComparison.Ordinal
        );
        Assert.Contains(
            Tool.Squeeze("too close to call by the uncertainty of the mean (JCGM 100:2008, 95 %): 9.95 mm at 190 mm"),
            text,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("Diamond: stands out", await Html(Example.Visit, Example.Item(WithTrend)), StringComparison.Ordinal);
    }

    private static DiameterStation[] Thin(IReadOnlyList<DiameterStation> stations) =>
        [.. stations.Select(s => s.PositionMm is 190 ? s with { ReadingsMm = [9.95m, 9.95m] } : s)];

    private Task<string> Html(DeterminedVisit visit, DeterminedItem item) =>
        browser.Renderer.HtmlAsync(
            new ReportModel(Example.Identity(DocumentTypes.Report), visit, [item], browser.ReportModel.Author, browser.ReportModel.Author)
        );
}
