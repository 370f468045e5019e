using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class ExaminerDoesNotOwnTheKit : ExaminationRule
{
    public ExaminerDoesNotOwnTheKit()
        : base(
            new RuleInfo(
                "CON017",
                Severity.Warning,
                "The examiner does not own the kit",
                "An examiner should be independent enough to decide against the owner's interest; that is hard against one's own.",
                $"Have another competent person examine it, or be ready to show how you stayed impartial.",
                "HSE INDG422 (from memory)"
            )
        ) =>
        Forbid(
            e => Owns(e),
            "/examiner",
            e => $"the examiner {e.Context.PersonWithId(e.Examination.Examiner)!.Name} is also the employer or owner of the kit"
        );

    private static bool Owns(ExaminationCase e) =>
        e.Context.PersonWithId(e.Examination.Examiner)?.Name is { } name
        && (Same(name, e.Context.Record.Visit.Employer?.Name) || Same(name, e.Context.Record.Visit.HiredFrom?.Name));

    private static bool Same(string one, string? other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);
}
