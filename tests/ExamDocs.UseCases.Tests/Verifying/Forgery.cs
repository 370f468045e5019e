using System.Globalization;
using System.Text;
using ExamDocs.Documents.PdfSyntax;
using ExamDocs.Documents.ReadingBack;

namespace ExamDocs.UseCases.Tests.Verifying;

/// <summary>Changes a finished document as a forger would who has this program's own writer.</summary>
internal sealed class Forgery
{
    private readonly PdfSource _source;
    private readonly PdfTarget _target;
    private readonly PdfPage _page;

    private Forgery(byte[] pdf)
    {
        _source = PdfSource.Read(pdf);
        _target = new PdfTarget(_source);
        _page = PageTree.Of(_source)[0];
        Letters = PrintedText.Pages(pdf)[0].Letters;
    }

    public IReadOnlyList<PrintedLetter> Letters { get; }

    public static byte[] Of(byte[] pdf, Action<Forgery> change)
    {
        var forgery = new Forgery(pdf);
        change(forgery);
        return forgery._target.Write(forgery._source.Catalog.Number, forgery._source.Trailer.Reference("Info")!.Value);
    }

    public int Add(string body) => _target.Add(body);

    public int AddStream(string entries, string content) => _target.Add(PdfTarget.Stream(entries, Encoding.Latin1.GetBytes(content)));

    /// <summary>Changes the content of the first page.</summary>
    public void Content(Func<string, string> change) =>
        _target.Replace(
            _page.ContentNumber,
            PdfTarget.Stream("", Encoding.Latin1.GetBytes(Different(Encoding.Latin1.GetString(_page.Content()), change)))
        );

    /// <summary>Draws something after all else, in points of the page.</summary>
    public void Draw(string drawing) => Content(c => $"q\n{c}\nQ\n{drawing}\n");

    public void Page(Func<PdfDictionary, PdfDictionary> change) => Change(_page.Number, change);

    public void Catalog(Func<PdfDictionary, PdfDictionary> change) => Change(_source.Catalog.Number, change);

    /// <summary>Changes every object that holds the words.</summary>
    public void Objects(string holding, Func<PdfDictionary, PdfDictionary> change)
    {
        var found = _source
            .Objects.Where(o =>
                Encoding.Latin1.GetString(o.Body.Span).Contains(holding, StringComparison.Ordinal) && o.Body.Span.StartsWith("<<"u8)
            )
            .ToList();
        Assert.NotEmpty(found);
        foreach (var o in found)
            Change(o.Number, change);
    }

    /// <summary>Changes the tables that say which letters the codes of fonts stand for.</summary>
    public void LetterTables(Func<string, string> change)
    {
        foreach (
            var number in _source
                .Objects.Where(o => o.Body.Span.IndexOf("/ToUnicode"u8) >= 0)
                .Select(o => o.Dictionary().Reference("ToUnicode")!.Value)
                .Distinct()
        )
            _target.Replace(
                number,
                PdfTarget.Stream("", Encoding.Latin1.GetBytes(change(Encoding.Latin1.GetString(_source.Object(number).Stream(1 << 24)))))
            );
    }

    /// <summary>A rectangle over the middle of a word, as it is drawn.</summary>
    public string Over(string word)
    {
        var text = string.Concat(Letters.Select(l => l.Text.Length == 1 ? l.Text : "\u0001"));
        var at = text.IndexOf(word, StringComparison.Ordinal);
        Assert.True(at >= 0, word);
        var corners = Letters.Skip(at).Take(word.Length).SelectMany(l => l.Corners).ToList();
        var (left, right, bottom, top) = (corners.Min(c => c.X), corners.Max(c => c.X), corners.Min(c => c.Y), corners.Max(c => c.Y));
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{left - 1:0.##} {bottom - 1:0.##} {right - left + 2:0.##} {top - bottom + 4:0.##} re"
        );
    }

    private void Change(int number, Func<PdfDictionary, PdfDictionary> change)
    {
        var o = _source.Object(number);
        var dictionary = o.Dictionary();
        var rest = o.Body.Span[dictionary.End..].ToArray();
        _target.Replace(number, [.. change(dictionary).Bytes(), .. rest]);
    }

    private static string Different(string before, Func<string, string> change)
    {
        var after = change(before);
        Assert.NotEqual(before, after);
        return after;
    }
}
