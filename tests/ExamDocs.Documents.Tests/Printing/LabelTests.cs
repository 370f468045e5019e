using System.Globalization;
using System.Text.RegularExpressions;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates;
using ExamDocs.Templates.Label;
using ExamDocs.Templates.Shared.Wording;
using SkiaSharp;
using UglyToad.PdfPig;

namespace ExamDocs.Documents.Tests.Printing;

public sealed class LabelTests(SharedBrowser browser)
{
    [Fact]
    public async Task A_withdrawn_item_gets_a_label_that_says_what_why_and_who_may_release_it()
    {
        var item = Example.Visit.Items.First(i => i.Outcome == Outcome.Withdraw && !i.NeverReleasable);
        var text = Tool.Squeeze(Tool.PdfText(await PrintAsync(Example.Visit, item)));
        string[] wanted =
        [
            "DO",
            "NOT",
            "USE",
            item.Item.Id!,
            item.Item.Description!,
            $"Serial {item.Item.Serial}",
            "Ask Maren Oakhollow",
            "Kept by Brackwater Tree Training and Hire Ltd",
            "11 May 2026",
            "Only by a competent person, in writing",
            "Q-2026-000001",
            "Page 1 of 1",
        ];
        Assert.All(wanted, w => Assert.Contains(Tool.Squeeze(w), text, StringComparison.Ordinal));
    }

    [Fact]
    public async Task An_undetermined_item_gets_a_hold_label_in_other_words_and_another_shape()
    {
        var html = await browser.Renderer.HtmlAsync(Model(Example.Visit, Example.Item("PUL-02")));
        Assert.Contains("NOT DETERMINED", html, StringComparison.Ordinal);
        Assert.DoesNotContain("Prohibition sign", html, StringComparison.Ordinal);
        Assert.Contains("aria-label=\"Question mark", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Saw_contact_is_never_to_be_released()
    {
        var item = Example.Visit.Items.First(i =>
            i.Examination?.Observations.Any(o => o.Criterion == "saw-contact" && o.State is ObservedState.Defect) is true
        );
        Assert.StartsWith("NOT TO BE RELEASED", Model(Example.Visit, item).Release, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_gap_in_the_record_never_stands_in_for_the_reason_to_withdraw()
    {
        var record = Example.Record with { People = [.. Example.Record.People.Select(p => p with { Address = null })] };
        var visit = Example.Determined(record);
        var item = visit.Items.First(i => i.Item.Id == "COR-03");
        Assert.Contains("U3", item.Reasons.Select(r => r.Code), StringComparer.Ordinal);
        var html = await browser.Renderer.HtmlAsync(Model(visit, item));
        Assert.Contains("is to withdraw it from service", html, StringComparison.Ordinal);
        Assert.DoesNotContain("PAR", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_example_s_labels_are_in_legible_type_with_the_identity_standing_out()
    {
        foreach (var item in Example.Visit.Items.Where(i => i.Outcome is Outcome.Withdraw or Outcome.Undetermined))
        {
            var html = await browser.Renderer.HtmlAsync(Model(Example.Visit, item));
            Assert.True(Size(html, "text", "words text-") >= 3.3, item.Item.Id);
            Assert.True(Size(html, "id", "h2 class=\"id-") >= 1.6 * Size(html, "text", "words text-"), item.Item.Id);
        }
    }

    public static TheoryData<string, int> Descriptions => new(Language.All.SelectMany(l => new[] { 30, 60, 90 }.Select(n => (l.Tag, n))));

    /// <summary>The standing words leave room for a description of some length, in each language.</summary>
    [Theory]
    [MemberData(nameof(Descriptions))]
    public void All_words_are_read_from_the_reading_distance(string tag, int letters)
    {
        var described = string.Join(' ', Enumerable.Repeat("Climbing rope, red", 10))[..letters];
        var record = Example.Record with { Items = [.. Example.Record.Items.Select(i => i with { Description = described })] };
        var visit = Example.Determined(record);
        var barred = visit.Items.Where(i => i.Outcome is Outcome.Withdraw or Outcome.Undetermined).ToList();
        Assert.Contains(barred, i => i.Outcome is Outcome.Undetermined);
        Language
            .Find(tag)!
            .In(() =>
            {
                Assert.All(barred, i => Assert.True(Model(visit, i).WordsLegibleFromMetres >= 1.5, i.Item.Id));
                return true;
            });
    }

    [Fact]
    public void An_item_that_may_be_used_gets_no_label() =>
        Assert.Throws<ArgumentException>(() => Model(Example.Visit, Example.Visit.Items.First(i => i.Outcome == Outcome.Fit)));

    // ISO symbol template (seen in an unofficial copy): ring 0.1 d, bar 0.08 d, at 45 degrees, upper left to lower right.
    [Fact]
    public async Task The_prohibition_sign_has_its_published_proportions()
    {
        var sign = SignOnPaper.Measure(Tool.Raster(await PrintAsync(Example.Visit, Withdrawn), 600), 600);
        Assert.Equal(40, sign.DiameterMm, 0.2);
        Assert.Equal(sign.DiameterMm, sign.HeightMm, 0.1);
        Assert.Equal(0.1, sign.RingMm / sign.DiameterMm, 0.004);
        Assert.Equal(0.08, sign.BarMm / sign.DiameterMm, 0.004);
        Assert.True(sign.BarGoesDown);
    }

    // h = l / Z: the sign has Z = 40 (German workplace rule ASR A1.3, from memory), 37.5 mm at 1.5 m.
    [Theory]
    [InlineData("1.5", "40")]
    [InlineData("2", "40")]
    [InlineData("1.5", "30")]
    public async Task The_sign_is_seen_from_the_reading_distance_at_the_smallest_scale_of_any_stock(string metres, string factor)
    {
        var reading = new ReadingDistance(Number(metres), Number(factor));
        var model = new LabelModel(Example.Identity(DocumentTypes.QuarantineLabel), Example.Visit, Withdrawn, reading);
        var pdf = await browser.PrintAsync(await browser.Renderer.HtmlAsync(model));
        var sign = SignOnPaper.Measure(Tool.Raster(pdf, 300), 300);
        Assert.InRange(sign.DiameterMm * 0.95, (double)(1000 * Number(metres) / Number(factor)) - 0.1, 57);
        using var read = PdfDocument.Open(pdf);
        var page = Assert.Single(read.GetPages());
        Overlaps.Refuse(page);
        Assert.All(page.Letters, l => Assert.InRange(l.BoundingBox.Right, 0, page.Width));
        // Letters of the signal word: Z = 300 (ASR A1.3, from memory).
        var signal = page.GetWords().First(w => w.Text == "NOT").BoundingBox.Height * 25.4 / 72;
        Assert.True(signal * 0.95 >= (double)(1000 * Number(metres) / 300), $"{signal} mm");
    }

    [Fact]
    public async Task The_hold_label_has_no_red_and_no_ring()
    {
        using var bitmap = SKBitmap.Decode(Tool.ColourRaster(await PrintAsync(Example.Visit, Example.Item("PUL-02")), 100));
        Assert.DoesNotContain(bitmap.Pixels, p => p.Red > p.Blue + 60);
    }

    [Theory]
    [InlineData("HB-014-B", "Rope bridge")]
    [InlineData(
        "HARNESS-BRIDGE-ASSEMBLY-WITH-A-VERY-LONG-IDENTITY-0123456789-ABCDEFGHIJ",
        "Rope bridge with two sewn eyes and a stopper, from the rescue set, as typed in a hurry and never shortened"
    )]
    [InlineData(
        "WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW",
        "MMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMM"
    )]
    [InlineData("Größe-Ω-Ж", "Śruba ø 8")]
    public async Task A_label_is_one_page_of_its_size_with_everything_on_it_and_its_code_reads(string id, string description)
    {
        var (visit, item) = Example.With(Withdrawn.Item.Id!, i => i with { Id = id, Description = description });
        var model = Model(visit, item);
        var pdf = await browser.PrintAsync(await browser.Renderer.HtmlAsync(model));
        using var read = PdfDocument.Open(pdf);
        var page = Assert.Single(read.GetPages());
        Assert.Equal(100, page.Width * 25.4 / 72, 0.2);
        Assert.Equal(150, page.Height * 25.4 / 72, 0.2);
        var text = Tool.Squeeze(Tool.PdfText(pdf));
        Assert.Contains(id, text, StringComparison.Ordinal);
        Assert.Contains(Tool.Squeeze(description), text, StringComparison.Ordinal);
        Assert.All(page.Letters, l => Assert.InRange(l.BoundingBox.Right, 0, page.Width));
        Assert.StartsWith($"Q-2026-000001 {id}", QrCode.Read(Tool.Raster(pdf, 203))?.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(20)]
    [InlineData(120)]
    [InlineData(400)]
    [InlineData(3000)]
    public async Task However_long_the_text_a_label_stays_one_page_and_nothing_covers_anything(int length)
    {
        var text = string.Join(' ', Enumerable.Repeat("WIDE MWMWMWMW", 1 + (length / 13)));
        var (visit, item) = Example.With(Withdrawn.Item.Id!, i => i with { Description = text[..length] });
        var noted = item.Examination! with
        {
            Observations = [.. item.Examination!.Observations.Select(o => o with { State = ObservedState.Doubt, Note = text[..length] })],
        };
        visit = Example.Determined(
            visit.Record with
            {
                Examinations = [.. visit.Record.Examinations.Select(e => e.Item == item.Item.Id ? noted : e)],
            }
        );
        var pdf = await PrintAsync(visit, visit.Items.First(i => i.Item.Id == item.Item.Id));
        using var read = PdfDocument.Open(pdf);
        var page = Assert.Single(read.GetPages());
        var owner = page.GetWords().First(w => w.Text == "Ask").BoundingBox.Bottom;
        var number = page.GetWords().First(w => w.Text == "Q-2026-000001").BoundingBox.Top;
        Assert.True(owner > number, $"the last line at {owner} is below the number at {number}");
        Overlaps.Refuse(page);
    }

    [Fact]
    public async Task What_does_not_fit_is_named_and_the_label_says_that_it_is_shortened()
    {
        var endless = string.Join(' ', Enumerable.Repeat("WIDE MWMWMWMW", 300));
        var (visit, _) = Example.With(Withdrawn.Item.Id!, i => i with { Serial = endless });
        var model = Model(visit, visit.Items.First(i => i.Item.Id == Withdrawn.Item.Id));
        var pdf = await browser.PrintAsync(await browser.Renderer.HtmlAsync(model));
        using var read = PdfDocument.Open(pdf);
        Overlaps.Refuse(Assert.Single(read.GetPages()));
        Assert.Equal(["the serial"], model.Misfits);
        Assert.Contains("(shortened;therecordhasthewhole)", Tool.Squeeze(Tool.PdfText(pdf)), StringComparison.Ordinal);
        Assert.Empty(Model(Example.Visit, Withdrawn).Misfits);
    }

    [Fact]
    public async Task The_keeper_s_name_is_the_first_to_have_no_room()
    {
        var endless = string.Join(' ', Enumerable.Repeat("Endless", 200));
        var visit = Example.Determined(
            Example.Record with
            {
                Visit = Example.Record.Visit with { Employer = Example.Record.Visit.Employer! with { Name = endless } },
            }
        );
        var item = visit.Items.First(i => i.Item.Id == Withdrawn.Item.Id);
        Assert.Empty(Model(visit, item).Misfits);
        var text = Tool.PdfText(await PrintAsync(visit, item));
        Assert.DoesNotContain("Kept by", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Endless", text, StringComparison.Ordinal);
        Assert.Contains("Release", text, StringComparison.Ordinal);
    }

    // The letterhead's number comes first, then the employer's; without any, a name is better than nothing.
    [Theory]
    [InlineData("0000 555 0142", "0000 555 0199", "Ring 0000 555 0142 (Oakhollow Examinations)")]
    [InlineData(null, "0000 555 0199", "Ring 0000 555 0199 (Brackwater Tree Training and Hire Ltd)")]
    [InlineData(null, null, "Ask Oakhollow Examinations")]
    public async Task It_says_whom_to_ring(string? issuers, string? employers, string shown)
    {
        var visit = Example.Determined(
            Example.Record with
            {
                Visit = Example.Record.Visit with { Employer = Example.Record.Visit.Employer! with { Telephone = employers } },
            }
        );
        var identity = Example.Identity(DocumentTypes.QuarantineLabel) with
        {
            Letterhead = new Letterhead { Name = "Oakhollow Examinations", Telephone = issuers },
        };
        var model = new LabelModel(identity, visit, visit.Items.First(i => i.Item.Id == Withdrawn.Item.Id));
        Assert.Equal(shown, model.Whom.Line);
        Assert.EndsWith($"\n{model.Whom.ShortLine}", model.Code.Text.Split(" (")[0], StringComparison.Ordinal);
        var html = await browser.Renderer.HtmlAsync(model);
        Assert.Contains(
            $"<b>{(issuers ?? employers) switch { { } number => $"{number} ({model.Whom.Name})", _ => model.Whom.Name }}</b>",
            html,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void An_identity_too_long_for_a_code_is_named()
    {
        var (visit, item) = Example.With(Withdrawn.Item.Id!, i => i with { Id = new string('x', 500) });
        Assert.Contains("the identity, into a QR code of readable size", Model(visit, item).Misfits);
        Assert.Contains("the identity", Model(visit, item).Misfits);
    }

    // Millimetres, as the label's own style sheet gives them for the step that the page uses.
    private static double Size(string html, string kind, string before)
    {
        var step = html[html.IndexOf(before, StringComparison.Ordinal) + before.Length];
        var size = Regex.Match(html, $@"\.{kind}-{step} {{ font-size: (?<mm>[0-9.]+)mm", RegexOptions.None, TimeSpan.FromSeconds(1));
        return double.Parse(size.Groups["mm"].Value, CultureInfo.InvariantCulture);
    }

    private static DeterminedItem Withdrawn => Example.Visit.Items.First(i => i.Outcome == Outcome.Withdraw);

    private static LabelModel Model(DeterminedVisit visit, DeterminedItem item) =>
        new(Example.Identity(DocumentTypes.QuarantineLabel), visit, item);

    private static decimal Number(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);

    private async Task<byte[]> PrintAsync(DeterminedVisit visit, DeterminedItem item) =>
        await browser.PrintAsync(await browser.Renderer.HtmlAsync(Model(visit, item)));
}
