using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class RemedyIsStated : ExaminationRule
{
    public RemedyIsStated()
        : base(
            new RuleInfo(
                "PAR010",
                Severity.Error,
                "Every defect says what must be done about it",
                "The report states the repair, renewal or alteration needed.",
                $"Type the repair, renewal or alteration needed; 'destroy' is one where nothing else will do.",
                "SI 1998/2307 Schedule 1 para 8(b) and (c)(ii)"
            )
        ) =>
        Each(e =>
            e.Examination.Defects.Select(
                    (d, i) =>
                        d.Remedy is null
                            ? new Fault($"/defects/{Index.Of(i)}/remedy", $"the repair, renewal or alteration needed is missing")
                            : null
                )
                .OfType<Fault>()
        );
}
