using System.Globalization;
using System.Text;

namespace ExamDocs.Core.Findings;

/// <summary>A translated message: its words, and which value stands in which gap.</summary>
/// <param name="Between">The words before, between and after the values: one more than there are values.</param>
/// <param name="Order">For each gap the number of its value.</param>
public sealed record MessageTemplate(List<string> Between, IReadOnlyList<int> Order)
{
    /// <summary>Reads a text with {0}, {1} in the places of values; braces of the text itself are doubled.</summary>
    /// <returns>Null where a brace has no partner, or holds no number.</returns>
    public static MessageTemplate? Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var (between, order, words) = (new List<string>(), new List<int>(), new StringBuilder());
        for (var at = 0; at < text.Length; at++)
        {
            var sign = text[at];
            if (sign is not ('{' or '}'))
            {
                words.Append(sign);
            }
            else if (at + 1 < text.Length && text[at + 1] == sign)
            {
                words.Append(sign);
                at++;
            }
            else
            {
                var end = sign is '{' ? text.IndexOf('}', at) : -1;
                if (end < 0 || !int.TryParse(text.AsSpan(at + 1, end - at - 1), NumberStyles.None, CultureInfo.InvariantCulture, out var n))
                    return null;
                between.Add(words.ToString());
                words.Clear();
                order.Add(n);
                at = end;
            }
        }
        return new([.. between, words.ToString()], order);
    }
}
