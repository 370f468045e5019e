using ExamDocs.Core.Regimes;

namespace ExamDocs.Core.Rules;

/// <summary>Checks a regime that a user wrote.</summary>
public static class RegimeFaults
{
    /// <returns>A sentence for every fault, beginning with its place; empty where the regime is sound.</returns>
    public static IReadOnlyList<string> Of(Regime regime) =>
        [
            .. SoundRegime.Faults(regime),
            .. Named(regime)
                .Where(code => !Askable.Contains(code))
                .Distinct(StringComparer.Ordinal)
                .Select(code =>
                    $"/: {code} is no rule that a regime can ask for; type one of "
                    + $"{string.Join(", ", Askable.Order(StringComparer.Ordinal))}, or take it out"
                ),
        ];

    /// <summary>Codes of the rules that apply only where a regime asks for them. No regime can switch off any other rule.</summary>
    private static HashSet<string> Askable => [.. RuleBook.All.Where(r => r is RegimeRule).Select(r => r.Info.Code)];

    private static IEnumerable<string> Named(Regime regime) =>
        regime
            .Particulars.SelectMany(p => p.Entries)
            .SelectMany(p => p.Checks)
            .Concat(regime.Duties.SelectMany(p => p.Entries).SelectMany(d => d.Checks))
            .Concat(regime.Checks.Select(c => c.Code));
}
