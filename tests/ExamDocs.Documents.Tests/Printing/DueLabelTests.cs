using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates;
using ExamDocs.Templates.DueLabel;
using SkiaSharp;
using UglyToad.PdfPig;

namespace ExamDocs.Documents.Tests.Printing;

public sealed class DueLabelTests(SharedBrowser browser)
{
    private const string LongId = "HARNESS-BRIDGE-ASSEMBLY-WITH-A-LONG-IDENTITY-0123";

    [Fact]
    public void No_label_can_be_made_for_what_may_not_be_used_or_not_be_reported()
    {
        var (allowed, refused) = (0, 0);
        foreach (var item in Example.Visit.Items)
        {
            var mayBeUsed = item.Outcome is Outcome.Fit or Outcome.FitUntil && item.MayBeReported;
            Assert.Equal(mayBeUsed, DueLabelModel.IsFor(item));
            if (mayBeUsed)
                Assert.Equal(item, Model(Example.Visit, item).Item);
            else
                Assert.Throws<ArgumentException>(() => Model(Example.Visit, item));
            _ = mayBeUsed ? allowed++ : refused++;
        }
        Assert.True(allowed > 0 && refused > 0);
    }

    [Fact]
    public void A_label_of_another_visit_s_item_is_refused()
    {
        var (other, _) = Example.With("CON-01", i => i with { Description = "Another" });
        Assert.Throws<ArgumentException>(() => Model(other, Example.Item("CON-01")));
    }

    [Fact]
    public void An_error_anywhere_near_it_refuses_the_label()
    {
        var visit = Example.Determined(Example.Record with { Visit = Example.Record.Visit with { Premises = null } });
        Assert.All(visit.Items, i => Assert.False(DueLabelModel.IsFor(i)));
    }

    [Fact]
    public async Task It_says_the_item_the_day_the_number_and_where_it_comes_from()
    {
        var item = Example.Item("CON-01");
        var text = Tool.Squeeze(Tool.PdfText(await PrintAsync(Example.Visit, item)));
        string[] wanted =
        [
            "CON-01",
            item.Item.Description!,
            "Next examination by",
            "11 Nov 2026",
            "D-2026-000001",
            "Page 1 of 1",
            "Issued 12 May 2026",
            "Visit V-2026-031",
            "Serial OT-44120",
            "Ask Maren Oakhollow",
            "Examined 11 May 2026 under SI 1998/2307",
            "against the issuer's register",
            "Maker's instructions",
        ];
        Assert.All(wanted, w => Assert.Contains(Tool.Squeeze(w), text, StringComparison.Ordinal));
        Assert.DoesNotContain("Nottobeused", text, StringComparison.Ordinal);
    }

    // CLR-03 is fit until 20 Aug 2026, and would be examined again by 11 Nov 2026.
    [Fact]
    public async Task The_last_day_of_use_shouts_where_it_comes_first()
    {
        var (large, small) = await DaysAsync(Example.Visit, Example.Item("CLR-03"));
        Assert.Equal("Nottobeusedafter20\u00A0Aug2026", large);
        Assert.Equal("Nextexaminationby11\u00A0Nov2026", small);
    }

    [Fact]
    public async Task The_last_day_of_use_shouts_where_both_are_one_day()
    {
        var item = Example.Visit.Items.First(i => i.Until is not null && i.Until == i.NextExaminationBy);
        var (large, _) = await DaysAsync(Example.Visit, item);
        Assert.StartsWith("Nottobeusedafter", large, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_next_examination_shouts_where_it_comes_first()
    {
        var (visit, item) = Example.WithExamination("BRG-08", e => e with { NextBy = new NodaTime.LocalDate(2026, 7, 1) });
        var (large, small) = await DaysAsync(visit, item);
        Assert.Equal("Nextexaminationby1\u00A0Jul2026", large);
        Assert.Equal("Nottobeusedafter31\u00A0Jul2026", small);
    }

    [Theory]
    [InlineData("HB-014-B", "Rope bridge")]
    [InlineData("HB-014-B", "Rope bridge with two sewn eyes and a stopper, from the rescue set, as typed in a hurry and never shortened")]
    [InlineData(LongId, "Rope bridge")]
    [InlineData("WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW", "MMMMMMMMMMMMMMMMMMMMMMMMMMMMMM")]
    [InlineData("Größe-14/Ø", "Śruba ø 8")]
    public async Task It_is_one_page_of_its_size_with_everything_whole_and_its_code_reads(string id, string description)
    {
        foreach (var named in new[] { "CON-01", "CLR-03" })
        {
            var (visit, item) = Renamed(named, id, description);
            var model = Model(visit, item);
            Assert.Empty(model.Misfits);
            var pdf = await browser.PrintAsync(await browser.Renderer.HtmlAsync(model));
            using var read = PdfDocument.Open(pdf);
            var page = Assert.Single(read.GetPages());
            Assert.Equal(70, page.Width * 25.4 / 72, 0.25);
            Assert.Equal(37, page.Height * 25.4 / 72, 0.25);
            var text = Tool.Squeeze(Tool.PdfText(pdf));
            Assert.Contains(id, text, StringComparison.Ordinal);
            Assert.All(page.Letters, l =>
                Assert.True(l.BoundingBox is { Left: > 2, Bottom: > 2 } b && b.Right < page.Width - 2 && b.Top < page.Height - 2, l.Value)
            );
            Overlaps.Refuse(page);
            Assert.StartsWith($"D-2026-000001 {id}", QrCode.Read(Tool.Raster(pdf, 203))?.Text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_description_stands_whole_or_not_at_all()
    {
        var description = string.Join(' ', Enumerable.Repeat("sewn", 60));
        var (visit, item) = Example.With("CON-01", i => i with { Description = description });
        Assert.Empty(Model(visit, item).Misfits);
        Assert.DoesNotContain("sewn", Tool.PdfText(await PrintAsync(visit, item)), StringComparison.Ordinal);
    }

    [Fact]
    public void What_does_not_fit_is_named()
    {
        var (visit, item) = Renamed("CON-01", new string('W', 120));
        Assert.Contains("the identity", Model(visit, item).Misfits);
        var far = Example.Determined(Example.Record with { Visit = Example.Record.Visit with { Reference = new string('V', 600) } });
        Assert.Equal(["the visit's reference or the name of the law"], Model(far, far.Items.First(i => i.Item.Id == "CON-01")).Misfits);
        (visit, item) = Renamed("CON-01", new string('x', 200));
        Assert.Contains("the identity, into a QR code of readable size", Model(visit, item).Misfits);
    }

    [Fact]
    public async Task Nothing_of_it_is_taken_for_a_prohibition()
    {
        var html = await browser.Renderer.HtmlAsync(Model(Example.Visit, Example.Item("CLR-03")));
        using var bitmap = SKBitmap.Decode(Tool.ColourRaster(await browser.PrintAsync(html), 203));
        Assert.DoesNotContain(bitmap.Pixels, p => p.Red > p.Green + 40);
        Assert.DoesNotContain("<circle", html, StringComparison.Ordinal);
        Assert.DoesNotContain("DO NOT USE", Tool.PdfText(await browser.PrintAsync(html)), StringComparison.OrdinalIgnoreCase);
    }

    private static (DeterminedVisit Visit, DeterminedItem Item) Renamed(string id, string to, string? description = null)
    {
        var visit = Example.Determined(
            Example.Record with
            {
                Items =
                [
                    .. Example.Record.Items.Select(i => i.Id == id ? i with { Id = to, Description = description ?? i.Description } : i),
                ],
                Examinations = [.. Example.Record.Examinations.Select(e => e.Item == id ? e with { Item = to } : e)],
            }
        );
        return (visit, visit.Items.First(i => i.Item.Id == to));
    }

    private static DueLabelModel Model(DeterminedVisit visit, DeterminedItem item) =>
        new(Example.Identity(DocumentTypes.DueLabel), visit, item);

    private async Task<byte[]> PrintAsync(DeterminedVisit visit, DeterminedItem item) =>
        await browser.PrintAsync(await browser.Renderer.HtmlAsync(Model(visit, item)));

    // The day in the largest type of all days with the words before it, and the line after it.
    private async Task<(string Large, string Small)> DaysAsync(DeterminedVisit visit, DeterminedItem item)
    {
        using var pdf = PdfDocument.Open(await PrintAsync(visit, item));
        var letters = pdf.GetPage(1).Letters;
        var lines = letters
            .GroupBy(l => Math.Round(l.StartBaseLine.Y))
            .OrderByDescending(g => g.Key)
            .Select(g =>
                (
                    Text: string.Concat(g.OrderBy(l => l.StartBaseLine.X).Select(l => l.Value)).Replace(" ", "", StringComparison.Ordinal),
                    Size: g.Max(l => l.BoundingBox.Height)
                )
            )
            .ToList();
        var days = lines.FindIndex(l =>
            l.Text.StartsWith("Next", StringComparison.Ordinal) || l.Text.StartsWith("Not", StringComparison.Ordinal)
        );
        Assert.True(lines[days + 1].Size > 2 * lines[days + 2].Size);
        return (lines[days].Text + lines[days + 1].Text, lines[days + 2].Text);
    }
}
