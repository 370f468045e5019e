using ExamDocs.Templates;
using ExamDocs.Templates.DueLabel;

namespace ExamDocs.Documents.LabelSheets;

/// <summary>A circle in millimetres from the upper left corner.</summary>
/// <param name="XMm">Middle, from the left edge.</param>
/// <param name="YMm">Middle, from the upper edge.</param>
/// <param name="DiameterMm">Its diameter.</param>
public sealed record Circle(double XMm, double YMm, double DiameterMm);

/// <summary>The size in which a kind of label is printed, and where it leaves room for an eyelet.</summary>
/// <param name="Type">The kind of label.</param>
/// <param name="WidthMm">Width, millimetres.</param>
/// <param name="HeightMm">Height, millimetres.</param>
/// <param name="Free">Nothing of the label is printed in here; null where there is no such place.</param>
/// <param name="UsualStock">The stock taken where none is named.</param>
public sealed record LabelFormat(DocumentType Type, double WidthMm, double HeightMm, Circle? Free, string UsualStock)
{
    /// <summary>An issued label is printed no smaller than this: signs and the modules of its code must stay large enough.</summary>
    private const double SmallestScaleOfIssued = 0.95;

    /// <summary>Larger than this is taken for a slip of the pen.</summary>
    public const double LargestScale = 2;

    private const double ToleranceMm = 0.5;

    /// <summary>Of the quarantine label and the hold label.</summary>
    public static LabelFormat Quarantine { get; } = new(DocumentTypes.QuarantineLabel, 100, 150, new Circle(50, 10.1, 11), "a4-2");

    public static LabelFormat Due { get; } = new(DocumentTypes.DueLabel, 70, 37, null, "a4-24");

    /// <summary>The formats in which labels are issued, one of each kind.</summary>
    public static IReadOnlyList<LabelFormat> All { get; } = [Quarantine, Due];

    /// <summary>Other sizes in which an issued label can be printed.</summary>
    public static IReadOnlyList<LabelFormat> Faces { get; } =
    [.. DueFace.All.Select(f => new LabelFormat(DocumentTypes.DueLabel, f.WidthMm, f.HeightMm, null, Due.UsualStock) { Face = f })];

    /// <summary>Null where the label is printed as it was issued.</summary>
    public DueFace? Face { get; init; }

    /// <summary>The letters and the code of a face are as small as they may be already.</summary>
    public double SmallestScale => Face is null ? SmallestScaleOfIssued : 1;

    /// <summary>The format of this kind; null where it is not a kind of label.</summary>
    public static LabelFormat? Of(string? kind) => All.FirstOrDefault(f => string.Equals(f.Type.Kind, kind, StringComparison.Ordinal));

    /// <summary>
    /// The format with this shape, to half a millimetre of height, one that is printed in about this size where there is any; null
    /// where none has it.
    /// </summary>
    internal static LabelFormat? OfShape(double widthMm, double heightMm)
    {
        var ofShape = All.Concat(Faces).Where(f => Math.Abs(heightMm - (widthMm / f.WidthMm * f.HeightMm)) <= ToleranceMm).ToList();
        return ofShape.Find(f => f.Holds(widthMm / f.WidthMm)) ?? ofShape.FirstOrDefault();
    }

    internal bool Holds(double scale) => scale >= SmallestScale - 0.0001 && scale <= LargestScale;
}
