using ExamDocs.Core.Calendar;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Rules.Dates;

public sealed class LaterDangerIsNotFarOff : ExaminationRule
{
    private const int Months = 24;

    public LaterDangerIsNotFarOff()
        : base(
            new RuleInfo(
                "DAT020",
                Severity.Warning,
                "A defect that could become a danger does so within 24 months",
                "A day further off is more often a slip of the year than a forecast: nobody can tell wear that far ahead.",
                $"Correct the year of becomesDangerOn; or set the day by which the item is to be looked at again.",
                "common practice, no source"
            )
        ) =>
        Each(e =>
            e.Defects.Where(d => e.On is { } on && d.Defect.BecomesDangerOn > CorrespondingDate.AddMonths(on, Months))
                .Select(d => new Fault(
                    $"{d.Path[e.Path.Length..]}/becomesDangerOn",
                    $"the defect becomes a danger on {d.Defect.BecomesDangerOn!.Value} as recorded, more than 24 "
                        + $"months after the examination"
                ))
        );
}
