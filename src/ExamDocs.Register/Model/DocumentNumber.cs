using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;

namespace ExamDocs.Register.Model;

/// <summary>
/// A document number such as R-2026-000123: the letter of the kind, the year of issue and the place in the gapless
/// sequence of that letter and year.
/// </summary>
public readonly partial record struct DocumentNumber
{
    /// <param name="letter">A to Z.</param>
    /// <param name="year">Year of issue, 1900 to 9999 inclusive.</param>
    /// <param name="sequence">From 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is outside its range.</exception>
    public DocumentNumber(char letter, int year, int sequence)
    {
        if (letter is < 'A' or > 'Z')
            throw new ArgumentOutOfRangeException(nameof(letter), letter, "A letter from A to Z is needed.");
        ArgumentOutOfRangeException.ThrowIfLessThan(year, 1900);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(year, 9999);
        ArgumentOutOfRangeException.ThrowIfLessThan(sequence, 1);
        (Letter, Year, Sequence) = (letter, year, sequence);
    }

    public char Letter { get; }

    public int Year { get; }

    public int Sequence { get; }

    /// <summary>Reads a number exactly as <see cref="ToString"/> writes it; nothing looser.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out DocumentNumber number)
    {
        number = default;
        var parts = text?.Split('-') ?? [];
        if (
            parts.Length != 3
            || parts[0].Length != 1
            || parts[0][0] is < 'A' or > 'Z'
            || !TryDigits(parts[1], out var year)
            || year is < 1900 or > 9999
            || !TryDigits(parts[2], out var sequence)
            || sequence < 1
        )
        {
            return false;
        }
        number = new(parts[0][0], year, sequence);
        return string.Equals(number.ToString(), text, StringComparison.Ordinal);
    }

    /// <summary>The numbers that stand in a text, for example the name of a file; each once.</summary>
    public static IReadOnlyList<string> In(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return [.. Anywhere().Matches(text).Select(m => m.Value).Where(n => TryParse(n, out _)).Distinct(StringComparer.Ordinal)];
    }

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Letter}-{Year:0000}-{Sequence:000000}");

    private static bool TryDigits(string text, out int value) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out value);

    [GeneratedRegex("[A-Z]-[0-9]{4}-[0-9]{6,9}", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Anywhere();
}
