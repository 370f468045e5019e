using ExamDocs.Templates;
using ExamDocs.Templates.DueLabel;
using ExamDocs.Templates.Shared.Wording;
using UglyToad.PdfPig;

namespace ExamDocs.Documents.Tests.Printing;

/// <summary>Next-examination labels in other sizes: nothing is cut, nothing is too small, and what must stand there does.</summary>
public sealed class DueFaceTests(SharedBrowser browser)
{
    private const double PointsPerMm = 72 / 25.4;

    public static TheoryData<string, string, string> Words =>
        new()
        {
            { "en", "CLR-03", "OT-44120" },
            { "de", "WWWW-0123456789-BRIDGE-ASSEMBLY", "SN-2024-0004711-B" },
            { "fr", "Élan-14/Ø", "Ž 2024 0004711 B" },
        };

    [Theory]
    [MemberData(nameof(Words))]
    public async Task The_item_its_serial_the_day_and_the_number_stand_on_every_size_that_is_printed(
        string language,
        string id,
        string serial
    )
    {
        var sizes = 0;
        foreach (var face in DueFace.All)
        {
            var model = Language.Find(language)!.In(() => new DueFaceModel(Label("CLR-03", id, serial), face));
            if (model.Misfits.Count > 0)
                continue;
            sizes++;
            var pdf = await browser.PrintAsync(await Language.Find(language)!.InAsync(() => browser.Renderer.HtmlAsync(model)));
            using var read = PdfDocument.Open(pdf);
            var page = Assert.Single(read.GetPages());
            Assert.Equal(face.WidthMm, page.Width / PointsPerMm, 0.25);
            Assert.Equal(face.HeightMm, page.Height / PointsPerMm, 0.25);
            var text = Tool.Squeeze(Tool.PdfText(pdf));
            Assert.Contains(Tool.Squeeze(id), text, StringComparison.Ordinal);
            Assert.Contains(Tool.Squeeze(serial), text, StringComparison.Ordinal);
            Assert.Matches(@"20\.?(Aug|August|août|08)\.?2026", text);
            Assert.True(text.Contains("D-2026-000001", StringComparison.Ordinal) || model.Code.Matrix is not null, face.ToString());
            Assert.All(page.Letters, l =>
                Assert.True(
                    l.BoundingBox is { Left: > 0.8, Bottom: > 0.5 } b && b.Right < page.Width - 0.8 && b.Top < page.Height - 0.5,
                    $"{face}: {l.Value}"
                )
            );
            // Capitals of Noto Sans are 0.714 of the size of type.
            Assert.All(page.Letters, l =>
                Assert.True(l.PointSize / PointsPerMm * 0.714 >= DueFace.LeastCapitalsMm - 0.001, $"{face}: {l.Value}")
            );
            Overlaps.Refuse(page);
        }
        Assert.True(sizes >= 4);
    }

    [Fact]
    public async Task On_the_smallest_a_short_identity_and_serial_keep_the_code_and_long_ones_are_refused()
    {
        Assert.Equal("D-2026-000001 CON-01", new DueFaceModel(Label("CON-01", "CON-01", "OT-44120"), DueFace.Wrap).Code.Text);
        // Without room for the code the number stands there in words.
        var without = new DueFaceModel(Label("CON-01", "CON-01", "SN-2024-0004711-B"), DueFace.Wrap);
        Assert.Empty(without.Misfits);
        Assert.Null(without.Code.Matrix);
        Assert.Contains(">D-2026-000001</p>", await browser.Renderer.HtmlAsync(without), StringComparison.Ordinal);
        Assert.Equal(["the serial"], new DueFaceModel(Label("CON-01", "CON-01", new string('8', 40)), DueFace.Wrap).Misfits);
        Assert.Equal(["the identity"], new DueFaceModel(Label("CON-01", new string('W', 40), "1"), DueFace.Wrap).Misfits);
    }

    /// <summary>Days and units are held together by blanks that break no line.</summary>
    private static string Plain(string html) => html.Replace("&#xA0;", " ", StringComparison.Ordinal);

    [Fact]
    public async Task What_the_item_can_do_without_is_left_out_first()
    {
        var pages = new List<string>();
        foreach (var face in DueFace.All)
            pages.Add(Plain(await browser.Renderer.HtmlAsync(new DueFaceModel(Label("CLR-03", "CLR-03", "OS-0931"), face))));
        Assert.All(pages, p =>
            Assert.All(["CLR-03", "OS-0931", "Do not use after|Not to be used after", "20 Aug 2026"], w => Assert.Matches(w, p))
        );
        string[] others = ["Climbing rope", "11 Nov 2026", "Ring 0000 555 0142", ">D-2026-000001</p>", "Visit V-2026-031", "come first"];
        Assert.All(others, w => Assert.DoesNotContain(w, pages[0], StringComparison.Ordinal));
        Assert.All(others, w => Assert.Contains(w, pages[^1], StringComparison.Ordinal));
        Assert.All(pages.Skip(1), p => Assert.Contains("Ring 0000 555 0142", p, StringComparison.Ordinal));
    }

    private static DueLabelModel Label(string item, string id, string serial)
    {
        var record = Example.Record with
        {
            Items = [.. Example.Record.Items.Select(i => i.Id == item ? i with { Id = id, Serial = serial } : i)],
            Examinations = [.. Example.Record.Examinations.Select(e => e.Item == item ? e with { Item = id } : e)],
        };
        var visit = Example.Determined(record);
        var identity = Example.Identity(DocumentTypes.DueLabel) with
        {
            Letterhead = new Letterhead { Name = "Oakhollow Examinations", Telephone = "0000 555 0142" },
        };
        return new DueLabelModel(identity, visit, visit.Items.First(i => i.Item.Id == id));
    }
}
