using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class EmployerWasTold : ExaminationRule
{
    public EmployerWasTold()
        : base(
            new RuleInfo(
                "PAR025",
                Severity.Warning,
                "It is recorded who was told of a defect",
                "The employer must be notified forthwith, before any paper is written.",
                $"Record whom you told, how and on which day.",
                "SI 1998/2307 reg 10(1)(a)"
            )
        ) =>
        Each(e =>
            e.Examination.Defects.Select(
                    (d, i) =>
                        d.Notified is not { Whom: not null, How: not null, On: not null }
                            ? new Fault($"/defects/{Index.Of(i)}/notified", $"it is not recorded who was told of the defect, how and when")
                            : null
                )
                .OfType<Fault>()
        );
}
