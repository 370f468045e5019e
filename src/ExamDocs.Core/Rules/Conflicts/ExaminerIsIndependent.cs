using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using NodaTime;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class ExaminerIsIndependent : ExaminationRule
{
    public ExaminerIsIndependent()
        : base(
            new RuleInfo(
                "CON017",
                Severity.Warning,
                "The examiner neither owns the kit nor did the work on it",
                "An examiner should be independent enough to decide against the owner's interest and to find fault with the work; both are "
                    + "hard where they are one's own.",
                $"Have another competent person examine it, or be ready to show how you stayed impartial.",
                "HSE INDG422 (as quoted elsewhere)"
            )
        )
    {
        Forbid(
            e => Owns(e),
            "/examiner",
            e => $"the examiner {e.Context.PersonWithId(e.Examination.Examiner)!.Name} is also the employer or owner of the kit"
        );
        Each(e =>
            Deeds(e)
                .Take(1)
                .Select(deed => new Fault(
                    "/examiner",
                    deed,
                    $"This is usual in a small firm and no fault by itself. Where you can, have another competent person examine it; else be ready to show how the work was checked."
                ))
        );
    }

    private static bool Owns(ExaminationCase e) =>
        e.Context.PersonWithId(e.Examination.Examiner)?.Name is { } name
        && (Same(name, e.Context.Record.Visit.Employer?.Name) || Same(name, e.Context.Record.Visit.HiredFrom?.Name));

    /// <summary>What the examiner did or supervised on the item since its last examination: this one is the first to judge it.</summary>
    private static IEnumerable<Message> Deeds(ExaminationCase e)
    {
        if (e.Examination.Examiner is not { } examiner || e.Item is not { ItemId: not null } item)
            return [];
        var renewals =
            from renewal in item.Renewals.Select(r => r.Row)
            where (Same(renewal.DoneBy, examiner) || Same(renewal.SupervisedBy, examiner)) && IsJudgedHere(renewal.DoneOn, e)
            select Same(renewal.DoneBy, examiner)
                ? (Message)$"the examiner {Name(e)} also made the renewal of {renewal.DoneOn!.Value} that is judged here"
                : $"the examiner {Name(e)} also supervised the renewal of {renewal.DoneOn!.Value} that is judged here";
        var remedies =
            from remedy in item.Context.Remedies.Where(r => Same(r.ItemId, item.ItemId)).Select(r => r.Row)
            where (Same(remedy.DoneBy, examiner) || Same(remedy.DoneBy, Name(e))) && IsJudgedHere(remedy.DoneOn, e)
            select (Message)$"the examiner {Name(e)} also did the repair of {remedy.DoneOn!.Value} that is judged here";
        return renewals.Concat(remedies);
    }

    /// <summary>True where it was done by the day examined, and not before the last examination.</summary>
    private static bool IsJudgedHere(LocalDate? done, ExaminationCase e) =>
        done is not null && !(done > e.On) && !(done <= e.Item!.LastExamined?.Latest);

    private static string Name(ExaminationCase e) => e.Context.PersonWithId(e.Examination.Examiner)?.Name ?? e.Examination.Examiner!;

    private static bool Same(string? one, string? other) =>
        one is not null && string.Equals(one, other, StringComparison.OrdinalIgnoreCase);
}
