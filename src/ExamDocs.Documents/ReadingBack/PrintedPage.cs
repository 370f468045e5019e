using System.Numerics;
using System.Runtime.InteropServices;
using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>Letters as they stand on a page.</summary>
/// <param name="Text">One letter, or the letters that one sign stands for.</param>
/// <param name="IsMargin">It belongs to no tag: page number, running title.</param>
/// <param name="IsCut">Part of it lies outside of the page, or of what is shown of it.</param>
internal sealed record PrintedLetter(string Text, bool IsMargin, bool IsCut)
{
    /// <summary>Counts the stretches of text of a page: a new text always begins a new one.</summary>
    public int Run { get; init; }

    /// <summary>Counts all that is drawn on a page: what has a higher number lies above.</summary>
    public int Order { get; init; }

    public Ink Ink { get; init; }

    /// <summary>0 where it is there and not drawn, 1 where nothing behind it shows through.</summary>
    public float Opacity { get; init; } = 1;

    /// <summary>
    /// The middle of the letter, from its foot to half its size: foot left, foot right, top right, top left; points of the page.
    /// </summary>
    public Vector2[] Corners { get; init; } = [];

    /// <summary>The font's name without the mark of its subset.</summary>
    public string Font { get; init; } = "";

    /// <summary>What the font says that the sign stands for, whatever a tag around it says; empty where the font does not say.</summary>
    public string Drawn { get; init; } = "";

    /// <summary>False for a sign that draws nothing. Asked of blanks alone; true for all else.</summary>
    public bool HasShape { get; init; } = true;

    /// <summary>A tag around it says what it stands for.</summary>
    public bool IsSaid { get; init; }

    /// <summary>In thousandths of its size.</summary>
    public float Width { get; init; }

    public bool IsBlank => string.IsNullOrWhiteSpace(Text);
}

/// <summary>A colour that something is drawn in, each part from 0 to 1.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Ink(float Red, float Green, float Blue)
{
    /// <summary>A pattern or a picture: it has no one colour.</summary>
    public bool IsMixed { get; init; }

    public static Ink Mixed { get; } = new(0, 0, 0) { IsMixed = true };

    public static Ink White { get; } = new(1, 1, 1);

    /// <summary>Contrast ratio by WCAG 2.2, from 1 (the same) to 21; null where one of the two has no one colour.</summary>
    public double? ContrastWith(Ink other) =>
        IsMixed || other.IsMixed ? null : (Math.Max(Luminance, other.Luminance) + 0.05) / (Math.Min(Luminance, other.Luminance) + 0.05);

    /// <summary>As it looks over another, where that shows through.</summary>
    public Ink Over(Ink other, float opacity) =>
        opacity >= 1 || IsMixed || other.IsMixed
            ? this
            : new(
                (Red * opacity) + (other.Red * (1 - opacity)),
                (Green * opacity) + (other.Green * (1 - opacity)),
                (Blue * opacity) + (other.Blue * (1 - opacity))
            );

    private double Luminance => (0.2126 * Linear(Red)) + (0.7152 * Linear(Green)) + (0.0722 * Linear(Blue));

    private static double Linear(double channel) => channel <= 0.04045 ? channel / 12.92 : Math.Pow((channel + 0.055) / 1.055, 2.4);
}

/// <summary>Something painted that is not text: a filled or drawn path, or a picture.</summary>
/// <param name="Order">Counts all that is drawn on a page: what has a higher number lies above.</param>
/// <param name="Ink">What it is painted in.</param>
/// <param name="Rings">Closed lines; what they enclose is painted. Points of the page.</param>
/// <param name="Shown">What of the page is shown of it.</param>
internal sealed record PaintedShape(int Order, Ink Ink, IReadOnlyList<Vector2[]> Rings, PageArea Shown)
{
    public bool IsPicture => Picture is not null;

    /// <summary>The picture's object; null for a path.</summary>
    public PdfObject? Picture { get; init; }

    public bool IsStroke { get; init; }

    /// <summary>The least rectangle that holds all of it.</summary>
    public PageArea Area { get; } = Rings.SelectMany(r => r).Aggregate(PageArea.Nothing, (area, p) => area.With(p)).Within(Shown);

    /// <summary>Whether it paints this point of the page (ISO 32000-1, 8.5.3.3.2, the rule of winding numbers).</summary>
    public bool Paints(Vector2 p) => Area.Has(p) && Rings.Sum(r => Winding(r, p)) != 0;

    private static int Winding(Vector2[] ring, Vector2 p)
    {
        var winding = 0;
        for (var i = 0; i < ring.Length; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
            var side = ((b.X - a.X) * (p.Y - a.Y)) - ((p.X - a.X) * (b.Y - a.Y));
            if (a.Y <= p.Y && b.Y > p.Y && side > 0)
                winding++;
            else if (a.Y > p.Y && b.Y <= p.Y && side < 0)
                winding--;
        }
        return winding;
    }
}

/// <summary>What is drawn on one page, in the order in which it is drawn.</summary>
internal sealed record PrintedPage(IReadOnlyList<PrintedLetter> Letters, IReadOnlyList<PaintedShape> Shapes);
