using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class ExaminerConcludes : ExaminationRule
{
    public ExaminerConcludes()
        : base(
            new RuleInfo(
                "PAR018",
                Severity.Error,
                "The examiner is named and concludes",
                "The rules weigh what was recorded; whether the item would be safe is the competent person's own judgement.",
                $"Name the examiner, and type fit or withdraw as the conclusion.",
                "SI 1998/2307 Schedule 1 para 7(b)"
            )
        )
    {
        Each(e =>
            e.Examination.Item is null
                ? [new Fault("/item", $"the examination names no item", Cause: e.Context.WithoutId is { } i ? new($"{i.Path}/id") : null)]
                : []
        );
        Require(e => e.Examination.Examiner, "/examiner", $"the examiner is not named");
        Forbid(e => e.Examination.Conclusion is null, "/conclusion", _ => $"the examiner's conclusion is missing");
        Forbid(e => e.Examination.Observations.Count == 0, "/observations", _ => $"no observation is recorded");
    }

    protected override bool Concerns(Cases.ExaminationCase subject) => base.Concerns(subject) || subject.Examination.Item is null;
}
