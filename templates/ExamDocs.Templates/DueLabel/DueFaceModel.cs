using ExamDocs.Templates.Shared;

namespace ExamDocs.Templates.DueLabel;

/// <summary>An issued next-examination label once more in another size: the words of it that have room there, under its number.</summary>
public sealed class DueFaceModel
{
    /// <param name="label">The label as issued.</param>
    /// <param name="face">The size.</param>
    public DueFaceModel(DueLabelModel label, DueFace face) => (Label, Face, Layout) = (label, face, DueFaceLayout.Fit(label, face));

    public DueLabelModel Label { get; }

    public DueFace Face { get; }

    /// <summary>Without a matrix where not even the first line has room; the number then stands there in words.</summary>
    public ItemCode Code => Layout.Code;

    /// <summary>What must stand on it and has no room; with anything here it is not to be printed.</summary>
    public IReadOnlyList<string> Misfits => Layout.Misfits;

    internal DueFaceLayout Layout { get; }
}
