using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace ExamDocs.Intake.Workbook;

/// <summary>
/// By this the program knows again what it wrote into a workbook: a short sum of the words stands with them, so that a
/// remark typed among them is noticed. It is not a defence against somebody who works out the sum again.
/// </summary>
internal static partial class Seal
{
    /// <summary>Who writes notes, as a workbook names it.</summary>
    public const string Author = "ExamDocs";

    /// <summary>So many times its own length is looked through for a beginning; then all of a note counts as somebody's remark.</summary>
    private const int MostEffort = 8;

    /// <summary>The sum of a text, in which blanks and line breaks make no difference: programs store them differently.</summary>
    public static string Of(string text)
    {
        var words = string.Concat(text.Where(c => !char.IsWhiteSpace(c)));
        return Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes("examdocs:" + words)).AsSpan(0, 4));
    }

    /// <summary>The line that closes a note.</summary>
    public static string Line(string text) => $"({Author} {Of(text)})";

    /// <summary>What a note says besides what the program closed with its line; empty where that is all.</summary>
    public static string Besides(string note)
    {
        var (left, effort) = (new List<string>(), MostEffort * note.Length);
        foreach (var line in note.Split('\n'))
        {
            if (ClosingLine().Match(line) is { Success: true } end && FirstOf(left, end.Groups["sum"].Value, ref effort) is { } first)
                left.RemoveRange(first, left.Count - first);
            else
                left.Add(line.Trim());
        }
        return string.Join(' ', left.Where(l => l.Length > 0));
    }

    /// <summary>Where among the lines before it a closed note begins; null where its sum is that of none.</summary>
    private static int? FirstOf(List<string> lines, string sum, ref int effort)
    {
        for (var first = 0; first < lines.Count && effort > 0; first++)
        {
            if (lines[first].Length == 0 && first > 0)
                continue;
            var text = string.Concat(lines.Skip(first));
            effort -= text.Length + 1;
            if (string.Equals(Of(text), sum, StringComparison.Ordinal))
                return first;
        }
        return null;
    }

    [GeneratedRegex(@"\A\s*\(ExamDocs (?<sum>[0-9A-F]{8})\)\s*\z", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex ClosingLine();
}
