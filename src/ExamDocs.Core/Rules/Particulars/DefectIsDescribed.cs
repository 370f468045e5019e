using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class DefectIsDescribed : ExaminationRule
{
    public DefectIsDescribed()
        : base(
            new RuleInfo(
                "PAR008",
                Severity.Error,
                "Every defect names the part and describes it",
                "The owner must be able to find the defect that the report names.",
                $"Name the part that has the defect and say what is wrong with it.",
                "SI 1998/2307 Schedule 1 para 8(a)"
            )
        ) =>
        Each(e =>
            e.Examination.Defects.SelectMany(
                    (d, i) =>
                        new[]
                        {
                            d.Part is null ? new Fault($"/defects/{Index.Of(i)}/part", $"the part that has the defect is not named") : null,
                            d.Description is null ? new Fault($"/defects/{Index.Of(i)}/description", $"the defect is not described") : null,
                        }
                )
                .OfType<Fault>()
        );
}
