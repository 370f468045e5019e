using System.Globalization;
using ExamDocs.Core.Calendar;
using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Dates;

public sealed class ExaminedBeforeFirstService : RegimeRule
{
    public ExaminedBeforeFirstService()
        : base(
            new RuleInfo(
                "DAT016",
                Severity.Warning,
                "It entered service with a recent declaration or an examination",
                "New kit may enter service unexamined only with a declaration of conformity made not more than 12 months before.",
                $"Record the declaration's date, or the evidence of the examination before first use.",
                "SI 1998/2307 reg 9(1) (read in SR 1999/304 reg 9)"
            )
        )
    {
        Forbid(
            e => e.Item is { } item && IsUnexamined(item, e) && TooOld(item.Item),
            "/firstUsed",
            e =>
                $"first used on {e.Item!.Item.FirstUsed}, more than {Months} months after the declaration of conformity; no "
                + $"examination before first use is recorded"
        );
        Forbid(
            e => e.Item is { } item && IsUnexamined(item, e) && item.Item.Declaration?.On > item.Item.FirstUsed?.Latest,
            "/firstUsed",
            e =>
                $"first used on {e.Item!.Item.FirstUsed}, before the declaration of conformity was made; no examination "
                + $"before first use is recorded"
        );
    }

    private static string Months => FirstService.DeclarationMonths.ToString(CultureInfo.InvariantCulture);

    /// <summary>The place of the item, because the value is typed there.</summary>
    protected override string PathOf(ExaminationCase subject) => subject.Item?.Path ?? subject.Path;

    /// <summary>Where only a month or a year is recorded, its first day counts: the rule warns only of what is certain.</summary>
    private static bool TooOld(Item item) =>
        item is { Declaration.On: { } declared, FirstUsed: { } first }
        && first.Earliest > CorrespondingDate.AddMonths(declared, FirstService.DeclarationMonths);

    private static bool IsUnexamined(ItemCase item, ExaminationCase e) =>
        item.Item.TransferEvidence is null
        && !(item.LastExamined?.Earliest <= item.Item.FirstUsed?.Latest)
        && e.Examination.Basis is not (Basis.FirstUse or Basis.Installation);
}
