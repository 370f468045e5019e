using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using ExamDocs.Documents.PdfSyntax;
using ExamDocs.Documents.ReadingBack;

namespace ExamDocs.Documents.Tests.ReadingBack.Fuzz;

/// <summary>Cuts, overlaps and covers, planted in the page before it is printed or in the printed file.</summary>
internal sealed class PlantedFault(int seed)
{
    private static readonly (string Name, string Style, string After)[] Styles =
    [
        ("cut on the right", "display:inline-block;width:0.5em;overflow:hidden;white-space:nowrap", ""),
        ("cut below", "display:inline-block;height:0.25em;overflow:hidden;line-height:1;vertical-align:top", ""),
        ("clipped", "display:inline-block;clip-path:inset(0 50% 0 0)", ""),
        ("off the page", "position:relative;left:-400mm", ""),
        (
            "covered in white",
            "position:relative;display:inline-block",
            "<i style='position:absolute;left:10%;top:0;width:80%;height:100%;background:#fff'></i>"
        ),
        (
            "covered in black",
            "position:relative;display:inline-block",
            "<i style='position:absolute;left:0;top:20%;width:60%;height:80%;background:#000'></i>"
        ),
        (
            "covered by a picture",
            "position:relative;display:inline-block",
            "<svg viewBox='0 0 10 10' preserveAspectRatio='none' "
                + "style='position:absolute;left:0;top:0;width:100%;height:100%'><path d='M0 0H10V10H0z' fill='#e9ecef'/></svg>"
        ),
        (
            "under a thick line",
            "position:relative;display:inline-block",
            "<svg viewBox='0 0 10 10' preserveAspectRatio='none' "
                + "style='position:absolute;left:0;top:0;width:100%;height:100%'><path d='M0 6H10' stroke='#14181d' "
                + "stroke-width='6'/></svg>"
        ),
        (
            "over other text",
            "position:relative;display:inline-block",
            "<i style='position:absolute;left:0;top:0;font-style:normal'>888888</i>"
        ),
        ("white on white", "color:#fff;background:#fff", ""),
        ("nearly white", "color:#f4f4f4;background:#fff", ""),
        ("see-through", "opacity:0.02", ""),
        ("without ink", "color:rgba(0,0,0,0)", ""),
        ("tiny", "font-size:0.4px", ""),
        ("not shown", "visibility:hidden", ""),
    ];

    private readonly Random _dice = new(seed);

    public bool IsInTheFile => seed % 3 == 2;

    /// <summary>The page with one of its texts spoilt.</summary>
    public (string Html, string What) InPage(string html)
    {
        var document = new HtmlParser().ParseDocument(html);
        var texts = Texts(document.Body!).ToList();
        var text = texts[_dice.Next(texts.Count)];
        var (name, style, after) = Styles[_dice.Next(Styles.Length)];
        var wrap = document.CreateElement("span");
        wrap.SetAttribute("style", style);
        var said = text.TextContent.Trim();
        text.Parent!.ReplaceChild(wrap, text);
        wrap.AppendChild(document.CreateTextNode(said));
        if (after.Length > 0)
            wrap.Insert(AdjacentPosition.BeforeEnd, after);
        return (document.DocumentElement.OuterHtml, $"\"{said}\" {name}");
    }

    /// <summary>The file with something done to a letter of one of its pages.</summary>
    public (byte[] Pdf, string What) InFile(byte[] pdf)
    {
        var source = PdfSource.Read(pdf);
        var pages = PageTree.Of(source);
        var n = _dice.Next(pages.Count);
        var letters = PrintedText.Pages(pdf)[n].Letters;
        var of = Enumerable.Range(0, letters.Count).Where(i => !letters[i].IsBlank && !letters[i].IsMargin).ToList();
        var chosen = of[_dice.Next(of.Count)];
        var letter = letters[chosen];
        var (what, change) = Changes(letter, chosen)[_dice.Next(4)];
        var target = new PdfTarget(source);
        target.Replace(
            pages[n].ContentNumber,
            PdfTarget.Stream("", Encoding.Latin1.GetBytes(change(Encoding.Latin1.GetString(pages[n].Content()))))
        );
        return (target.Write(source.Catalog.Number, source.Trailer.Reference("Info")!.Value), $"\"{letter.Text}\" {what} on page {n + 1}");
    }

    private List<(string What, Func<string, string> Change)> Changes(PrintedLetter letter, int number)
    {
        var area = letter.Corners.Aggregate(PageArea.Nothing, (a, c) => a.With(c));
        var box = string.Create(
            CultureInfo.InvariantCulture,
            $"{area.Left:0.###} {area.Bottom:0.###} {area.Right - area.Left:0.###} {area.Top - area.Bottom:0.###} re"
        );
        return
        [
            ("covered", c => $"q\n{c}\nQ\n1 1 1 rg\n{box}\nf\n"),
            ("never drawn", c => At(c, number, "3 Tr\n", "0 Tr\n")),
            ("left out", c => At(c, number, null, "")),
            ("clipped away", c => $"0 0 20 20 re\nW n\n{c}"),
        ];
    }

    /// <summary>
    /// Puts something before and after one of the letters, each of or the few that the browser shows with it; null takes it out.
    /// </summary>
    private static string At(string content, int number, string? before, string after)
    {
        var passed = 0;
        var shown = Regex
            .Matches(content, "<([0-9A-F]+)> Tj\n", RegexOptions.None, TimeSpan.FromSeconds(5))
            .First(m => (passed += m.Groups[1].Length / 4) > number);
        return content[..shown.Index] + (before is null ? "" : before + shown.Value) + after + content[(shown.Index + shown.Length)..];
    }

    private static IEnumerable<IText> Texts(INode node) =>
        node.ChildNodes.SelectMany(c =>
            c switch
            {
                IText text when text.TextContent.Trim().Length > 1 && text.TextContent.Trim().All(l => l < 0x250) => [text],
                IElement e when e.LocalName is "svg" or "style" or "script" => [],
                _ => Texts(c),
            }
        );
}
