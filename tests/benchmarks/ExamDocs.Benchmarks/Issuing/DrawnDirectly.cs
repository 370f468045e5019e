using System.Text.Json;
using ExamDocs.Documents.Browsing;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;
using PdfReader = UglyToad.PdfPig.PdfDocument;

namespace ExamDocs.Benchmarks.Issuing;

/// <summary>
/// The floor: the words and filled areas of a printed document, drawn at the same places with PDFsharp, without layout, tags or data.
/// </summary>
internal sealed class DrawnDirectly : IFontResolver
{
    private const string Fonts = "/usr/share/fonts/truetype/noto";

    private sealed record Word(double X, double Y, double Size, string Font, string Text);

    private sealed record Area(double X, double Y, double Width, double Height, double Red, double Green, double Blue);

    private sealed record Page(double Width, double Height, IReadOnlyList<Area> Areas, IReadOnlyList<Word> Words);

    /// <summary>Prints pages of HTML once, and keeps what is to be drawn of each, under its name.</summary>
    public static async Task PrepareAsync(string htmlFolder, string folder)
    {
        Directory.CreateDirectory(folder);
        await using var browser = await Browser.StartAsync();
        foreach (var file in Directory.EnumerateFiles(htmlFolder).Order(StringComparer.Ordinal))
        {
            using var printed = PdfReader.Open(await browser.PrintAsync(await File.ReadAllTextAsync(file)));
            var drawing = printed.GetPages().Select(Of).ToList();
            await File.WriteAllTextAsync(
                Path.Combine(folder, Path.ChangeExtension(Path.GetFileName(file), ".json")),
                JsonSerializer.Serialize(drawing)
            );
        }
    }

    /// <summary>In the child: draws every one of them.</summary>
    public static void All(string folder, string outFolder)
    {
        GlobalFontSettings.FontResolver = new DrawnDirectly();
        foreach (var file in Directory.EnumerateFiles(folder).Order(StringComparer.Ordinal))
        {
            using var document = new PdfDocument();
            foreach (var page in JsonSerializer.Deserialize<List<Page>>(File.ReadAllText(file))!)
                Draw(page, document);
            document.Save(Path.Combine(outFolder, Path.ChangeExtension(Path.GetFileName(file), ".pdf")));
        }
    }

    public FontResolverInfo ResolveTypeface(string familyName, bool isBold, bool isItalic) => new(familyName);

    public byte[] GetFont(string faceName) => File.ReadAllBytes(Path.Combine(Fonts, $"{faceName}.ttf"));

    private static Page Of(UglyToad.PdfPig.Content.Page page) =>
        new(
            page.Width,
            page.Height,
            [
                .. from path in page.Paths
                where path.IsFilled && path.FillColor is not null
                let colour = path.FillColor!.ToRGBValues()
                from part in path
                let box = part.GetBoundingRectangle()
                where box is not null
                select new Area(
                    box.Value.Left,
                    page.Height - box.Value.Top,
                    box.Value.Width,
                    box.Value.Height,
                    colour.r,
                    colour.g,
                    colour.b
                ),
            ],
            [
                .. from word in page.GetWords()
                let first = word.Letters[0]
                select new Word(
                    first.StartBaseLine.X,
                    page.Height - first.StartBaseLine.Y,
                    first.PointSize,
                    first.FontName![(first.FontName!.IndexOf('+') + 1)..],
                    word.Text
                ),
            ]
        );

    private static void Draw(Page from, PdfDocument document)
    {
        var page = document.AddPage();
        (page.Width, page.Height) = (XUnit.FromPoint(from.Width), XUnit.FromPoint(from.Height));
        using var canvas = XGraphics.FromPdfPage(page);
        foreach (var area in from.Areas)
        {
            var colour = XColor.FromArgb((int)(255 * area.Red), (int)(255 * area.Green), (int)(255 * area.Blue));
            canvas.DrawRectangle(new XSolidBrush(colour), area.X, area.Y, area.Width, area.Height);
        }
        foreach (var word in from.Words)
            canvas.DrawString(word.Text, new XFont(word.Font, word.Size), XBrushes.Black, word.X, word.Y);
    }
}
