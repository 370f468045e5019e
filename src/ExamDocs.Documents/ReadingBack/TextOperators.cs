using System.Numerics;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>The operators that place and show text (ISO 32000-1, 9.4): each sign becomes a letter with its place on the page.</summary>
internal sealed class TextOperators(MarkedContent tags, DrawnMarks drawn)
{
    /// <summary>Points. Rounding of the browser's own, seen up to a tenth of it.</summary>
    private const float Tolerance = 0.75f;

    /// <summary>Of a code that stands for no letter: nobody typed it, so it must match nothing that was typed.</summary>
    private const string NoLetter = "\uFFFD";

    /// <summary>Part of a letter's width on either side that need not be seen.</summary>
    private const float Side = 0.1f;

    private int _run;

    /// <summary>Where the line began, and where the next letter stands: before the place of the drawing itself.</summary>
    private Matrix3x2 _line = Matrix3x2.Identity;
    private Matrix3x2 _text = Matrix3x2.Identity;

    /// <returns>False where the operator neither places nor shows text.</returns>
    public bool Pass(in ContentOperators o, in DrawingState state)
    {
        // The commonest first.
        if (o.Is("Tj"u8))
            Show(PdfText.Bytes(o.Operand(0)), state);
        else if (o.Is("Td"u8) || o.Is("TD"u8))
            _line = _text = Matrix3x2.CreateTranslation((float)o.Number(0), (float)o.Number(1)) * _line;
        else if (o.Is("BT"u8))
            (_line, _text, _run) = (Matrix3x2.Identity, Matrix3x2.Identity, _run + 1);
        else if (o.Is("Tm"u8))
            _line = _text = o.Matrix();
        else if (o.Is("TJ"u8))
            ShowSpaced(o.Operand(0), state);
        else
            return false;
        return true;
    }

    private void ShowSpaced(ReadOnlySpan<byte> list, in DrawingState state)
    {
        var lexer = new PdfLexer(list[1..^1]);
        while (lexer.Next())
        {
            if (lexer.Kind is PdfToken.Number)
                Advance(-(float)(PdfNumber.Real(lexer.Token) ?? 0), state);
            else
                Show(PdfText.Bytes(lexer.Token), state);
        }
    }

    private void Show(byte[] shown, in DrawingState state)
    {
        for (var at = 0; state.Font is { } font && at + font.CodeLength <= shown.Length; at += font.CodeLength)
        {
            var code = shown.AsSpan(at, font.CodeLength);
            var (meaning, width) = font.Letter(code);
            var text = meaning ?? NoLetter;
            var isBlank = string.IsNullOrWhiteSpace(text);
            var corners = Corners((float)width, state);
            drawn.Add(
                new PrintedLetter(tags.Said(text), tags.IsMargin, !isBlank && IsCut(corners, state))
                {
                    Run = _run,
                    Order = drawn.Next(),
                    Ink = state.Fill,
                    Opacity = state.IsUnseen ? 0 : state.Opacity * state.Group,
                    Corners = corners,
                    Font = font.Name,
                    Drawn = meaning ?? "",
                    HasShape = !isBlank || font.Draws(code),
                    IsSaid = tags.IsSaid,
                    Width = (float)width,
                }
            );
            Advance((float)width, state);
        }
    }

    /// <summary>
    /// The part of a letter that must be seen: a tenth of its width from either side, from its foot to half its size. Overhangs
    /// and descenders lie outside of it; the box of a line may trim those, and the letter can still be read.
    /// </summary>
    private Vector2[] Corners(float width, in DrawingState state)
    {
        var (place, em) = (_text * state.Place, state.Size / 1000);
        var (left, right, half) = (Side * width * em, (1 - Side) * width * em, 500 * em);
        return
        [
            Vector2.Transform(new(left, 0), place),
            Vector2.Transform(new(right, 0), place),
            Vector2.Transform(new(right, half), place),
            Vector2.Transform(new(left, half), place),
        ];
    }

    private static bool IsCut(Vector2[] corners, in DrawingState state) =>
        !state.Clip.Holds(corners.Aggregate(PageArea.Nothing, (area, c) => area.With(c)), Tolerance);

    private void Advance(float thousandths, in DrawingState state) =>
        _text = Matrix3x2.CreateTranslation(thousandths * state.Size / 1000, 0) * _text;
}
