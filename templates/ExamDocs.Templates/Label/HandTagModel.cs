using ExamDocs.Templates.Shared;

namespace ExamDocs.Templates.Label;

/// <summary>
/// A tag of 100 x 150 mm with lines to fill in by hand, for kit that is found before anything of it is recorded. It is no issued
/// document and has no number.
/// </summary>
/// <param name="head">Whose number stands there to be rung; null to leave a line for it.</param>
public sealed class HandTagModel(Letterhead? head)
{
    /// <summary>Null where it is filled in by hand too.</summary>
    public WhomToRing? Whom { get; } = head?.Telephone is { } number ? new WhomToRing(head.Name, number) : null;

    public ReadingDistance Reading { get; } = ReadingDistance.Default;

    internal double SignalWidthMm => 84 - (double)Reading.SignMm;
}
