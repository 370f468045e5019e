using System.Buffers;

namespace ExamDocs.Documents.PdfSyntax;

/// <summary>The kinds of token that PDF syntax has (ISO 32000-1, 7.2).</summary>
internal enum PdfToken
{
    End,
    Number,
    Name,
    Text,
    Hex,
    DictionaryOpen,
    DictionaryClose,
    ArrayOpen,
    ArrayClose,
    Word,
}

/// <summary>Reads PDF syntax token by token: objects and content streams are written in the same.</summary>
internal ref struct PdfLexer(ReadOnlySpan<byte> bytes, int at = 0)
{
    /// <summary>Blanks and delimiters: what ends a name, a number or a word (ISO 32000-1, 7.2.2).</summary>
    private static readonly SearchValues<byte> Irregular = SearchValues.Create("\0\t\n\f\r ()<>[]{}/%"u8);

    private readonly ReadOnlySpan<byte> _bytes = bytes;

    public PdfToken Kind { get; private set; }

    /// <summary>Where the token begins.</summary>
    public int Start { get; private set; } = at;

    /// <summary>Just after the token.</summary>
    public int End { get; private set; } = at;

    /// <summary>The token as written, with its marks.</summary>
    public readonly ReadOnlySpan<byte> Token => _bytes[Start..End];

    public readonly bool Is(ReadOnlySpan<byte> word) => Kind is PdfToken.Word && Token.SequenceEqual(word);

    /// <returns>False at the end.</returns>
    public bool Next()
    {
        SkipBlanks();
        Start = End;
        Kind = Start == _bytes.Length ? PdfToken.End : Take(_bytes[Start]);
        return Kind is not PdfToken.End;
    }

    /// <summary>Passes one whole value, whatever it holds: a reference is three tokens, a dictionary any number.</summary>
    /// <exception cref="PdfSyntaxException">There is none.</exception>
    public (int Start, int End) Value()
    {
        if (!Next() || Kind is PdfToken.DictionaryClose or PdfToken.ArrayClose)
            throw new PdfSyntaxException("a value is missing");
        var start = Start;
        if (Kind is PdfToken.DictionaryOpen or PdfToken.ArrayOpen)
            Close();
        else if (Kind is PdfToken.Number)
            Reference();
        return (start, End);
    }

    /// <summary>Passes the rest of the dictionary or list that the token opens.</summary>
    /// <exception cref="PdfSyntaxException">It does not end.</exception>
    public void Close()
    {
        for (var depth = 1; depth > 0; )
        {
            if (!Next())
                throw new PdfSyntaxException("a dictionary or a list does not end");
            depth += Kind switch
            {
                PdfToken.DictionaryOpen or PdfToken.ArrayOpen => 1,
                PdfToken.DictionaryClose or PdfToken.ArrayClose => -1,
                _ => 0,
            };
        }
    }

    /// <summary>A number may begin a reference, 12 0 R: only the two tokens after it tell.</summary>
    private void Reference()
    {
        var ahead = this;
        if (ahead.Next() && ahead.Kind is PdfToken.Number && ahead.Next() && ahead.Is("R"u8))
            this = ahead;
    }

    private void SkipBlanks()
    {
        while (End < _bytes.Length)
        {
            if (_bytes[End] == '%')
                SkipLine();
            else if (IsBlank(_bytes[End]))
                End++;
            else
                return;
        }
    }

    private void SkipLine()
    {
        while (End < _bytes.Length && _bytes[End] is not ((byte)'\n' or (byte)'\r'))
            End++;
    }

    private PdfToken Take(byte first)
    {
        End++;
        switch (first)
        {
            case (byte)'/':
                SkipRegular();
                return PdfToken.Name;
            case (byte)'(':
                SkipText();
                return PdfToken.Text;
            case (byte)'<' when End < _bytes.Length && _bytes[End] == '<':
                End++;
                return PdfToken.DictionaryOpen;
            case (byte)'>' when End < _bytes.Length && _bytes[End] == '>':
                End++;
                return PdfToken.DictionaryClose;
            case (byte)'<':
                var close = _bytes[End..].IndexOf((byte)'>');
                End = close < 0 ? throw new PdfSyntaxException("a text does not end") : End + close + 1;
                return PdfToken.Hex;
            case (byte)'[':
                return PdfToken.ArrayOpen;
            case (byte)']':
                return PdfToken.ArrayClose;
            default:
                SkipRegular();
                return first is (>= (byte)'0' and <= (byte)'9') or (byte)'+' or (byte)'-' or (byte)'.' ? PdfToken.Number : PdfToken.Word;
        }
    }

    /// <summary>Brackets within a text count unless a backslash stands before them (ISO 32000-1, 7.3.4.2).</summary>
    private void SkipText()
    {
        for (var depth = 1; depth > 0; End++)
        {
            if (End >= _bytes.Length)
                throw new PdfSyntaxException("a text does not end");
            depth += _bytes[End] switch
            {
                (byte)'(' => 1,
                (byte)')' => -1,
                _ => 0,
            };
            if (_bytes[End] == '\\')
                End++;
        }
    }

    private void SkipRegular()
    {
        var rest = _bytes[End..].IndexOfAny(Irregular);
        End = rest < 0 ? _bytes.Length : End + rest;
    }

    private static bool IsBlank(byte b) => b is 0 or 9 or 10 or 12 or 13 or 32;
}
