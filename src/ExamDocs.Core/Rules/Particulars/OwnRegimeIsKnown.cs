using ExamDocs.Core.Findings;
using ExamDocs.Core.Regimes;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class OwnRegimeIsKnown : ExaminationRule
{
    public OwnRegimeIsKnown() : base(new RuleInfo("PAR027", Severity.Error, "An examination's own regime is one that is known",
        "The regime sets the interval, the particulars and whom to tell.",
        $"Type one of: {string.Join(", ", RegimeIndex.All.Select(r => r.Id))}; or leave it empty for the visit's.", "record format examdocs/1")) =>
        Forbid(e => e.Examination.Regime is not null && e.Regime is null, "/regime", e => $"'{e.Examination.Regime}' is not a regime that is known");
}
