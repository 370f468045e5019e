using System.Numerics;
using System.Runtime.InteropServices;

namespace ExamDocs.Documents.ReadingBack;

/// <summary>A rectangle of the page, points.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct PageArea(float Left, float Bottom, float Right, float Top)
{
    /// <summary>Nothing yet: whatever is added makes it.</summary>
    public static PageArea Nothing { get; } = new(float.MaxValue, float.MaxValue, float.MinValue, float.MinValue);

    public PageArea With(Vector2 p) => new(Math.Min(Left, p.X), Math.Min(Bottom, p.Y), Math.Max(Right, p.X), Math.Max(Top, p.Y));

    public PageArea Within(PageArea other) =>
        new(Math.Max(Left, other.Left), Math.Max(Bottom, other.Bottom), Math.Min(Right, other.Right), Math.Min(Top, other.Top));

    public bool Has(Vector2 p) => p.X >= Left && p.X <= Right && p.Y >= Bottom && p.Y <= Top;

    public bool Meets(PageArea other) => Left <= other.Right && other.Left <= Right && Bottom <= other.Top && other.Bottom <= Top;

    /// <param name="other">What must lie inside.</param>
    /// <param name="tolerance">By how many points it may stick out.</param>
    public bool Holds(PageArea other, float tolerance) =>
        other.Left >= Left - tolerance
        && other.Right <= Right + tolerance
        && other.Bottom >= Bottom - tolerance
        && other.Top <= Top + tolerance;
}

/// <summary>Where and with what is drawn: what q keeps and Q brings back (ISO 32000-1, 8.4.2).</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct DrawingState(Matrix3x2 Place, PageArea Clip, PrintedFont? Font, float Size)
{
    /// <summary>What areas and letters are painted in.</summary>
    public Ink Fill { get; init; }

    /// <summary>What lines are painted in.</summary>
    public Ink Stroke { get; init; }

    /// <summary>How much of what is behind a filled area or a letter it hides, 0 to 1.</summary>
    public float Opacity { get; init; }

    /// <summary>The same of the whole drawing that is being drawn.</summary>
    public float Group { get; init; }

    /// <summary>Letters are there and not drawn (ISO 32000-1, 9.3.6).</summary>
    public bool IsUnseen { get; init; }

    /// <summary>Width of a line, in units of its place.</summary>
    public float LineWidth { get; init; }
}
