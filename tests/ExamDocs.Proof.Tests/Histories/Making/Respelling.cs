using System.Text;
using ExamDocs.Proof.Tests.Generating;

namespace ExamDocs.Proof.Tests.Histories.Making;

/// <summary>The same marking or name as somebody else would type it.</summary>
internal static class Respelling
{
    /// <summary>Another spelling of the same id, serial or part number.</summary>
    public static string Marking(string text, Dice dice)
    {
        for (var step = dice.Between(1, 3); step > 0; step--)
        {
            text = dice.Below(6) switch
            {
                0 => text.ToLowerInvariant(),
                1 => Gaps(text, dice),
                2 => Zeros(text, dice),
                3 => text.ToUpperInvariant().Replace('0', dice.One('O', '0')),
                4 => text.ToUpperInvariant().Replace('1', dice.One('I', 'l', '1')),
                _ => dice.One(" ", "") + text + dice.One(" ", ""),
            };
        }

        return text;
    }

    /// <summary>Another spelling of the same firm.</summary>
    public static string Firm(string name, Dice dice) =>
        dice.Below(5) switch
        {
            0 => name.ToUpperInvariant(),
            1 => name.Replace(" Ltd", "", StringComparison.Ordinal),
            2 => name.Replace(" Ltd", "", StringComparison.Ordinal) + dice.One(" Limited", " Ltd.", ", Ltd"),
            3 => name.Replace(" ", "  ", StringComparison.Ordinal),
            _ => name.ToLowerInvariant(),
        };

    /// <summary>Another marking: a letter or digit more, fewer or other.</summary>
    public static string Slip(string text, Dice dice) =>
        dice.Chance(50) ? text + dice.One("7", "X", "4") : text[..^1] + (text[^1] == '8' ? "3" : "8");

    /// <summary>A hyphen or blank between digits parts two numbers, so only the others come and go.</summary>
    private static string Gaps(string text, Dice dice)
    {
        StringBuilder other = new();
        for (var at = 0; at < text.Length; at++)
        {
            var isGap = text[at] is ' ' or '-' or '/';
            var isBetween = isGap && at > 0 && at + 1 < text.Length && char.IsDigit(text[at - 1]) && char.IsDigit(text[at + 1]);
            other.Append(
                isBetween ? dice.One("-", "/", ".")
                : isGap ? dice.One("", " ", "-", "/")
                : text[at].ToString()
            );
        }

        return other.ToString();
    }

    private static string Zeros(string text, Dice dice)
    {
        for (var at = 0; at < text.Length; at++)
        {
            if (text[at] is > '0' and <= '9' && (at == 0 || !char.IsDigit(text[at - 1])))
            {
                return text[..at] + dice.One("0", "00") + text[at..];
            }
        }

        return text;
    }
}
