using System.Numerics;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>
/// Finds letters that are in the file and cannot be read on the paper: something painted later lies over them, other text
/// stands in the same place, they have the colour of what is behind them, or they are too small.
/// </summary>
internal static class ObscuredLetters
{
    /// <summary>
    /// Contrast below which a letter counts as unseen. Far below what is asked of text that reads well (WCAG 2.2, 1.4.3: 4.5). No source:
    /// the least that our own pages have is 2.
    /// </summary>
    private const double LeastContrast = 1.5;

    /// <summary>Points, half the height of a letter. No source: the smallest print of ours has twice as much.</summary>
    private const float LeastHalfHeight = 1;

    /// <summary>Of <see cref="Points"/>: one may be touched by the line of a plot.</summary>
    private const int MostTouched = 1;

    /// <summary>Points: the side of the squares that letters are sorted into, so that each is compared with its neighbours alone.</summary>
    private const float Cell = 12;

    /// <summary>An accent has no width; a letter has more, points.</summary>
    private const float LeastWidth = 0.1f;

    /// <summary>So many of <see cref="Points"/> within another letter's place are too many: a fifth.</summary>
    private const int PartOfPoints = 5;

    /// <summary>Where a letter is looked at, as parts of its width and of half its height.</summary>
    private static readonly Vector2[] Points =
    [
        .. from u in (float[])[0.05f, 0.27f, 0.5f, 0.73f, 0.95f] from v in (float[])[0.06f, 0.35f, 0.65f, 0.94f] select new Vector2(u, v),
    ];

    /// <summary>Each letter that cannot be read, and why in a few words.</summary>
    public static IEnumerable<(PrintedLetter Letter, string Why)> On(PrintedPage page)
    {
        var over = Overlapping(page.Letters);
        foreach (var letter in page.Letters.Where(HasInk))
        {
            if (IsCovered(page, letter))
                yield return (letter, "is covered");
            else if (over.Contains(letter))
                yield return (letter, "lies over or under other text");
            else if (Contrast(page, letter) < LeastContrast)
                yield return (letter, "has the colour of what is behind it");
            else if (Vector2.Distance(letter.Corners[0], letter.Corners[3]) < LeastHalfHeight)
                yield return (letter, "is too small to be read");
        }
    }

    private static bool IsCovered(PrintedPage page, PrintedLetter letter)
    {
        var area = Area(letter);
        Vector2[]? points = null;
        foreach (var shape in page.Shapes)
        {
            if (shape.Order > letter.Order && shape.Area.Meets(area) && (points ??= PointsOf(letter)).Count(shape.Paints) > MostTouched)
                return true;
        }
        return false;
    }

    private static bool HasInk(PrintedLetter letter) => !letter.IsBlank && letter.Corners.Length == 4;

    private static Vector2[] PointsOf(PrintedLetter letter) =>
        [
            .. Points.Select(p =>
                Vector2.Lerp(
                    Vector2.Lerp(letter.Corners[0], letter.Corners[1], p.X),
                    Vector2.Lerp(letter.Corners[3], letter.Corners[2], p.X),
                    p.Y
                )
            ),
        ];

    private static PageArea Area(PrintedLetter letter)
    {
        var area = PageArea.Nothing;
        foreach (var corner in letter.Corners)
            area = area.With(corner);
        return area;
    }

    private static double Contrast(PrintedPage page, PrintedLetter letter)
    {
        var middle = 0.25f * (letter.Corners[0] + letter.Corners[1] + letter.Corners[2] + letter.Corners[3]);
        var behind = page.Shapes.LastOrDefault(s => s.Order < letter.Order && !s.IsStroke && s.Paints(middle));
        var paper = behind?.Ink ?? Ink.White;
        return letter.Ink.Over(paper, letter.Opacity).ContrastWith(paper) ?? (letter.Opacity > 0 ? double.MaxValue : 1);
    }

    /// <summary>Letters of different stretches of text that share a place. An accent has no width and shares that of its letter.</summary>
    private static HashSet<PrintedLetter> Overlapping(IReadOnlyList<PrintedLetter> letters)
    {
        var found = new HashSet<PrintedLetter>(ReferenceEqualityComparer.Instance);
        var cells = new Dictionary<(int, int), List<PrintedLetter>>();
        foreach (var letter in letters.Where(l => HasInk(l) && Vector2.Distance(l.Corners[0], l.Corners[1]) > LeastWidth))
        {
            var area = Area(letter);
            for (var x = (int)MathF.Floor(area.Left / Cell); x <= (int)MathF.Floor(area.Right / Cell); x++)
            {
                for (var y = (int)MathF.Floor(area.Bottom / Cell); y <= (int)MathF.Floor(area.Top / Cell); y++)
                    Meet(cells, (x, y), letter, found);
            }
        }
        return found;
    }

    private static void Meet(
        Dictionary<(int, int), List<PrintedLetter>> cells,
        (int, int) cell,
        PrintedLetter letter,
        HashSet<PrintedLetter> found
    )
    {
        if (!cells.TryGetValue(cell, out var there))
            cells[cell] = there = [];
        foreach (var other in there.Where(o => o.Run != letter.Run && (Lies(o, letter) || Lies(letter, o))))
        {
            found.Add(letter);
            found.Add(other);
        }
        if (there is not [.., var last] || !ReferenceEquals(last, letter))
            there.Add(letter);
    }

    /// <summary>Whether a good part of a letter lies within another's place.</summary>
    private static bool Lies(PrintedLetter letter, PrintedLetter within) =>
        !(IsUpright(letter) && IsUpright(within) && !Area(letter).Meets(Area(within)))
        && PointsOf(letter).Count(p => IsWithin(p, within.Corners)) >= Points.Length / PartOfPoints;

    /// <summary>Its place is a rectangle along the edges of the page, so that it lies within its area and fills it.</summary>
    private static bool IsUpright(PrintedLetter letter) =>
        letter.Corners is [var a, var b, _, var d] && ((a.Y == b.Y && a.X == d.X) || (a.X == b.X && a.Y == d.Y));

    private static bool IsWithin(Vector2 p, Vector2[] corners)
    {
        var (along, up) = (corners[1] - corners[0], corners[3] - corners[0]);
        var from = p - corners[0];
        var (u, v) = (Vector2.Dot(from, along) / along.LengthSquared(), Vector2.Dot(from, up) / up.LengthSquared());
        return u is >= 0 and <= 1 && v is >= 0 and <= 1;
    }
}
