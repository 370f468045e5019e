namespace ExamDocs.Templates.DueLabel;

/// <summary>What a line of a face says, in the order in which they are printed.</summary>
internal enum DuePart
{
    Id,
    Serial,
    Description,
    Caption,
    Day,
    Also,
    Whom,
    Number,
    Origin,
    Caution,
}

/// <summary>One line of a face, which may be broken.</summary>
/// <param name="Part">What it says.</param>
/// <param name="Text">The words.</param>
/// <param name="SizeMm">Size of type, millimetres.</param>
internal sealed record DueLine(DuePart Part, string Text, double SizeMm)
{
    /// <summary>Smallest size of type, millimetres, inclusive: its capitals are <see cref="DueFace.LeastCapitalsMm"/> high.</summary>
    public const double SmallestMm = 1.7;

    /// <summary>Of a line, as a part of the size of type.</summary>
    public const double LineHeight = 1.2;

    public bool IsBold => Part is not (DuePart.Description or DuePart.Origin or DuePart.Caution);
}
