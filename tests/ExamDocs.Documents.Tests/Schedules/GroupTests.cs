using System.Text.RegularExpressions;
using ExamDocs.Core.Records;
using ExamDocs.Documents.Rendering;
using ExamDocs.Documents.Tests.Printing;
using ExamDocs.Templates;
using ExamDocs.Templates.Report;

namespace ExamDocs.Documents.Tests.Schedules;

/// <summary>Groups of many like items, their parts, and what makes an item a block although it is in order.</summary>
public sealed class GroupTests(SharedBrowser browser)
{
    [Fact]
    public void Forty_connectors_alike_are_one_group_in_parts_that_a_page_can_hold()
    {
        var report = Report(Like("CON-05", 40));
        var group = Assert.Single(report.Schedule.Groups, g => g.Items.Count >= 40);
        Assert.True(group.Parts.Count is 2 or 3, $"{group.Parts.Count} parts");
        Assert.Equal(group.Items, group.Parts.SelectMany(p => p.Items));
        Assert.Equal([false, .. group.Parts.Skip(1).Select(_ => true)], group.Parts.Select(p => p.IsContinued));
        Assert.All(group.Parts.Zip(group.Parts.Skip(1)), pair => Assert.Equal(pair.First.To + 1, pair.Second.From));
        Assert.Equal(group.Items.Count, group.Parts[^1].To);
        Assert.Equal(Enumerable.Range(1, report.Items.Count), report.Items.Select(i => i.Position));
    }

    [Fact]
    public async Task A_group_that_goes_on_says_so_in_each_further_heading()
    {
        await using var renderer = new DocumentRenderer();
        var report = Report(Like("CON-05", 40));
        var html = await renderer.HtmlAsync(report);
        var group = report.Schedule.Groups.Single(g => g.Items.Count >= 40);
        foreach (var part in group.Parts.Skip(1))
            Assert.Contains($"continued: {part.From} to {part.To} of {group.Items.Count} items", html, StringComparison.Ordinal);
        Assert.Equal(group.Parts.Count - 1, html.Split("continued: ").Length - 1);
    }

    /// <summary>No line stands on a page without the heading of its group, and none is broken.</summary>
    [Fact]
    public async Task On_paper_each_part_is_on_one_page_under_its_heading()
    {
        var report = Report(Like("CON-05", 40));
        var pages = Tool.PdfText(await browser.PrintAsync(await browser.Renderer.HtmlAsync(report))).Split('\f');
        foreach (var part in report.Schedule.Groups.SelectMany(g => g.Parts))
        {
            var ids = part.Items.Select(i => i.Id).ToList();
            var page = Assert.Single(pages, p => p.Contains($"\n{part.Items[0].Position} {ids[0]} ", StringComparison.Ordinal));
            Assert.All(part.Items, i => Assert.Contains($"\n{i.Position} {i.Id} ", page, StringComparison.Ordinal));
            Assert.Contains("Outcome", page, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("part")]
    [InlineData("load")]
    [InlineData("basis")]
    [InlineData("tests")]
    [InlineData("day")]
    [InlineData("examiner")]
    public void Items_that_differ_in_what_the_heading_says_are_two_groups(string what)
    {
        var record = Like("CON-05", 3);
        var (id, items) = ("CON-05-2", record.Items.ToList());
        var at = items.FindIndex(i => i.Id == id);
        items[at] = what switch
        {
            "part" => items[at] with { PartNumber = "OT-B" },
            "load" => items[at] with
            {
                SafeWorkingLoad = new Load { Value = 2, Unit = "persons" },
            },
            _ => items[at],
        };
        var examinations = record.Examinations.Select(e =>
            e.Item != id
                ? e
                : what switch
                {
                    "basis" => e with
                    {
                        Basis = Basis.Exceptional,
                        Event = new ExceptionalEvent { What = "Flood", On = new(2026, 5, 2) },
                    },
                    "tests" => e with { Tests = [new TestMade { Description = "Gate opened 20 times", Result = "Closed and locked" }] },
                    "day" => e with { ExaminedOn = new(2026, 5, 12) },
                    "examiner" => e with { Examiner = "ex2", Author = "ex1", AuthenticatedBy = "ex1" },
                    _ => e,
                }
        );
        var report = Report(record with { Items = items, Examinations = [.. examinations] });
        var line = report.Items.Single(i => i.Id == id);
        var other = report.Items.Single(i => i.Id == "CON-05-1");
        Assert.NotEqual(line.Group, other.Group);
        Assert.Equal(other.Group, report.Items.Single(i => i.Id == "CON-05-3").Group);
    }

    /// <summary>A note of any length is printed whole: in a block, which a page may break.</summary>
    [Fact]
    public void A_text_too_long_for_a_line_makes_a_block()
    {
        var (visit, _) = Example.WithExamination("CON-01", e =>
            e with
            {
                Observations =
                [
                    .. e.Observations.Select(o =>
                        o.Criterion == "scratches" ? o with { State = ObservedState.Noted, Note = new string('n', 600) } : o
                    ),
                ],
            }
        );
        var items = visit.Items.Where(i => i.MayBeReported && i.RegimeId == "gb-loler").ToList();
        var person = visit.Record.People[0];
        var report = new ReportModel(Example.Identity(DocumentTypes.Report), visit, items, person, person);
        Assert.Equal("CON-01", Assert.Single(report.Schedule.Blocks, b => b.Kind is BlockKind.Long).Items.Single().Id);
    }

    /// <summary>Without being set apart, a number behind a right-to-left name is drawn on its other side, as if it were part of it.</summary>
    [Fact]
    public async Task A_right_to_left_name_does_not_draw_the_count_of_items_to_itself()
    {
        var items = Example.Record.Items.Select(i => i.Id == "CON-06" ? i with { Model = "אבג", Description = "דהו" } : i);
        var report = Report(Example.Record with { Items = [.. items] });
        Assert.Contains(report.Schedule.Groups, g => g is { Heading.Model: "אבג", Description: "דהו" });
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(await browser.PrintAsync(await browser.Renderer.HtmlAsync(report)));
        var page = pdf.GetPages().Single(p => p.Letters.Any(l => l.Value == "א"));
        var name = page.Letters.Where(l => "אבגדהו".Contains(l.Value, StringComparison.Ordinal)).ToList();
        var line = page.GetWords().Where(w => Math.Abs(w.Letters[0].StartBaseLine.Y - name[0].StartBaseLine.Y) < 1).ToList();
        var count = line.First(w => w.Text is "1");
        Assert.True(count.BoundingBox.Left > name.Max(l => l.BoundingBox.Right), "the count stands before the end of the name");
    }

    /// <summary>A line has no room for a picture, and must not look as if none were taken.</summary>
    [Fact]
    public async Task A_line_says_that_there_are_photos_of_its_item_elsewhere()
    {
        var items = Example.Visit.Items.Where(i => i is { MayBeReported: true, RegimeId: "gb-loler" }).ToList();
        var observation = items.First(i => i.Item.Id == "CON-01").Examination!.Observations[0];
        var person = Example.Record.People[0];
        var report = new ReportModel(Example.Identity(DocumentTypes.Report), Example.Visit, items, person, person, o =>
            ReferenceEquals(o, observation) ? new PhotoPrint(new byte[] { 1 }, 1, 1) : null
        );
        Assert.Contains(report.Schedule.Groups, g => g.Items.Any(i => i.Id == "CON-01"));
        var html = await browser.Renderer.HtmlAsync(report);
        Assert.Single(Regex.Matches(html, "1 photo, in the evidence file", RegexOptions.None, TimeSpan.FromSeconds(1)));
    }

    private static ReportModel Report(ExaminationRecord record)
    {
        var visit = Example.Determined(record);
        var items = visit.Items.Where(i => i.MayBeReported && i.RegimeId == "gb-loler").ToList();
        var person = visit.Record.People[0];
        return new ReportModel(Example.Identity(DocumentTypes.Report), visit, items, person, person);
    }

    /// <summary>The example with this many more of one of its items, each with a serial of its own.</summary>
    internal static ExaminationRecord Like(string id, int many)
    {
        var item = Example.Record.Items.Single(i => i.Id == id);
        var examination = Example.Record.Examinations.Single(e => e.Item == id);
        var ids = Enumerable.Range(1, many).Select(n => $"{id}-{n}").ToList();
        return Example.Record with
        {
            Items = [.. Example.Record.Items, .. ids.Select((n, at) => item with { Id = n, Serial = $"OT-7{at:0000}", OwnersMark = null })],
            Examinations = [.. Example.Record.Examinations, .. ids.Select(n => examination with { Item = n })],
        };
    }
}
