using System.Globalization;
using System.Text;

namespace ExamDocs.Documents.LabelSheets;

/// <summary>The operators of a PDF content stream that set a colour (ISO 32000-1:2008, table 74).</summary>
internal static class ColourOperators
{
    // Of a tone lighter than this nothing is printed; everything darker is black. In parts of full white.
    private const double LightestBlack = 0.8;

    private static readonly string[] Refused = ["k", "K", "cs", "CS", "sc", "SC", "scn", "SCN", "sh", "BI"];

    /// <summary>The same content with every colour turned to black or to white.</summary>
    /// <exception cref="NotSupportedException">It sets a colour in another way than by red, green and blue or by grey.</exception>
    public static string Blacken(string content)
    {
        var result = new StringBuilder(content.Length);
        var copied = 0;
        var operands = new List<(int Start, double Value)>();
        for (var at = 0; at < content.Length; )
        {
            var (start, end) = Token(content, at);
            var token = content[start..end];
            at = end;
            if (
                double.TryParse(
                    token,
                    NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint,
                    CultureInfo.InvariantCulture,
                    out var number
                )
            )
            {
                operands.Add((start, number));
                continue;
            }
            if (Array.IndexOf(Refused, token) >= 0)
                throw new NotSupportedException($"the label sets a colour by {token}, and cannot be printed in black alone");
            if (Parts(token) is { } parts && operands.Count >= parts)
            {
                var first = operands[^parts];
                var tone = parts == 1 ? first.Value : (0.299 * first.Value) + (0.587 * operands[^2].Value) + (0.114 * operands[^1].Value);
                result
                    .Append(content, copied, first.Start - copied)
                    .Append(tone < LightestBlack ? '0' : '1')
                    .Append(token is "rg" or "g" ? " g" : " G");
                copied = end;
            }
            operands.Clear();
        }
        return result.Append(content, copied, content.Length - copied).ToString();
    }

    private static int? Parts(string token) =>
        token switch
        {
            "rg" or "RG" => 3,
            "g" or "G" => 1,
            _ => null,
        };

    // Strings, names and comments are one token each, so that nothing within them is taken for an operator.
    private static (int Start, int End) Token(string content, int at)
    {
        while (at < content.Length && IsSpace(content[at]))
            at++;
        if (at == content.Length)
            return (at, at);
        var end = content[at] switch
        {
            '(' => EndOfString(content, at),
            '<' when at + 1 < content.Length && content[at + 1] != '<' => After(content, at, ">"),
            '%' => After(content, at, "\n"),
            '/' => EndOfWord(content, at + 1),
            _ => EndOfWord(content, at),
        };
        return (at, Math.Max(end, at + 1));
    }

    private static int EndOfString(string content, int at)
    {
        var depth = 0;
        for (; at < content.Length; at++)
        {
            if (content[at] == '\\')
                at++;
            else if (content[at] == '(')
                depth++;
            else if (content[at] == ')' && --depth == 0)
                return at + 1;
        }
        return content.Length;
    }

    private static int After(string content, int at, string end) =>
        content.IndexOf(end, at, StringComparison.Ordinal) is >= 0 and var found ? found + end.Length : content.Length;

    private static int EndOfWord(string content, int at)
    {
        while (at < content.Length && !IsSpace(content[at]) && !"()<>[]{}/%".Contains(content[at], StringComparison.Ordinal))
            at++;
        return at;
    }

    private static bool IsSpace(char c) => c is ' ' or '\n' or '\r' or '\t' or '\f' or '\0';
}
