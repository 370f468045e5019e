namespace ExamDocs.Templates.DueLabel;

/// <summary>How much larger than the plain words of a face the item and the day are.</summary>
/// <param name="Id">Most of the item; one too long for a line is smaller, down to the plain words.</param>
/// <param name="Day">Most of the day.</param>
/// <param name="LeastDay">Least of the day.</param>
internal sealed record Emphasis(double Id, double Day, double LeastDay)
{
    /// <summary>The weakest are for labels with room for hardly more than the item and the day.</summary>
    public static IReadOnlyList<Emphasis> StrongestFirst { get; } =
    [new(1.4, 2, 1.6), new(1.2, 1.7, 1.5), new(1, 1.5, 1.3), new(1, 1, 1) { JoinsDay = true }];

    /// <summary>The day stands on the line of the words that say what it means.</summary>
    public bool JoinsDay { get; init; }
}
