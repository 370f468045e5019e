using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Regimes;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class RegimeIsKnown : Rule<VisitCase>
{
    public RegimeIsKnown() : base(new RuleInfo("PAR026", Severity.Error, "The regime is one that is known",
        "The regime sets the interval, the particulars and whom to tell.",
        $"Type one of: {string.Join(", ", RegimeIndex.All.Select(r => r.Id))}.", "record format examdocs/1")) =>
        Forbid(v => RegimeIndex.Find(v.Visit.Regime) is null, "/regime", v => v.Visit.Regime is { } typed
            ? $"'{typed}' is not a regime that is known" : "the regime is missing");
}
