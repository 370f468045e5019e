using System.Globalization;
using System.Numerics;
using ExamDocs.Documents.PdfSyntax;
using ExamDocs.Documents.ReadingBack;

namespace ExamDocs.Documents.Comparing;

/// <summary>Holds what is drawn on the pages of two files against each other, mark by mark: letters, lines, areas, pictures.</summary>
public static class SameDrawing
{
    /// <summary>Points. Rounding of the browser's own.</summary>
    private const float Tolerance = 0.5f;

    /// <param name="given">The file in question.</param>
    /// <param name="remade">The same document, printed a second time.</param>
    /// <returns>What is drawn otherwise, one sentence for each page; empty where nothing is.</returns>
    /// <exception cref="PdfSyntaxException">One of them is not a file that the browser writes.</exception>
    public static IReadOnlyList<string> Differences(byte[] given, byte[] remade)
    {
        var (theirs, ours) = (PrintedText.Pages(given), PrintedText.Pages(remade));
        return theirs.Count != ours.Count
            ? [string.Create(CultureInfo.InvariantCulture, $"it has {theirs.Count} pages, and should have {ours.Count}")]
            :
            [
                .. theirs
                    .Zip(ours)
                    .Select((pair, index) => (Found: OfPage(pair.First, pair.Second), index))
                    .Where(p => p.Found is not null)
                    .Select(p => string.Create(CultureInfo.InvariantCulture, $"page {p.index + 1}: {p.Found}")),
            ];
    }

    /// <summary>
    /// Whether words that stand beside each other in one row, with a gap between them, still do. Another browser or other fonts
    /// break lines elsewhere and move rows up and down; they never move a word into another row.
    /// </summary>
    /// <inheritdoc cref="Differences"/>
    public static bool KeepRows(byte[] given, byte[] remade)
    {
        var (theirs, ours) = (Placed(given), Placed(remade));
        // Joined letters may be counted otherwise: then the two cannot be compared.
        return theirs.Count != ours.Count
            || Enumerable
                .Range(1, Math.Max(0, ours.Count - 1))
                .All(i => !AreOfOneRow(ours[i - 1], ours[i]) || StandInOneRow(theirs[i - 1], theirs[i]));
    }

    private static List<(int Page, Vector2 Left, Vector2 Right)> Placed(byte[] pdf) =>
        [
            .. PrintedText
                .Pages(pdf)
                .SelectMany(
                    (page, index) => page.Letters.Where(l => !l.IsMargin && !l.IsBlank).Select(l => (index, l.Corners[0], l.Corners[1]))
                ),
        ];

    private static bool AreOfOneRow((int Page, Vector2 Left, Vector2 Right) one, (int Page, Vector2 Left, Vector2 Right) next) =>
        one.Page == next.Page && MathF.Abs(one.Left.Y - next.Left.Y) < 1 && next.Left.X - one.Right.X > Gap;

    private static bool StandInOneRow((int Page, Vector2 Left, Vector2 Right) one, (int Page, Vector2 Left, Vector2 Right) next) =>
        one.Page == next.Page && MathF.Abs(one.Left.Y - next.Left.Y) < Gap && next.Left.X > one.Left.X;

    /// <summary>Points. A blank between words is narrower, a row of print higher.</summary>
    private const float Gap = 8;

    private const int LettersShown = 12;

    private static string? OfPage(PrintedPage given, PrintedPage ours)
    {
        for (var i = 0; i < Math.Max(given.Letters.Count, ours.Letters.Count); i++)
        {
            if (i >= given.Letters.Count || i >= ours.Letters.Count || !Same(given.Letters[i], ours.Letters[i]))
                return $"\"{From(i < given.Letters.Count ? given : ours, i)}\" does not stand where it should, or not in that print";
        }
        return given.Shapes.Count == ours.Shapes.Count && given.Shapes.Zip(ours.Shapes).All(s => Same(s.First, s.Second))
            ? null
            : "lines, areas or pictures are drawn that do not belong there, or not as they should be";
    }

    /// <summary>The letters from one on, as many as tell which word it is in.</summary>
    private static string From(PrintedPage page, int letter) =>
        string.Concat(page.Letters.Skip(letter).Take(LettersShown).Select(l => l.Text)).Trim();

    private static bool Same(PrintedLetter one, PrintedLetter other) =>
        string.Equals(one.Text, other.Text, StringComparison.Ordinal)
        && string.Equals(one.Font, other.Font, StringComparison.Ordinal)
        && one.Order == other.Order
        && one.Ink == other.Ink
        && one.IsMargin == other.IsMargin
        && Near(one.Corners, other.Corners);

    private static bool Same(PaintedShape one, PaintedShape other) =>
        one.Order == other.Order
        && one.Ink == other.Ink
        && one.IsStroke == other.IsStroke
        && one.IsPicture == other.IsPicture
        && one.Rings.Count == other.Rings.Count
        && one.Rings.Zip(other.Rings).All(r => Near(r.First, r.Second));

    private static bool Near(Vector2[] one, Vector2[] other) =>
        one.Length == other.Length && one.Zip(other).All(p => Vector2.Distance(p.First, p.Second) <= Tolerance);
}
