using ExamDocs.Core.Findings;
using ExamDocs.Core.Regimes;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class OwnRegimeIsKnown : ExaminationRule
{
    public OwnRegimeIsKnown()
        : base(
            new RuleInfo(
                "PAR027",
                Severity.Error,
                "An examination's own regime is one that is known",
                "The regime sets the interval, the particulars and whom to notify.",
                Hint(KnownRules.BuiltIn),
                "record format examdocs/1"
            )
        ) =>
        Each(e =>
            e.Examination.Regime is { } typed && e.Regime is null
                ? [new Fault("/regime", $"'{typed}' is not a known regime", Hint(e.Context.Rules))]
                : []
        );

    /// <summary>The ids of all regimes, including those that the user added.</summary>
    internal static Message Hint(KnownRules rules) =>
        $"Type one of: {string.Join(", ", rules.Regimes.Select(r => r.Id))}; or leave it empty for the visit's.";
}
