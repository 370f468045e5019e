using System.Globalization;
using System.Numerics;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.ReadingBack;

namespace ExamDocs.Documents.Comparing;

/// <summary>Holds what is drawn on the pages of two files against each other, mark by mark: letters, lines, areas, pictures.</summary>
public static class SameDrawing
{
    /// <summary>Points. Rounding of the browser's own.</summary>
    private const float Tolerance = 0.5f;

    /// <param name="given">The file in question.</param>
    /// <param name="remade">The same document, printed once more.</param>
    /// <returns>What is drawn otherwise, one sentence for each page; empty where nothing is.</returns>
    /// <exception cref="PdfSyntaxException">One of them is none that the browser writes.</exception>
    public static IReadOnlyList<string> Differences(byte[] given, byte[] remade)
    {
        var (theirs, ours) = (PrintedText.Pages(given), PrintedText.Pages(remade));
        return theirs.Count != ours.Count ? [string.Create(CultureInfo.InvariantCulture, $"it has {theirs.Count} pages, and should have {ours.Count}")]
            : [.. theirs.Zip(ours).Select((pair, index) => (Found: OfPage(pair.First, pair.Second), index)).Where(p => p.Found is not null)
                .Select(p => string.Create(CultureInfo.InvariantCulture, $"page {p.index + 1}: {p.Found}"))];
    }

    private static string? OfPage(PrintedPage given, PrintedPage ours)
    {
        for (var i = 0; i < Math.Max(given.Letters.Count, ours.Letters.Count); i++)
        {
            if (i >= given.Letters.Count || i >= ours.Letters.Count || !Same(given.Letters[i], ours.Letters[i]))
                return $"\"{string.Concat((i < given.Letters.Count ? given : ours).Letters.Skip(i).Take(12).Select(l => l.Text)).Trim()}\" does not stand where it should, or not in that print";
        }
        return given.Shapes.Count == ours.Shapes.Count && given.Shapes.Zip(ours.Shapes).All(s => Same(s.First, s.Second)) ? null : "lines, areas or pictures are drawn that do not belong there, or not as they should be";
    }

    private static bool Same(PrintedLetter one, PrintedLetter other) => string.Equals(one.Text, other.Text, StringComparison.Ordinal) && string.Equals(one.Font, other.Font, StringComparison.Ordinal)
        && one.Order == other.Order && one.Ink == other.Ink && one.IsMargin == other.IsMargin && Near(one.Corners, other.Corners);

    private static bool Same(PaintedShape one, PaintedShape other) => one.Order == other.Order && one.Ink == other.Ink && one.IsStroke == other.IsStroke && one.IsPicture == other.IsPicture
        && one.Rings.Count == other.Rings.Count && one.Rings.Zip(other.Rings).All(r => Near(r.First, r.Second));

    private static bool Near(Vector2[] one, Vector2[] other) => one.Length == other.Length && one.Zip(other).All(p => Vector2.Distance(p.First, p.Second) <= Tolerance);
}
