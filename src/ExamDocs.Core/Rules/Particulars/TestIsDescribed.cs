using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class TestIsDescribed : ExaminationRule
{
    public TestIsDescribed()
        : base(
            new RuleInfo(
                "PAR012",
                Severity.Error,
                "Every test has a description and a result",
                "The report gives the particulars of any test made as part of the examination.",
                $"Say what was tested and what came out.",
                "SI 1998/2307 Schedule 1 para 8(e) (from memory)"
            )
        ) =>
        Each(e =>
            e.Examination.Tests.SelectMany(
                    (t, i) =>
                        new[]
                        {
                            t.Description is null ? new Fault($"/tests/{Index.Of(i)}/description", $"the test is not described") : null,
                            t.Result is null ? new Fault($"/tests/{Index.Of(i)}/result", $"the result of the test is missing") : null,
                        }
                )
                .OfType<Fault>()
        );
}
