using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Dates;

public sealed class ExaminedBeforeFirstService : LolerRule
{
    /// <summary>SI 1998/2307 reg 9(1)(b); the text read in its Northern Ireland twin, SR 1999/304 reg 9.</summary>
    private const int DeclarationMonths = 12;

    public ExaminedBeforeFirstService() : base(new RuleInfo("DAT016", Severity.Warning, "It entered service with a recent declaration or an examination",
        "New kit may enter service unexamined only with a declaration of conformity made not more than 12 months before.",
        "Record the declaration's date, or the evidence of the examination before first use.", "SI 1998/2307 reg 9(1) (read in SR 1999/304 reg 9)")) =>
        Forbid(e => e.Item is { } item && EnteredUnexamined(item, e), "",
            e => $"first used on {e.Item!.Item.FirstUsed} more than {DeclarationMonths} months after the declaration of conformity, with no examination before that recorded");

    private static bool EnteredUnexamined(ItemCase item, ExaminationCase e) =>
        item.Item is { Declaration.On: { } declared, FirstUsed: { } first, TransferEvidence: null }
        && first.Earliest > declared.PlusMonths(DeclarationMonths)
        && !(item.LastExamined?.Earliest <= first.Latest)
        && e.Examination.Basis is not (Basis.FirstUse or Basis.Installation);
}
