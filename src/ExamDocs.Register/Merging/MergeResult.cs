namespace ExamDocs.Register.Merging;

/// <summary>What came of taking another register in.</summary>
/// <param name="Visits">How many visits came in.</param>
/// <param name="Documents">How many documents came in, void numbers left out.</param>
/// <param name="Known">How many visits and documents were here already.</param>
/// <param name="Refused">One sentence for each document or visit that could not come in.</param>
/// <param name="Remarks">One sentence for each thing that somebody should look at.</param>
public sealed record MergeResult(int Visits, int Documents, int Known, IReadOnlyList<string> Refused, IReadOnlyList<string> Remarks)
{
    /// <summary>Numbers, in this register, of the visits that came in.</summary>
    public IReadOnlyList<int> NewVisits { get; init; } = [];
}
