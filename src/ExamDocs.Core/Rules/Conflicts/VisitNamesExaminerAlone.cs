using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class VisitNamesExaminerAlone : Rule<VisitCase>
{
    public VisitNamesExaminerAlone()
        : base(
            new RuleInfo(
                "CON041",
                Severity.Error,
                "Examiner and basis are stated for the whole visit or for each examination, not both",
                "Where the two differ, nobody can tell which examinations the visit's value was meant for.",
                $"Leave it out at the visit and state it for each item, or leave it out here.",
                "common practice, no source"
            )
        ) =>
        Each(v =>
            SharedValues
                .Conflicts(v.Context.Recorded)
                .Select(c => new Fault(
                    $"/examinations/{c.Index}/{c.Member}",
                    $"the visit states another value of {c.Member} for all its items"
                ))
        );

    /// <summary>Empty, because the faults have whole pointers to the examinations: so each fault holds the item examined.</summary>
    protected override string PathOf(VisitCase subject) => "";
}
