using System.Numerics;
using System.Text;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>Reads what is drawn on a page in the order in which it is drawn, and sees which letters are cut.</summary>
internal sealed class PrintedText
{
    /// <summary>Deeper than drawings are nested within drawings.</summary>
    private const int MostDepth = 8;

    /// <summary>Points. Rounding of the browser's own, seen up to a tenth of it.</summary>
    private const float Tolerance = 0.75f;

    /// <summary>Where a picture is drawn, before it is put in its place (ISO 32000-1, 8.9.5.1).</summary>
    private static readonly Vector2[] UnitSquare = [new(0, 0), new(1, 0), new(1, 1), new(0, 1)];

    private readonly PdfSource _source;
    private readonly Dictionary<int, PrintedFont> _fonts;
    private readonly List<PrintedLetter> _letters = [];
    private readonly List<PaintedShape> _shapes = [];
    private readonly MarkedContent _marks = new();
    private readonly DrawnPath _path = new();
    private readonly Stack<DrawingState> _kept = new();
    private DrawingState _state;
    private int _order;
    private int _run;
    private Matrix3x2 _line = Matrix3x2.Identity;
    private Matrix3x2 _text = Matrix3x2.Identity;

    private PrintedText(PdfSource source, Dictionary<int, PrintedFont> fonts, PageArea page)
    {
        (_source, _fonts) = (source, fonts);
        _state = new DrawingState(Matrix3x2.Identity, page, null, 1)
        {
            LineWidth = 1,
            Opacity = 1,
            Group = 1,
        };
    }

    /// <summary>The letters of each page.</summary>
    /// <exception cref="PdfSyntaxException">The file is none that the browser writes.</exception>
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
        return new PrintedPage(reader._letters, reader._shapes);
    }

    private void Pass(byte[] content, PdfResources resources, int depth)
    {
        for (var o = new ContentOperators(content); o.Next(); )
        {
            if (!PassText(o, resources) && !_marks.Pass(o) && !PassState(o, resources) && !_path.Pass(o, ref _state, Paint) && o.Is("Do"u8))
                PassDrawing(resources.Drawn(Name(o)), depth);
        }
    }

    private bool PassState(in ContentOperators o, PdfResources resources)
    {
        if (o.Is("q"u8))
            _kept.Push(_state);
        else if (o.Is("Q"u8))
            _state = _kept.TryPop(out var kept) ? kept : _state;
        else if (o.Is("cm"u8))
            _state = _state with { Place = Matrix(o) * _state.Place };
        else if (o.Is("gs"u8))
            Set(resources.State(Name(o)));
        else if (o.Is("w"u8))
            _state = _state with { LineWidth = (float)o.Number(0) };
        else
            return PassColour(o);
        return true;
    }

    private void Set(PdfDictionary? kept) =>
        _state = _state with
        {
            LineWidth = (float)(kept?.Real("LW") ?? _state.LineWidth),
            Opacity = (float)(kept?.Real("ca") ?? _state.Opacity),
        };

    private bool PassColour(in ContentOperators o)
    {
        if (o.Is("rg"u8) || o.Is("g"u8) || o.Is("k"u8))
            _state = _state with { Fill = Ink(o) };
        else if (o.Is("RG"u8) || o.Is("G"u8) || o.Is("K"u8))
            _state = _state with { Stroke = Ink(o) };
        else if (o.Is("scn"u8) || o.Is("sc"u8))
            _state = _state with { Fill = ReadingBack.Ink.Mixed };
        else if (o.Is("SCN"u8) || o.Is("SC"u8))
            _state = _state with { Stroke = ReadingBack.Ink.Mixed };
        else
            return false;
        return true;
    }

    /// <summary>Grey, red with green and blue, or the four colours of print, simply turned into three.</summary>
    private static Ink Ink(in ContentOperators o) =>
        o.Count switch
        {
            1 => new((float)o.Number(0), (float)o.Number(0), (float)o.Number(0)),
            4 => new(
                (float)((1 - o.Number(0)) * (1 - o.Number(3))),
                (float)((1 - o.Number(1)) * (1 - o.Number(3))),
                (float)((1 - o.Number(2)) * (1 - o.Number(3)))
            ),
            _ => new((float)o.Number(0), (float)o.Number(1), (float)o.Number(2)),
        };

    private void Paint(IReadOnlyList<Vector2[]> rings, bool isStroke)
    {
        if (!isStroke && _state.Opacity * _state.Group < 0.05f)
            return;
        _shapes.Add(new PaintedShape(_order++, isStroke ? _state.Stroke : _state.Fill, rings, _state.Clip) { IsStroke = isStroke });
    }

    private bool PassText(in ContentOperators o, PdfResources resources)
    {
        // The commonest first.
        if (o.Is("Tj"u8))
            Show(PdfText.Bytes(o.Operand(0)));
        else if (o.Is("Td"u8) || o.Is("TD"u8))
            _line = _text = Matrix3x2.CreateTranslation((float)o.Number(0), (float)o.Number(1)) * _line;
        else if (o.Is("BT"u8))
            (_line, _text, _run) = (Matrix3x2.Identity, Matrix3x2.Identity, _run + 1);
        else if (o.Is("Tm"u8))
            _line = _text = Matrix(o);
        else if (o.Is("Tf"u8))
            _state = _state with { Font = Font(resources.Font(Name(o))), Size = (float)o.Number(1) };
        else if (o.Is("Tr"u8))
            _state = _state with { IsUnseen = o.Number(0) is 3 or 7 };
        else if (o.Is("TJ"u8))
            ShowSpaced(o.Operand(0));
        else
            return false;
        return true;
    }

    private void ShowSpaced(ReadOnlySpan<byte> list)
    {
        var lexer = new PdfLexer(list[1..^1]);
        while (lexer.Next())
        {
            if (lexer.Kind is PdfToken.Number)
                Advance(-(float)(PdfNumber.Real(lexer.Token) ?? 0));
            else
                Show(PdfText.Bytes(lexer.Token));
        }
    }

    private void Show(byte[] shown)
    {
        for (var at = 0; _state.Font is { } font && at + font.CodeLength <= shown.Length; at += font.CodeLength)
        {
            var (text, width) = font.Letter(shown.AsSpan(at, font.CodeLength));
            Vector2[] corners = Corners((float)width);
            _letters.Add(
                new PrintedLetter(_marks.Said(text), _marks.IsMargin, !string.IsNullOrWhiteSpace(text) && IsCut(corners))
                {
                    Run = _run,
                    Order = _order++,
                    Ink = _state.Fill,
                    Opacity = _state.IsUnseen ? 0 : _state.Opacity * _state.Group,
                    Corners = corners,
                    Font = font.Name,
                    Drawn = text,
                    HasShape = !string.IsNullOrWhiteSpace(text) || font.Draws(shown.AsSpan(at, font.CodeLength)),
                    IsSaid = _marks.IsSaid,
                    Width = (float)width,
                }
            );
            Advance((float)width);
        }
    }

    /// <summary>
    /// Descenders and overhangs may be trimmed by a line's box: the middle of the letter counts, from its foot to half its size.
    /// </summary>
    private Vector2[] Corners(float width)
    {
        var (place, em) = (_text * _state.Place, _state.Size / 1000);
        var (left, right, half) = (0.1f * width * em, 0.9f * width * em, 500 * em);
        return
        [
            Vector2.Transform(new(left, 0), place),
            Vector2.Transform(new(right, 0), place),
            Vector2.Transform(new(right, half), place),
            Vector2.Transform(new(left, half), place),
        ];
    }

    private bool IsCut(Vector2[] corners) => !_state.Clip.Holds(corners.Aggregate(PageArea.Nothing, (area, c) => area.With(c)), Tolerance);

    private void Advance(float thousandths) => _text = Matrix3x2.CreateTranslation(thousandths * _state.Size / 1000, 0) * _text;

    private void PassDrawing(PdfObject? drawn, int depth)
    {
        if (drawn is { } picture && string.Equals(picture.Dictionary().Word("Subtype"), "/Image", StringComparison.Ordinal))
            _shapes.Add(
                new PaintedShape(
                    _order++,
                    ReadingBack.Ink.Mixed,
                    [
                        [.. UnitSquare.Select(c => Vector2.Transform(c, _state.Place))],
                    ],
                    _state.Clip
                )
                {
                    Picture = picture,
                }
            );
        if (
            drawn is not { } form
            || depth == 0
            || form.Dictionary() is not { } dictionary
            || !string.Equals(dictionary.Word("Subtype"), "/Form", StringComparison.Ordinal)
        )
            return;
        var before = _state;
        _state = _state with { Group = _state.Group * _state.Opacity, Opacity = 1 };
        if (dictionary.Find("Matrix") is { } matrix && Numbers(matrix.Span) is { Count: 6 } n)
            _state = _state with { Place = new Matrix3x2(n[0], n[1], n[2], n[3], n[4], n[5]) * _state.Place };
        Pass(form.Stream(PdfPage.MostContent), PdfResources.Of(_source, dictionary), depth - 1);
        _state = before;
    }

    private PrintedFont? Font(PdfObject? font)
    {
        if (font is not { } known)
            return null;
        if (!_fonts.TryGetValue(known.Number, out var read))
            _fonts[known.Number] = read = PrintedFont.Of(_source, known);
        return read;
    }

    private static string Name(in ContentOperators o) => Encoding.Latin1.GetString(o.Operand(0)[1..]);

    private static Matrix3x2 Matrix(in ContentOperators o) =>
        new((float)o.Number(0), (float)o.Number(1), (float)o.Number(2), (float)o.Number(3), (float)o.Number(4), (float)o.Number(5));

    private static List<float> Numbers(ReadOnlySpan<byte> list)
    {
        var numbers = new List<float>();
        var lexer = new PdfLexer(list);
        while (lexer.Next())
        {
            if (PdfNumber.Real(lexer.Token) is { } number)
                numbers.Add((float)number);
        }
        return numbers;
    }
}
