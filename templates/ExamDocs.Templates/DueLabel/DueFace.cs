namespace ExamDocs.Templates.DueLabel;

/// <summary>Another size in which an issued next-examination label can be printed: for small metal, or to fill a tag.</summary>
/// <param name="WidthMm">Width, millimetres.</param>
/// <param name="HeightMm">Height, millimetres.</param>
/// <param name="EdgeMm">Left free at every edge, millimetres.</param>
/// <param name="ModulesMm">
/// Sides that a module of the code may have, the largest first; each a whole number of dots at 203 to the inch.
/// </param>
public sealed record DueFace(double WidthMm, double HeightMm, double EdgeMm, params IReadOnlyList<decimal> ModulesMm)
{
    /// <summary>Whether it says where the label comes from and what comes before it; small ones leave that to the issued label.</summary>
    public bool HasSmallPrint { get; private init; }

    /// <summary>
    /// No letter has capitals lower than this, millimetres, on any face. Common practice, no source: ten dots of a printer of 203 dots
    /// to the inch are 1.25 mm.
    /// </summary>
    public const double LeastCapitalsMm = 1.2;

    private static readonly decimal[] Fine = [0.375m, 0.25m];

    private static readonly decimal[] Coarse = [0.5m, 0.375m];

    /// <summary>Round or along the bar of a connector.</summary>
    public static DueFace Wrap { get; } = new(25, 10, 0.4, Fine);

    public static DueFace Small { get; } = new(38, 21, 0.7, Fine);

    public static DueFace Narrow { get; } = new(45, 16, 0.7, Fine);

    /// <summary>All of a tag of 86 x 54 mm beside its eyelet.</summary>
    public static DueFace CardTag { get; } = new(72, 52, 1.5, Coarse) { HasSmallPrint = true };

    /// <summary>All of a tag of 120 x 60 mm beside its eyelet.</summary>
    public static DueFace LongTag { get; } = new(101, 58, 1.5, Coarse) { HasSmallPrint = true };

    public static IReadOnlyList<DueFace> All { get; } = [Wrap, Small, Narrow, CardTag, LongTag];

    internal double InnerWidthMm => WidthMm - (2 * EdgeMm);

    internal double InnerHeightMm => HeightMm - (2 * EdgeMm);
}
