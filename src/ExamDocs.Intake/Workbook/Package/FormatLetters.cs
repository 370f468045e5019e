using System.Text;

namespace ExamDocs.Intake.Workbook.Package;

/// <summary>
/// The letters of a number format that stand for parts of a date or a time: what is quoted, escaped, a colour, a
/// locale or a condition is not among them.
/// </summary>
internal sealed class FormatLetters
{
    private readonly HashSet<char> _letters = [];

    private FormatLetters() { }

    /// <summary>A bracket such as [h], which counts on past a day.</summary>
    public bool Elapsed { get; private set; }

    public bool Has(char letter) => _letters.Contains(letter);

    /// <summary>Looks at the first section only: the one for positive numbers, which dates are.</summary>
    public static FormatLetters In(string code)
    {
        var found = new FormatLetters();
        var rest = found
            .Bare(code)
            .Replace("general", "", StringComparison.Ordinal)
            .Replace("am/pm", "h", StringComparison.Ordinal)
            .Replace("a/p", "h", StringComparison.Ordinal)
            .Replace("e+", "", StringComparison.Ordinal)
            .Replace("e-", "", StringComparison.Ordinal);
        foreach (var letter in rest.Where(c => "ymdhsge%".Contains(c, StringComparison.Ordinal)))
            found._letters.Add(letter);
        return found;
    }

    private string Bare(string code)
    {
        var bare = new StringBuilder();
        for (var at = 0; at < code.Length && code[at] != ';'; at++)
        {
            switch (code[at])
            {
                case '"':
                    at = EndOf(code, at + 1, '"');
                    break;
                case '[':
                    var end = EndOf(code, at + 1, ']');
                    Elapsed |= IsElapsed(code[(at + 1)..Math.Min(end, code.Length)]);
                    at = end;
                    break;
                case '\\' or '_' or '*':
                    at++;
                    break;
                default:
                    bare.Append(char.ToLowerInvariant(code[at]));
                    break;
            }
        }
        return bare.ToString();
    }

    private static int EndOf(string code, int from, char closing) => code.IndexOf(closing, from) is >= 0 and var end ? end : code.Length;

    private static bool IsElapsed(string bracket) =>
        bracket.Length > 0
        && (
            bracket.AsSpan().IndexOfAnyExcept('h', 'H') < 0
            || bracket.AsSpan().IndexOfAnyExcept('m', 'M') < 0
            || bracket.AsSpan().IndexOfAnyExcept('s', 'S') < 0
        );
}
