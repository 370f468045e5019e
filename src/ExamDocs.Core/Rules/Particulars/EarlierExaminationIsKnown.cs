using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class EarlierExaminationIsKnown : Rule<ItemCase>
{
    public EarlierExaminationIsKnown()
        : base(
            new RuleInfo(
                "PAR004",
                Severity.Warning,
                "The date of the last examination is recorded",
                "The report gives it, and without it nobody can say whether the item was overdue.",
                $"Type the date of the last thorough examination, or make the basis first-use or installation where there was none.",
                "SI 1998/2307 Schedule 1 para 4"
            )
        ) =>
        Each(i =>
            IsUnknown(i)
                ? [new Fault("/lastExamined", $"the date of the last examination is not known", Cause: UnknownDay.CauseOf(i.Deciding))]
                : []
        );

    private static bool IsUnknown(ItemCase item) =>
        item.LastExamined is null
        && item.Deciding.Count > 0
        && item.Deciding.All(e => e.Examination.Basis is not (Basis.FirstUse or Basis.Installation));
}
