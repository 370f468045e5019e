namespace ExamDocs.Proof.Tests.SecondEvaluator;

/// <summary>What the second evaluator says of one item of a record.</summary>
/// <param name="Id">The item's id.</param>
/// <param name="Outcome">withdraw, undetermined, fit-until or fit.</param>
/// <param name="Until">The last day of use, inclusive; null unless fit-until.</param>
/// <param name="Next">The day by which it is next to be examined; null where there is none.</param>
/// <param name="Codes">W1 to D3.</param>
/// <param name="Unsure">The written rules do not say which of two contradictory entries counts.</param>
/// <param name="PartOf">Positions of the items whose answers this one rests on, over any depth.</param>
/// <param name="Examination">Position of the examination that decides, or null.</param>
public sealed record Answer(
    string Id,
    string Outcome,
    DateOnly? Until,
    DateOnly? Next,
    IReadOnlySet<string> Codes,
    bool Unsure,
    IReadOnlyList<int> PartOf,
    int? Examination
)
{
    public string CodesText => string.Join(' ', Codes.Order(StringComparer.Ordinal));
}

/// <summary>An earlier withdrawal that a store remembers.</summary>
public sealed record PastHold(
    string Item,
    string? Document,
    DateOnly On,
    IReadOnlyList<string> Codes,
    bool Never,
    IReadOnlyList<string> Parts
);
