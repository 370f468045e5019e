using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Documents.Rendering;
using ExamDocs.Documents.Tests.Printing;
using ExamDocs.Templates;
using ExamDocs.Templates.Report;

namespace ExamDocs.Documents.Tests.Schedules;

/// <summary>
/// Every particular that the law asks for stands with its item: in its own line, in the heading of its group or in its block. The
/// schedule of each regime is walked, and each value looked for in the place of its own item alone.
/// </summary>
public sealed class ScheduleOfLawTests
{
    public static TheoryData<string> Regimes => [.. RegimeIndex.All.Select(r => r.Id)];

    [Theory]
    [MemberData(nameof(Regimes))]
    public async Task Every_particular_stands_in_its_items_own_place(string regime)
    {
        var (report, html) = await ReportAsync(regime);
        // Most of the kit is handed over by the law on work at height.
        Assert.True(report.Schedule.InLines >= (regime == "gb-wah" ? 5 : 20), $"{report.Schedule.InLines} lines");
        Assert.Equal("", string.Join('\n', Missing(report, html)));
    }

    /// <summary>The same walk finds what stands with another item: two serials changed over in the page.</summary>
    [Fact]
    public async Task A_value_with_another_item_is_found()
    {
        var (report, html) = await ReportAsync("gb-loler");
        var changed = html.Replace("OT-44121", "\u0001", StringComparison.Ordinal)
            .Replace("OT-44190", "OT-44121", StringComparison.Ordinal)
            .Replace("\u0001", "OT-44190", StringComparison.Ordinal);
        Assert.Equal(["CON-02 3: OT-44121", "CON-05 3: OT-44190"], Missing(report, changed).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task A_heading_without_its_load_is_found_for_each_of_its_items()
    {
        var (report, html) = await ReportAsync("gb-loler");
        var load = html.LastIndexOf("1&#xA0;person", html.IndexOf(">LAN-01</th>", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Equal(
            ["LAN-01 5: 1 person", "LAN-04 5: 1 person"],
            Missing(report, html.Remove(load, "1&#xA0;person".Length)).Order(StringComparer.Ordinal)
        );
    }

    /// <summary>Paragraph 6, and whatever is withdrawn, limited, overdue or in default, is always in a block; all else in a line.</summary>
    [Fact]
    public async Task Only_items_in_order_have_lines()
    {
        var (report, html) = await ReportAsync("gb-loler");
        var places = new ItemPlaces(html);
        Assert.All(report.Items, i =>
            Assert.Equal(
                i.Determined.Outcome is not Outcome.Fit
                    || i.Determined.WasDueBy is not null
                    || i.Examination.Basis is Basis.FirstUse or Basis.Installation
                    || i.Examination.Defects.Count > 0,
                places.Items[i.Id].IsBlock
            )
        );
    }

    /// <summary>The last page says where each paragraph is, and blocks and lines add up to the items.</summary>
    [Theory]
    [MemberData(nameof(Regimes))]
    public async Task The_last_page_accounts_for_every_paragraph_and_every_item(string regime)
    {
        var (report, html) = await ReportAsync(regime);
        var places = new ItemPlaces(html);
        Assert.Equal(report.Items.Count, places.Items.Count);
        var blocks = places.Items.Values.Count(p => p.IsBlock);
        Assert.Contains(
            Tool.Squeeze(
                $"{blocks} in a block of their own and {places.Items.Count - blocks} in lines of {places.Groups} groups make {places.Items.Count} items."
            ),
            places.Last,
            StringComparison.Ordinal
        );
        Assert.All(RegimeIndex.Find(regime)!.Particulars.InForce(Example.Record.Visit.ExaminedOn), p =>
            Assert.Contains(Tool.Squeeze(p.Paragraph), places.Last, StringComparison.Ordinal)
        );
        Assert.DoesNotContain("noplaceknowntotheprogram", places.Last, StringComparison.Ordinal);
        // What a regime's data say of it in their own words is printed as it is.
        Assert.DoesNotContain(report.Law.Lines, l =>
            l.Heading != "Not confirmed" && l.Text.Contains("from memory", StringComparison.OrdinalIgnoreCase)
        );
    }

    private static List<string> Missing(ReportModel report, string html)
    {
        var places = new ItemPlaces(html);
        return
        [
            .. from item in report.Items
            from regime in item.Determined.Regimes
            from particular in regime.Particulars.InForce(item.Determined.ExaminedOn)
            from wanted in new ScheduleOfLaw(report.Determined, item.Determined).Of(regime, particular.Paragraph)
            where !Holds(places, places.Items[item.Id], wanted)
            select $"{item.Id} {particular.Paragraph}: {wanted.Words}",
        ];
    }

    private static bool Holds(ItemPlaces places, ItemPlace item, Wanted wanted)
    {
        var (place, words) = (wanted.Place, Tool.Squeeze(wanted.Words));
        return (place is not ParagraphPlace.Block || item.IsBlock)
            && (
                place is ParagraphPlace.Once ? places.Outside
                : place is ParagraphPlace.Group ? item.Group
                : item.Line
            ).Contains(words, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>The example as if it had been examined under this regime.</summary>
    private static async Task<(ReportModel Report, string Html)> ReportAsync(string regime)
    {
        var visit =
            regime == "gb-loler"
                ? Example.Visit
                : Example.Determined(
                    Example.Record with
                    {
                        Visit = Example.Record.Visit with { Regime = regime },
                        Examinations = [.. Example.Record.Examinations.Select(e => e with { Regime = null })],
                    }
                );
        var items = visit.Items.Where(i => i.MayBeReported && i.RegimeId == regime).ToList();
        var author = visit.Person(items[0].Examination!.Author ?? items[0].Examination!.Examiner)!;
        var report = new ReportModel(Example.Identity(DocumentTypes.Report), visit, items, author, author);
        await using var renderer = new DocumentRenderer();
        return (report, await renderer.HtmlAsync(report));
    }
}
