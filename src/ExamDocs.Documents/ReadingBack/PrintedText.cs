using System.Numerics;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>
/// Reads what is drawn on the pages of a file, in the order in which it is drawn, and sees which letters are cut. Nothing is
/// guessed: a file that the browser does not write so is refused, and a sign without a meaning is not a letter.
/// </summary>
internal sealed class PrintedText
{
    /// <summary>Deeper than drawings are nested within drawings.</summary>
    private const int MostDepth = 8;

    /// <summary>A fainter area hides nothing. No source: nothing that our own pages draw is see-through.</summary>
    private const float LeastOpacity = 0.05f;

    /// <summary>Where a picture is drawn, before it is put in its place (ISO 32000-1, 8.9.5.1).</summary>
    private static readonly Vector2[] UnitSquare = [new(0, 0), new(1, 0), new(1, 1), new(0, 1)];

    private readonly PdfSource _source;
    private readonly DrawnMarks _drawn = new();
    private readonly MarkedContent _tags = new();
    private readonly DrawnPath _path = new();
    private readonly StateOperators _states;
    private readonly TextOperators _text;

    private PrintedText(PdfSource source, Dictionary<int, PrintedFont> fonts, PageArea page)
    {
        _source = source;
        _states = new StateOperators(source, fonts, page);
        _text = new TextOperators(_tags, _drawn);
    }

    /// <summary>The letters of each page.</summary>
    /// <exception cref="PdfSyntaxException">The file is not one that the browser writes.</exception>
    public static IReadOnlyList<IReadOnlyList<PrintedLetter>> Of(byte[] pdf) => [.. Pages(pdf).Select(p => p.Letters)];

    /// <summary>All that is drawn on each page.</summary>
    /// <inheritdoc cref="Of"/>
    public static IReadOnlyList<PrintedPage> Pages(byte[] pdf)
    {
        var source = PdfSource.Read(pdf);
        var fonts = new Dictionary<int, PrintedFont>();
        return [.. PageTree.Of(source).Select(page => Read(source, page, fonts))];
    }

    /// <summary>All that is drawn on one page.</summary>
    public static PrintedPage Page(PdfSource source, PdfPage page) => Read(source, page, []);

    private static PrintedPage Read(PdfSource source, PdfPage page, Dictionary<int, PrintedFont> fonts)
    {
        var box = page.Box();
        var reader = new PrintedText(source, fonts, new PageArea((float)box[0], (float)box[1], (float)box[2], (float)box[3]));
        reader.Pass(page.Content(), page.Resources, MostDepth);
        return reader._drawn.Page;
    }

    private void Pass(byte[] content, PdfResources resources, int depth)
    {
        for (var o = new ContentOperators(content); o.Next(); )
        {
            // Text first: nearly all of a page's operators show it.
            if (
                !_text.Pass(o, _states.Current)
                && !_tags.Pass(o)
                && !_states.Pass(o, resources)
                && !_path.Pass(o, ref _states.Current, Paint)
                && o.Is("Do"u8)
            )
                PassDrawing(resources.Drawn(o.Name()), depth);
        }
    }

    private void Paint(IReadOnlyList<Vector2[]> rings, bool isStroke)
    {
        ref readonly var state = ref _states.Current;
        if (isStroke || state.Opacity * state.Group >= LeastOpacity)
            _drawn.Add(new PaintedShape(_drawn.Next(), isStroke ? state.Stroke : state.Fill, rings, state.Clip) { IsStroke = isStroke });
    }

    /// <summary>A picture, or content that is drawn as one thing (a form, ISO 32000-1, 8.10).</summary>
    private void PassDrawing(PdfObject? drawn, int depth)
    {
        if (drawn is not { } known)
            return;
        var dictionary = known.Dictionary();
        if (dictionary.Word("Subtype") is "/Image")
            AddPicture(known);
        else if (dictionary.Word("Subtype") is "/Form" && depth > 0)
        {
            var before = _states.Current;
            _states.EnterForm(dictionary);
            Pass(known.Stream(PdfPage.MostContent), PdfResources.Of(_source, dictionary), depth - 1);
            _states.Current = before;
        }
    }

    private void AddPicture(PdfObject picture)
    {
        var state = _states.Current;
        Vector2[] ring = [.. UnitSquare.Select(corner => Vector2.Transform(corner, state.Place))];
        _drawn.Add(new PaintedShape(_drawn.Next(), Ink.Mixed, [ring], state.Clip) { Picture = picture });
    }
}
