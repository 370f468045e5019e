using ExamDocs.Register.Merging;

namespace ExamDocs.UseCases.Commands;

/// <summary>The result of taking in another register.</summary>
public sealed class MergeReport
{
    internal MergeReport(MergeResult result, IReadOnlyList<string> remarks) =>
        (Result, Remarks) = (result, [.. result.Remarks, .. remarks]);

    internal MergeResult Result { get; }

    /// <summary>One sentence for each document or visit that could not come in.</summary>
    public IReadOnlyList<string> Refused => Result.Refused;

    /// <summary>One sentence for each thing that somebody should look at.</summary>
    public IReadOnlyList<string> Remarks { get; }

    /// <summary>How much came in, in one sentence without a full stop.</summary>
    public string Summary =>
        FormattableString.Invariant($"{Result.Visits} visits and {Result.Documents} documents taken in, {Result.Known} known already, ")
        + FormattableString.Invariant($"{Result.Refused.Count} refused");
}
