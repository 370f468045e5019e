using System.Numerics;
using System.Text;
using ExamDocs.Documents.Finishing;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>Letters as they stand on a page.</summary>
/// <param name="Text">One letter, or the letters that one sign stands for.</param>
/// <param name="IsMargin">It belongs to no tag: page number, running title.</param>
/// <param name="IsCut">Part of it lies outside of the page, or of what is shown of it.</param>
internal readonly record struct PrintedLetter(string Text, bool IsMargin, bool IsCut);

/// <summary>Reads the letters of a page in the order in which they are drawn, and sees which of them are cut.</summary>
internal sealed class PrintedText
{
    /// <summary>Deeper than drawings are nested within drawings.</summary>
    private const int MostDepth = 8;

    /// <summary>Points. Rounding of the browser's own, seen up to a tenth of it.</summary>
    private const float Tolerance = 0.75f;

    private readonly PdfSource _source;
    private readonly Dictionary<int, PrintedFont> _fonts;
    private readonly List<PrintedLetter> _letters = [];
    private readonly MarkedContent _marks = new();
    private readonly DrawnPath _path = new();
    private readonly Stack<DrawingState> _kept = new();
    private DrawingState _state;
    private Matrix3x2 _line = Matrix3x2.Identity;
    private Matrix3x2 _text = Matrix3x2.Identity;

    private PrintedText(PdfSource source, Dictionary<int, PrintedFont> fonts, PageArea page)
    {
        (_source, _fonts) = (source, fonts);
        _state = new DrawingState(Matrix3x2.Identity, page, null, 1);
    }

    /// <summary>The letters of each page.</summary>
    /// <exception cref="PdfSyntaxException">The file is none that the browser writes.</exception>
    public static IReadOnlyList<IReadOnlyList<PrintedLetter>> Of(byte[] pdf)
    {
        var source = PdfSource.Read(pdf);
        var fonts = new Dictionary<int, PrintedFont>();
        return [.. PageTree.Of(source).Select(page => Read(source, page, fonts))];
    }

    private static List<PrintedLetter> Read(PdfSource source, PdfPage page, Dictionary<int, PrintedFont> fonts)
    {
        var box = page.Box();
        var reader = new PrintedText(source, fonts, new PageArea((float)box[0], (float)box[1], (float)box[2], (float)box[3]));
        reader.Pass(page.Content(), page.Resources, MostDepth);
        return reader._letters;
    }

    private void Pass(byte[] content, PdfResources resources, int depth)
    {
        for (var o = new ContentOperators(content); o.Next();)
        {
            if (!PassText(o, resources) && !_marks.Pass(o) && !PassState(o) && !_path.Pass(o, ref _state) && o.Is("Do"u8))
                PassDrawing(resources.Drawn(Name(o)), depth);
        }
    }

    private bool PassState(in ContentOperators o)
    {
        if (o.Is("q"u8))
            _kept.Push(_state);
        else if (o.Is("Q"u8))
            _state = _kept.TryPop(out var kept) ? kept : _state;
        else if (o.Is("cm"u8))
            _state = _state with { Place = Matrix(o) * _state.Place };
        else
            return false;
        return true;
    }

    private bool PassText(in ContentOperators o, PdfResources resources)
    {
        // The commonest first.
        if (o.Is("Tj"u8))
            Show(PdfText.Bytes(o.Operand(0)));
        else if (o.Is("Td"u8) || o.Is("TD"u8))
            _line = _text = Matrix3x2.CreateTranslation((float)o.Number(0), (float)o.Number(1)) * _line;
        else if (o.Is("BT"u8))
            _line = _text = Matrix3x2.Identity;
        else if (o.Is("Tm"u8))
            _line = _text = Matrix(o);
        else if (o.Is("Tf"u8))
            _state = _state with { Font = Font(resources.Font(Name(o))), Size = (float)o.Number(1) };
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
            _letters.Add(new PrintedLetter(_marks.Said(text), _marks.IsMargin, !string.IsNullOrWhiteSpace(text) && IsCut((float)width)));
            Advance((float)width);
        }
    }

    /// <summary>Judged by the middle of the letter, from its foot to half its size: descenders and overhangs may be trimmed by a line's box.</summary>
    private bool IsCut(float width)
    {
        var (place, em) = (_text * _state.Place, _state.Size / 1000);
        var (left, right, half) = (0.1f * width * em, 0.9f * width * em, 500 * em);
        var area = PageArea.Nothing.With(Vector2.Transform(new(left, 0), place)).With(Vector2.Transform(new(right, 0), place))
            .With(Vector2.Transform(new(left, half), place)).With(Vector2.Transform(new(right, half), place));
        return !_state.Clip.Holds(area, Tolerance);
    }

    private void Advance(float thousandths) => _text = Matrix3x2.CreateTranslation(thousandths * _state.Size / 1000, 0) * _text;

    private void PassDrawing(PdfObject? drawn, int depth)
    {
        if (drawn is not { } form || depth == 0 || form.Dictionary() is not { } dictionary || !string.Equals(dictionary.Word("Subtype"), "/Form", StringComparison.Ordinal))
            return;
        var before = _state;
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

    private static Matrix3x2 Matrix(in ContentOperators o) => new(
        (float)o.Number(0), (float)o.Number(1), (float)o.Number(2), (float)o.Number(3), (float)o.Number(4), (float)o.Number(5));

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
