using System.Globalization;
using System.Text.RegularExpressions;

namespace ExamDocs.Templates;

/// <summary>
/// Who issues the documents, as their heads and feet show it. It colours nothing that tells an outcome: red, green and
/// amber mean the same on everybody's paper.
/// </summary>
public sealed partial record Letterhead
{
    /// <summary>
    /// Least contrast of the colour with white paper: what text needs by WCAG 2.2 success criterion 1.4.3, since the name
    /// is printed in it.
    /// </summary>
    public const double LeastContrast = 4.5;

    private const string Ink = "#14181d";

    public required string Name { get; init; }

    public string? Address { get; init; }

    public string? Contact { get; init; }

    /// <summary>The number to ring about an item, on its label; heads of papers show <see cref="Contact"/>.</summary>
    public string? Telephone { get; init; }

    public PhotoPrint? Logo { get; init; }

    /// <summary># and six hexadecimal digits, dark enough on white; ink where none was chosen.</summary>
    /// <exception cref="ArgumentException">It is not such a colour, and it would go into a style sheet.</exception>
    public string Colour
    {
        get;
        init =>
            field =
                Form().IsMatch(value) && ContrastWithWhite(value) >= LeastContrast
                    ? value
                    : throw new ArgumentException($"{value} is no colour that text can be printed in", nameof(value));
    } = Ink;

    public string? Footer { get; init; }

    /// <summary>Contrast ratio with white, 1 to 21, by WCAG 2.2, definitions of relative luminance and of contrast ratio.</summary>
    /// <param name="colour"># and six hexadecimal digits.</param>
    public static double ContrastWithWhite(string colour)
    {
        var channels = Enumerable
            .Range(0, 3)
            .Select(n => Linear(int.Parse(colour.AsSpan(1 + (2 * n), 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0))
            .ToList();
        return 1.05 / ((0.2126 * channels[0]) + (0.7152 * channels[1]) + (0.0722 * channels[2]) + 0.05);
    }

    private static double Linear(double channel) => channel <= 0.04045 ? channel / 12.92 : Math.Pow((channel + 0.055) / 1.055, 2.4);

    [GeneratedRegex(@"\A#[0-9a-fA-F]{6}\z", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Form();
}
