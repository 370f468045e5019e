using System.Numerics;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>
/// The operators that draw nothing and say how the next ones draw: place, colours, font, opacity (ISO 32000-1, 8.4 and 9.3).
/// </summary>
internal sealed class StateOperators(PdfSource source, Dictionary<int, PrintedFont> fonts, PageArea page)
{
    private readonly Stack<DrawingState> _kept = new();

    private DrawingState _current = new(Matrix3x2.Identity, page, null, 1)
    {
        LineWidth = 1,
        Opacity = 1,
        Group = 1,
    };

    /// <summary>What holds now; by reference, because a path narrows the clip in it.</summary>
    public ref DrawingState Current => ref _current;

    /// <returns>False where the operator changes no state.</returns>
    public bool Pass(in ContentOperators o, PdfResources resources)
    {
        if (o.Is("q"u8))
            _kept.Push(Current);
        else if (o.Is("Q"u8))
            Current = _kept.TryPop(out var kept) ? kept : Current;
        else if (o.Is("cm"u8))
            Current = Current with { Place = o.Matrix() * Current.Place };
        else if (o.Is("gs"u8))
            Set(resources.State(o.Name()));
        else if (o.Is("w"u8))
            Current = Current with { LineWidth = (float)o.Number(0) };
        else if (o.Is("Tf"u8))
            Current = Current with { Font = Font(resources.Font(o.Name())), Size = (float)o.Number(1) };
        else if (o.Is("Tr"u8))
            Current = Current with { IsUnseen = o.Number(0) is 3 or 7 };
        else
            return PassColour(o);
        return true;
    }

    /// <summary>What holds within a form: its own place, and the opacity that all of it is drawn with.</summary>
    public void EnterForm(PdfDictionary form)
    {
        Current = Current with { Group = Current.Group * Current.Opacity, Opacity = 1 };
        if (form.Find("Matrix") is { } matrix && Numbers(matrix.Span) is { Count: 6 } n)
            Current = Current with { Place = new Matrix3x2(n[0], n[1], n[2], n[3], n[4], n[5]) * Current.Place };
    }

    private void Set(PdfDictionary? kept) =>
        Current = Current with
        {
            LineWidth = (float)(kept?.Real("LW") ?? Current.LineWidth),
            Opacity = (float)(kept?.Real("ca") ?? Current.Opacity),
        };

    private bool PassColour(in ContentOperators o)
    {
        if (o.Is("rg"u8) || o.Is("g"u8) || o.Is("k"u8))
            Current = Current with { Fill = InkOf(o) };
        else if (o.Is("RG"u8) || o.Is("G"u8) || o.Is("K"u8))
            Current = Current with { Stroke = InkOf(o) };
        else if (o.Is("scn"u8) || o.Is("sc"u8))
            Current = Current with { Fill = Ink.Mixed };
        else if (o.Is("SCN"u8) || o.Is("SC"u8))
            Current = Current with { Stroke = Ink.Mixed };
        else
            return false;
        return true;
    }

    /// <summary>
    /// Grey, red with green and blue, or the four colours of print, turned into three without a profile: what is asked of a colour
    /// is whether it can be seen, and for that it is near enough.
    /// </summary>
    private static Ink InkOf(in ContentOperators o) =>
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

    private PrintedFont? Font(PdfObject? font)
    {
        if (font is not { } known)
            return null;
        if (!fonts.TryGetValue(known.Number, out var read))
            fonts[known.Number] = read = PrintedFont.Of(source, known);
        return read;
    }

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
