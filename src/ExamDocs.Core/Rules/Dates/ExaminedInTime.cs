using ExamDocs.Core.Findings;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Rules.Dates;

public sealed class ExaminedInTime : ExaminationRule
{
    public ExaminedInTime()
        : base(
            new RuleInfo(
                "DAT011",
                Severity.Warning,
                "It was examined before the last interval ran out",
                "Kit used after its due date was used unexamined; the owner should know.",
                $"Nothing to type. Tell the owner, and find out what happened to the item since it was due.",
                "SI 1998/2307 reg 9(3)(a)"
            )
        ) => Forbid(e => e.On > e.DueBy, "", e => $"overdue when examined: it was due by {e.DueBy!.Value}");
}
