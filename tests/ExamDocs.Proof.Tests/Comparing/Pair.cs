using System.Globalization;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Proof.Tests.SecondEvaluator;
using NodaTime;

namespace ExamDocs.Proof.Tests.Comparing;

/// <summary>Both answers on one item.</summary>
/// <param name="Second">The second evaluator's.</param>
/// <param name="Programme">The programme's.</param>
/// <param name="Lenient">The programme found an error that the second evaluator has no check for.</param>
internal sealed record Pair(Answer Second, DeterminedItem Programme, bool Lenient)
{
    private static readonly string[] FromBest = ["fit", "fit-until", "undetermined", "withdraw"];

    public string Codes => string.Join(' ', Programme.Reasons.Select(reason => reason.Code).Distinct().Order(StringComparer.Ordinal));

    public bool Agrees => Lenient ? IsNoBetter : Of(Second) == Of(Programme);

    public override string ToString() =>
        $"{Second.Id}{(Lenient ? " (lenient)" : "")}\n  second    {Of(Second)}\n  programme {Of(Programme)}\n  errors    "
        + string.Join("; ", Programme.Findings.Where(f => f.Severity == Core.Findings.Severity.Error).Select(f => $"{f.Code} {f.Path}"));

    private bool IsNoBetter =>
        Array.IndexOf(FromBest, Programme.Outcome.Word()) >= Array.IndexOf(FromBest, Second.Outcome)
        && (
            Second.Unsure
            || Second
                .Codes.Where(code => code[0] != 'D')
                .All(code => Programme.Reasons.Any(reason => reason.Code == code || (code == "U6" && reason.Code == "W9")))
        );

    private static string Of(Answer a) => $"{a.Outcome} until {Text(a.Until)} next {Text(a.Next)} because {a.CodesText}";

    private string Of(DeterminedItem item) =>
        $"{item.Outcome.Word()} until {Text(item.Until)} next {Text(item.NextExaminationBy)} because {Codes}";

    private static string Text(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "-";

    private static string Text(LocalDate? day) => day?.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture) ?? "-";
}
