using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class LaterDangerHasTime : ExaminationRule
{
    public LaterDangerHasTime()
        : base(
            new RuleInfo(
                "PAR011",
                Severity.Error,
                "A defect that could become a danger says by when",
                "Without the time the employer cannot know how long the item may still be used: the item is withdrawn.",
                $"Type the date by which the defect could become a danger.",
                "SI 1998/2307 Schedule 1 para 8(c)(i)"
            )
        ) =>
        Each(e =>
            e.Examination.Defects.Select(
                    (d, i) =>
                        d is { Danger: Danger.Later, BecomesDangerOn: null }
                            ? new Fault(
                                $"/defects/{Index.Of(i)}/becomesDangerOn",
                                $"the time by which the defect could become a danger is missing"
                            )
                            : null
                )
                .OfType<Fault>()
        );
}
