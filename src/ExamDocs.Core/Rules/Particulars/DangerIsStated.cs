using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class DangerIsStated : Rule<Cases.ExaminationCase>
{
    public DangerIsStated()
        : base(
            new RuleInfo(
                "PAR009",
                Severity.Error,
                "Every defect says when it is a danger",
                "A defect that is a danger now ends the use of the item now; one that could become a danger later sets a date.",
                $"Type now or later.",
                "SI 1998/2307 Schedule 1 para 8(b) and (c)"
            )
        ) =>
        Each(e =>
            e.Examination.Defects.Select(
                    (d, i) =>
                        d.Danger is null
                            ? new Fault($"/defects/{Index.Of(i)}/danger", $"it is not recorded whether the defect is a danger now or later")
                            : null
                )
                .OfType<Fault>()
        );
}
