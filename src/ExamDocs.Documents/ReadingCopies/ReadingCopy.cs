using System.Globalization;
using ExamDocs.Documents.PdfSyntax;
using NodaTime;

namespace ExamDocs.Documents.ReadingCopies;

/// <summary>What a reading copy is called, and how its pages are numbered.</summary>
/// <param name="Title">Of the file.</param>
/// <param name="Language">For example en.</param>
/// <param name="On">The day that the file names as that of its making.</param>
/// <param name="Mark">What a page bears, given its number; in ASCII characters.</param>
public sealed record CopyFacts(string Title, string Language, LocalDate On, Func<string, string> Mark);

/// <summary>
/// Puts the pages of many files into one, to be read and searched in one go: with bookmarks, page numbers, and links from its own pages to
/// the others. It holds one file in memory at a time. The tags that make a document accessible are not carried over, nor signatures: the
/// single documents stay the ones to keep.
/// </summary>
public sealed class ReadingCopy : IDisposable
{
    /// <summary>A link that begins so leads to the part whose key follows.</summary>
    public const string LinkStart = "https://page.invalid/";

    private readonly StreamedPdf _pdf;
    private readonly CopyFacts _facts;
    private readonly Dictionary<string, int> _shared = new(StringComparer.Ordinal);
    private readonly List<Bookmark> _bookmarks = [];
    private readonly int _root;
    private readonly int _font;

    private ReadingCopy(Stream to, CopyFacts facts)
    {
        (_pdf, _facts) = (new StreamedPdf(to), facts);
        (_root, _font) = (_pdf.Reserve(), PageMark.Font(_pdf));
    }

    /// <param name="to">Where the file goes.</param>
    /// <param name="parts">In the order of their pages; those in front first.</param>
    /// <param name="facts">Title and page numbers.</param>
    /// <param name="done">Called after each part.</param>
    /// <param name="cancellation">Stops between two parts.</param>
    /// <exception cref="PdfSyntaxException">A part has other pages than was said, or cannot be read.</exception>
    public static void Write(
        Stream to,
        IReadOnlyList<CopyPart> parts,
        CopyFacts facts,
        Action? done = null,
        CancellationToken cancellation = default
    )
    {
        using var copy = new ReadingCopy(to, facts);
        // Known before anything is written: pages in front link to those behind.
        var pages = parts.Select(p => Enumerable.Range(0, p.Pages).Select(_ => copy._pdf.Reserve()).ToList()).ToList();
        var links = parts
            .Zip(pages)
            .SelectMany(p => p.First.Also.Select(a => a.Key).Prepend(p.First.Key).Select(key => (Key: key, Page: p.Second[0])))
            .ToDictionary(l => l.Key, l => l.Page, StringComparer.Ordinal);
        var front = parts.Where(p => p.IsFront).Sum(p => p.Pages);
        for (var (n, from) = (0, 0); n < parts.Count; from += parts[n].Pages, n++)
        {
            cancellation.ThrowIfCancellationRequested();
            var first = from;
            copy.Add(parts[n], pages[n], links, at => first + at < front ? Roman(first + at + 1) : Printed(first + at + 1 - front));
            done?.Invoke();
        }
        copy.Finish([.. pages.SelectMany(p => p)], front);
    }

    public void Dispose() => _pdf.Dispose();

    private void Add(CopyPart part, IReadOnlyList<int> numbers, IReadOnlyDictionary<string, int> links, Func<int, string> label)
    {
        var source = PdfSource.Read(part.Open());
        var pages = PageTree.Of(source);
        if (pages.Count != numbers.Count)
            throw new PdfSyntaxException("it has other pages than before");
        var objects = new CopiedObjects(source, _pdf, _shared);
        foreach (var (n, page) in pages.Index())
        {
            var notes = PageLinks
                .On(source, page, links)
                .Select(link => _pdf.Add(link))
                .Concat(PageMark.Add(_pdf, page.Box(), _font, _facts.Mark(label(n))) is { } mark ? [mark] : []);
            var annotations = string.Join(' ', notes.Select(StreamedPdf.Reference));
            _pdf.Put(numbers[n], $"<</Type /Page\n/Parent {StreamedPdf.Reference(_root)}\n{objects.Page(page)}/Annots [{annotations}]>>");
        }
        Mark(part, source, pages, numbers);
    }

    private void Mark(CopyPart part, PdfSource source, IReadOnlyList<PdfPage> pages, IReadOnlyList<int> numbers)
    {
        var target = $"[{StreamedPdf.Reference(numbers[0])} /Fit]";
        foreach (var title in part.Also.Select(a => a.Title).Prepend(part.Title).OfType<string>())
            Outline.Add(_bookmarks, part.Above, new Bookmark(title, target));
        if (part.Title is null)
            _bookmarks.AddRange(Outline.Of(source, pages.Zip(numbers).ToDictionary(p => p.First.Number, p => p.Second)));
    }

    private void Finish(IReadOnlyList<int> pages, int front)
    {
        var kids = string.Join(' ', pages.Select(StreamedPdf.Reference));
        _pdf.Put(_root, $"<</Type /Pages\n/Kids [{kids}]\n/Count {Printed(pages.Count)}>>");
        var outlines = Outline.Write(_pdf, _bookmarks) is { } root ? $"/Outlines {StreamedPdf.Reference(root)}\n" : "";
        var labels = front == 0 ? "0 <</S /D>>" : $"0 <</S /r>> {Printed(front)} <</S /D>>";
        var catalog = _pdf.Add(
            $"<</Type /Catalog\n/Pages {StreamedPdf.Reference(_root)}\n{outlines}/PageMode /UseOutlines\n/PageLabels <</Nums [{labels}]>>\n"
                + $"/Lang {PdfText.Write(_facts.Language)}\n/ViewerPreferences <</DisplayDocTitle true>>>>"
        );
        var day = _facts.On.ToString("uuuuMMdd", CultureInfo.InvariantCulture);
        var info = _pdf.Add(
            $"<</Title {PdfText.Write(_facts.Title)}\n/Creator (ExamDocs)\n/CreationDate (D:{day}000000Z)\n/ModDate (D:{day}000000Z)>>"
        );
        _pdf.Finish(catalog, info);
    }

    private static string Printed(int number) => number.ToString(CultureInfo.InvariantCulture);

    internal static string Roman(int number)
    {
        (int Value, string Figures)[] figures =
        [
            (1000, "m"),
            (900, "cm"),
            (500, "d"),
            (400, "cd"),
            (100, "c"),
            (90, "xc"),
            (50, "l"),
            (40, "xl"),
            (10, "x"),
            (9, "ix"),
            (5, "v"),
            (4, "iv"),
            (1, "i"),
        ];
        var roman = "";
        foreach (var (value, letters) in figures)
        {
            for (; number >= value; number -= value)
                roman += letters;
        }
        return roman;
    }
}
