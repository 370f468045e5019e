using System.Numerics;
using System.Text;
using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.Finishing;

/// <summary>Goes through a content stream operator by operator (ISO 32000-1, 7.8.2), each with its operands.</summary>
internal ref struct ContentOperators(ReadOnlySpan<byte> content)
{
    private readonly ReadOnlySpan<byte> _content = content;
    private readonly List<(PdfToken Kind, int Start, int End)> _operands = [];
    private PdfLexer _lexer = new(content);

    /// <summary>Where the first operand begins, or the operator where it has none.</summary>
    public int Start { get; private set; } = 0;

    public readonly int End => _lexer.End;

    public readonly ReadOnlySpan<byte> Operator => _lexer.Token;

    public readonly int Count => _operands.Count;

    public readonly bool Is(ReadOnlySpan<byte> name) => _lexer.Is(name);

    public readonly ReadOnlySpan<byte> Operand(int index) =>
        index < _operands.Count
            ? _content[_operands[index].Start.._operands[index].End]
            : throw new PdfSyntaxException("an operand is missing");

    public readonly PdfToken KindOf(int index) => _operands[index].Kind;

    /// <summary>0 where the operand is not a number.</summary>
    public readonly double Number(int index) => PdfNumber.Real(Operand(index)) ?? 0;

    /// <summary>The first operand, which is a name, without its slash.</summary>
    public readonly string Name() => Encoding.Latin1.GetString(Operand(0)[1..]);

    /// <summary>The first six operands as a matrix (ISO 32000-1, 8.3.3).</summary>
    public readonly Matrix3x2 Matrix() =>
        new((float)Number(0), (float)Number(1), (float)Number(2), (float)Number(3), (float)Number(4), (float)Number(5));

    /// <returns>False at the end.</returns>
    public bool Next()
    {
        _operands.Clear();
        Start = -1;
        while (_lexer.Next())
        {
            var (kind, start) = (_lexer.Kind, _lexer.Start);
            if (Start < 0)
                Start = start;
            if (kind is PdfToken.Word)
                return !Is("BI"u8) ? true : throw new PdfSyntaxException("a picture stands within its text");
            if (kind is PdfToken.DictionaryClose or PdfToken.ArrayClose)
                throw new PdfSyntaxException("a value is missing");
            if (kind is PdfToken.DictionaryOpen or PdfToken.ArrayOpen)
                _lexer.Close();
            // No references stand here (7.8.2): each number is an operand of its own.
            _operands.Add((kind, start, _lexer.End));
        }
        return false;
    }
}
