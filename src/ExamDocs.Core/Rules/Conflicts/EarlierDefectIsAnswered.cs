using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class EarlierDefectIsAnswered : Rule<ItemCase>
{
    public EarlierDefectIsAnswered()
        : base(
            new RuleInfo(
                EarlierDefects.Unanswered,
                Severity.Warning,
                "A defect that could become a danger is found again, or its remedy is recorded",
                "Defects do not heal: one that was dated at an earlier examination and is gone without a remedy was "
                    + "overlooked then or now.",
                $"Record the remedy or the renewal; or record the defect again.",
                "SI 1998/2307 reg 10(3)(b)"
            )
        ) =>
        Each(i =>
            i.Deciding.Count == 0
                ? []
                : EarlierDefects
                    .Of(i)
                    .Where(d => d is { IsStillThere: false, AnsweredBy: null })
                    .Select(d => new Fault("", $"{d.Words}: not recorded again, and no remedy is recorded"))
        );
}
