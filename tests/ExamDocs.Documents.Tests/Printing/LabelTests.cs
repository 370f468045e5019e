using System.Globalization;
using System.Text.RegularExpressions;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates;
using ExamDocs.Templates.Label;
using SkiaSharp;
using UglyToad.PdfPig;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace ExamDocs.Documents.Tests.Printing;

public sealed class LabelTests(Press press)
{
    [Fact]
    public async Task A_withdrawn_item_gets_a_label_that_says_what_why_and_who_may_release_it()
    {
        var item = Example.Visit.Items.First(i => i.Outcome == Outcome.Withdraw && !i.NeverReleasable);
        var text = Tool.Squeeze(Tool.PdfText(await PrintAsync(Example.Visit, item)));
        string[] wanted = ["DO", "NOT", "USE", item.Item.Id!, item.Item.Description!, "11 May 2026", "Only by a competent person, in writing", "Q-2026-000001", "Page 1 of 1"];
        Assert.All(wanted, w => Assert.Contains(Tool.Squeeze(w), text, StringComparison.Ordinal));
    }

    [Fact]
    public async Task An_undetermined_item_gets_a_hold_label_in_other_words_and_another_shape()
    {
        var html = await press.Renderer.HtmlAsync(Model(Example.Visit, Example.Item("PUL-02")));
        Assert.Contains("NOT DETERMINED", html, StringComparison.Ordinal);
        Assert.DoesNotContain("Prohibition sign", html, StringComparison.Ordinal);
        Assert.Contains("aria-label=\"Question mark", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Saw_contact_is_never_to_be_released()
    {
        var item = Example.Visit.Items.First(i => i.Examination?.Observations.Any(o => o.Criterion == "saw-contact" && o.State is ObservedState.Defect) is true);
        Assert.StartsWith("NOT TO BE RELEASED", Model(Example.Visit, item).Release, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_gap_in_the_record_never_stands_in_for_the_reason_to_withdraw()
    {
        var record = Example.Record with { People = [.. Example.Record.People.Select(p => p with { Address = null })] };
        var visit = Example.Determined(record);
        var item = visit.Items.First(i => i.Item.Id == "COR-03");
        Assert.Contains("U3", item.Reasons.Select(r => r.Code), StringComparer.Ordinal);
        var html = await press.Renderer.HtmlAsync(Model(visit, item));
        Assert.Contains("is to withdraw it from service", html, StringComparison.Ordinal);
        Assert.DoesNotContain("PAR", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_example_s_labels_are_in_legible_type_with_the_identity_standing_out()
    {
        foreach (var item in Example.Visit.Items.Where(i => i.Outcome is Outcome.Withdraw or Outcome.Undetermined))
        {
            var html = await press.Renderer.HtmlAsync(Model(Example.Visit, item));
            Assert.True(Size(html, "text", "words text-") >= 3.3, item.Item.Id);
            Assert.True(Size(html, "id", "h2 class=\"id-") >= 1.6 * Size(html, "text", "words text-"), item.Item.Id);
        }
    }

    [Fact]
    public void An_item_that_may_be_used_gets_no_label() =>
        Assert.Throws<ArgumentException>(() => Model(Example.Visit, Example.Visit.Items.First(i => i.Outcome == Outcome.Fit)));

    // ISO symbol template (seen in an unofficial copy): ring 0.1 d, bar 0.08 d, at 45 degrees, upper left to lower right.
    [Fact]
    public async Task The_prohibition_sign_has_its_published_proportions()
    {
        var html = await press.Renderer.HtmlAsync(Model(Example.Visit, Withdrawn));
        var sign = Regex.Match(html, "aria-label=\"Prohibition sign.*?</svg>", RegexOptions.Singleline, TimeSpan.FromSeconds(1)).Value;
        var circle = Regex.Match(sign, "<circle cx=\"50\" cy=\"50\" r=\"(?<r>[0-9.]+)\"[^>]*stroke-width=\"(?<w>[0-9.]+)\"", RegexOptions.None, TimeSpan.FromSeconds(1));
        var bar = Regex.Match(sign, "d=\"M(?<x>[0-9.]+) (?<y>[0-9.]+)L(?<u>[0-9.]+) (?<v>[0-9.]+)\"[^>]*stroke-width=\"(?<w>[0-9.]+)\"", RegexOptions.None, TimeSpan.FromSeconds(1));
        var d = (2 * Value(circle, "r")) + Value(circle, "w");
        Assert.Equal(0.1, Value(circle, "w") / d, 3);
        Assert.Equal(0.08, Value(bar, "w") / d, 3);
        Assert.Equal(1, (Value(bar, "v") - Value(bar, "y")) / (Value(bar, "u") - Value(bar, "x")), 6);
        Assert.True(Value(bar, "x") < Value(bar, "u"));
    }

    [Fact]
    public async Task The_sign_is_seen_from_a_metre_and_a_half()
    {
        // h = l / Z with Z = 40 (German workplace rule ASR A1.3, from memory): 37.5 mm at 1.5 m.
        using var bitmap = SKBitmap.Decode(Tool.Raster(await PrintAsync(Example.Visit, Withdrawn), 203));
        const double dotsPerMm = 203 / 25.4;
        var dark = Enumerable.Range(0, bitmap.Width).Count(x => Enumerable.Range((int)(20 * dotsPerMm), (int)(35 * dotsPerMm))
            .Any(y => x > 5 * dotsPerMm && x < 48 * dotsPerMm && bitmap.GetPixel(x, y).Red < 160));
        Assert.InRange(dark / dotsPerMm, 37.5, 41);
    }

    [Theory]
    [InlineData("HB-014-B", "Rope bridge")]
    [InlineData("HARNESS-BRIDGE-ASSEMBLY-WITH-A-VERY-LONG-IDENTITY-0123456789-ABCDEFGHIJ", "Rope bridge with two sewn eyes and a stopper, from the rescue set, as typed in a hurry and never shortened")]
    [InlineData("WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW", "MMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMM")]
    [InlineData("Größe-Ω-Ж", "Śruba ø 8")]
    public async Task A_label_is_one_page_of_its_size_with_everything_on_it_and_its_code_reads(string id, string description)
    {
        var (visit, item) = Example.With(Withdrawn.Item.Id!, i => i with { Id = id, Description = description });
        var model = Model(visit, item);
        var pdf = await press.PrintAsync(await press.Renderer.HtmlAsync(model));
        using var read = PdfDocument.Open(pdf);
        var page = Assert.Single(read.GetPages());
        Assert.Equal(100, page.Width * 25.4 / 72, 0.2);
        Assert.Equal(150, page.Height * 25.4 / 72, 0.2);
        var text = Tool.Squeeze(Tool.PdfText(pdf));
        Assert.Contains(id, text, StringComparison.Ordinal);
        Assert.Contains(Tool.Squeeze(description), text, StringComparison.Ordinal);
        Assert.All(page.Letters, l => Assert.InRange(l.BoundingBox.Right, 0, page.Width));
        Assert.Equal($"EXAMDOCS:Q-2026-000001:{id}", Decode(Tool.Raster(pdf, 203)));
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
        var noted = item.Examination! with { Observations = [.. item.Examination!.Observations.Select(o => o with { State = ObservedState.Doubt, Note = text[..length] })] };
        visit = Example.Determined(visit.Record with { Examinations = [.. visit.Record.Examinations.Select(e => e.Item == item.Item.Id ? noted : e)] });
        var pdf = await PrintAsync(visit, visit.Items.First(i => i.Item.Id == item.Item.Id));
        using var read = PdfDocument.Open(pdf);
        var page = Assert.Single(read.GetPages());
        var owner = page.GetWords().First(w => w.Text == "Owner").BoundingBox.Bottom;
        var number = page.GetWords().First(w => w.Text == "Q-2026-000001").BoundingBox.Top;
        Assert.True(owner > number, $"the last line at {owner} is below the number at {number}");
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

    private static double Value(Match match, string group) => double.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    private static string? Decode(byte[] png)
    {
        using var bitmap = SKBitmap.Decode(png);
        var grey = new byte[bitmap.Width * bitmap.Height];
        for (var y = 0; y < bitmap.Height; y++)
            for (var x = 0; x < bitmap.Width; x++)
                grey[(y * bitmap.Width) + x] = bitmap.GetPixel(x, y).Red;
        var source = new RGBLuminanceSource(grey, bitmap.Width, bitmap.Height, RGBLuminanceSource.BitmapFormat.Gray8);
        var hints = new Dictionary<DecodeHintType, object> { [DecodeHintType.TRY_HARDER] = true, [DecodeHintType.CHARACTER_SET] = "UTF-8" };
        return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(source)), hints)?.Text;
    }

    private async Task<byte[]> PrintAsync(DeterminedVisit visit, DeterminedItem item) =>
        await press.PrintAsync(await press.Renderer.HtmlAsync(Model(visit, item)));
}
