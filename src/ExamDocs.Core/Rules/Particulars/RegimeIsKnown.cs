using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Regimes;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class RegimeIsKnown : Rule<VisitCase>
{
    public RegimeIsKnown()
        : base(
            new RuleInfo(
                "PAR026",
                Severity.Error,
                "The regime is one that is known",
                "The regime sets the interval, the particulars and whom to notify.",
                Hint(KnownRules.BuiltIn),
                "record format examdocs/1"
            )
        ) =>
        Each(v =>
            v.Context.Rules.FindRegime(v.Visit.Regime) is null
                ?
                [
                    new Fault(
                        "/regime",
                        v.Visit.Regime is { } typed ? (Message)$"'{typed}' is not a known regime" : $"the regime is missing",
                        Hint(v.Context.Rules)
                    ),
                ]
                : []
        );

    /// <summary>The ids of all regimes, including those that the user added.</summary>
    internal static Message Hint(KnownRules rules) => $"Type one of: {string.Join(", ", rules.Regimes.Select(r => r.Id))}.";
}
