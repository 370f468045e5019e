using System.Globalization;
using ExamDocs.Intake.Vocabulary;

namespace ExamDocs.Intake.OwnList.Words;

/// <summary>Dates with the month as a word, in English, German or French, in full or cut short.</summary>
internal static class NamedMonthDate
{
    /// <summary>As words of a list are compared, without accents.</summary>
    private static readonly Dictionary<string, int> Months = MonthNames
        .All.SelectMany((names, n) => names.Select(PlainWords.Of).Distinct(StringComparer.Ordinal).Select(name => (name, Month: n + 1)))
        .ToDictionary(m => m.name, m => m.Month, StringComparer.Ordinal);

    /// <summary>The day, where one is given, the month, and the digits of the year; null where the text is no such date.</summary>
    public static (int? Day, int Month, string Year)? WithNumbers(string text)
    {
        var words = PlainWords
            .Split(SplitAtDigits(text))
            .Where(w => w is not ("of" or "de" or "st" or "nd" or "rd" or "th" or "er" or "den"))
            .ToList();
        if (words.Count is < 2 or > 3 || words.FindIndex(w => Months.ContainsKey(w)) is not (>= 0 and var at))
            return null;
        var month = Months[words[at]];
        words.RemoveAt(at);
        if (words.Exists(w => !w.All(char.IsAsciiDigit)) || words[^1].Length is not (2 or 4))
            return null;
        return words.Count == 1 ? (null, month, words[0])
            : words[0].Length <= 2 ? (int.Parse(words[0], NumberStyles.None, CultureInfo.InvariantCulture), month, words[1])
            : null;
    }

    /// <summary>1st and 1er, Mar24.</summary>
    private static string SplitAtDigits(string text) =>
        string.Concat(
            text.Select(
                (c, n) =>
                    n > 0 && char.IsLetter(c) != char.IsLetter(text[n - 1]) && char.IsAsciiDigit(c) != char.IsAsciiDigit(text[n - 1])
                        ? $" {c}"
                        : $"{c}"
            )
        );
}
