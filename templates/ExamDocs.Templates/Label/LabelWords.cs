namespace ExamDocs.Templates.Label;

/// <summary>What a label says of its item.</summary>
/// <param name="Id">Identity of the item.</param>
/// <param name="Description">What it is.</param>
/// <param name="Reasons">Why it is not to be used, the weightiest first.</param>
/// <param name="KeptBy">Name of who keeps it; null where it has no room.</param>
internal sealed record LabelWords(string Id, string Description, IReadOnlyList<string> Reasons, string? KeptBy)
{
    /// <summary>What is marked on it.</summary>
    public required string Serial { get; init; }

    /// <summary>The day since when.</summary>
    public required string Since { get; init; }

    /// <summary>Who may release it.</summary>
    public required string Release { get; init; }

    /// <summary>Whom to ring, the number first.</summary>
    public required string Whom { get; init; }
}
