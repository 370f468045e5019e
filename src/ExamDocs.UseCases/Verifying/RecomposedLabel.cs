using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Issuing;

namespace ExamDocs.UseCases.Verifying;

/// <summary>What an issued label was made from, out of the data embedded in it.</summary>
internal static class RecomposedLabel
{
    /// <returns>The job; or why there is none, in words that follow the label's number.</returns>
    public static (DocumentJob? Job, string? Objection) Of(byte[] pdf, KnownRules rules)
    {
        var (contents, said) = DocumentContents.Of(pdf);
        if (contents?.Determined(rules) is not { } visit)
            return (null, $"cannot be made in another size: {said}");
        return RecomposedDocument.Jobs(contents, visit) switch
        {
            [] => (null, "cannot be made in another size: the record within, determined once more, calls for no such label"),
            // What the label says is what was decided then; another decision is another label.
            [var job, ..] when OutcomeQuestion.Ask(contents, job.Items).Answer is Answer.Holds => (job, null),
            _ => (null, "cannot be made in another size: the record within, determined once more, does not give the same outcome"),
        };
    }
}
