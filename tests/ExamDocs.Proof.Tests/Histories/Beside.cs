using System.Globalization;

namespace ExamDocs.Proof.Tests.Histories;

/// <summary>What both say of one item of a history.</summary>
/// <param name="Run">The run's place.</param>
/// <param name="Record">The record's place in the run.</param>
/// <param name="Second">The second evaluator's word.</param>
/// <param name="Programme">The programme's.</param>
/// <param name="RestsOnUnsure">A part of it may be one that only the programme knows an error of.</param>
internal sealed record Beside(int Run, int Record, Said Second, Said Programme, bool RestsOnUnsure)
{
    private static readonly string[] FromBest = ["fit", "fit-until", "undetermined", "withdraw"];

    /// <summary>One of them knows of something that the other has no check for: then the programme may be stricter.</summary>
    public bool IsLenient => Second.Unsure || Programme.Unsure || RestsOnUnsure;

    public bool Agrees =>
        IsLenient
            ? Rank(Programme) >= Rank(Second)
            : Second.Outcome == Programme.Outcome
                && Second.Until == Programme.Until
                && Second.Next == Programme.Next
                && Found(Second) == Found(Programme);

    /// <summary>The programme says better of it than the second evaluator, or gives it longer.</summary>
    public bool IsKinder =>
        Rank(Programme) < Rank(Second)
        || (
            Rank(Programme) == Rank(Second)
            && Programme.IsForUse
            && (IsLonger(Programme.Until, Second.Until) || IsLonger(Programme.Next, Second.Next))
        );

    /// <summary>They give one reason in other codes.</summary>
    public bool IsInOtherCodes => !IsLenient && Second.Deciding != Programme.Deciding;

    /// <summary>Disagreements alike are one kind.</summary>
    public string Kind => $"{Second.Outcome} {Second.Deciding} | {Programme.Outcome} {Programme.Deciding}{(IsLenient ? " (lenient)" : "")}";

    public override string ToString() =>
        $"run {Run + 1} record {Record + 1} {Second.Item}\n  second    {Text(Second)}\n  programme {Text(Programme)} {Programme.Words}";

    /// <summary>Both on every item of every record.</summary>
    public static IEnumerable<Beside> Of(IReadOnlyList<Run> history, Func<IHistoryRunner> programme)
    {
        using Recalled second = new();
        using var first = programme();
        List<Beside> pairs = [];
        var isUnsure = false;
        for (var run = 0; run < history.Count; run++)
        {
            var (ours, theirs) = (second.Run(history[run]), first.Run(history[run]));
            isUnsure |= theirs.Concat(ours).SelectMany(record => record).Any(said => said.Unsure);
            pairs.AddRange(
                ours.SelectMany(
                    (record, at) =>
                        record.Zip(theirs[at], (a, b) => new Beside(run, at, a, b, isUnsure && (b.Asked || b.Codes.Contains("U6"))))
                )
            );
        }

        return pairs;
    }

    private static string Found(Said said) => string.Join(' ', said.Deciding.Split(' ').Where(code => code is not ("W10" or "W11")));

    private static bool IsLonger(DateOnly? one, DateOnly? other) => other is not null && (one is null || one > other);

    private static int Rank(Said said) => Array.IndexOf(FromBest, said.Outcome);

    private static string Text(Said said) =>
        $"{said.Outcome} until {Text(said.Until)} next {Text(said.Next)} because "
        + $"{string.Join(' ', said.Codes.Order(StringComparer.Ordinal))}{(said.Asked ? " (asked)" : "")}";

    private static string Text(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "-";
}
