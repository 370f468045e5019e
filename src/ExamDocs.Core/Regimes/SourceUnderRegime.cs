namespace ExamDocs.Core.Regimes;

/// <summary>
/// Names the source of a reason under the law that an item was examined by. A rule of ours may come from the law of one place; elsewhere
/// that law does not apply, and the rule is then this program's own.
/// </summary>
internal static class SourceUnderRegime
{
    /// <summary>Where our rule has no law of the place behind it.</summary>
    public const string OwnRule = "rule of this program";

    /// <summary>How a source that cites the law of a place begins, and the regimes of that place.</summary>
    private static readonly (string Begins, string[] Regimes)[] LawsOfPlaces =
    [
        ("SI ", ["gb-loler", "gb-wah"]),
        ("SR ", ["ni-loler"]),
        ("29 CFR ", ["us"]),
        ("arrêté ", ["fr"]),
    ];

    /// <param name="source">Of the rule or criterion behind the reason.</param>
    /// <param name="code">Of the rule, for example W4; null where no rule is behind it.</param>
    /// <param name="regimes">All that bind the examination; none where the regime is not known.</param>
    public static string Of(string source, string? code, IReadOnlyList<Regime> regimes)
    {
        if (OwnSource(code, regimes) is { } own)
            return own;
        var foreign = LawsOfPlaces.Any(law =>
            source.StartsWith(law.Begins, StringComparison.Ordinal)
            && !regimes.Any(r => law.Regimes.Contains(r.Id, StringComparer.Ordinal) || Names(r, source))
        );
        return foreign ? OwnRule + WhatItSays(source) : source;
    }

    /// <summary>True where the source begins with a law of the regime: a user's own regime may stand for one of ours.</summary>
    private static bool Names(Regime regime, string source) =>
        regime.Laws.SelectMany(p => p.Entries).Any(l => source.StartsWith(l.Number, StringComparison.Ordinal));

    /// <summary>That of the regime whose particulars are printed, where its data name one.</summary>
    private static string? OwnSource(string? code, IReadOnlyList<Regime> regimes) =>
        code is null ? null
        : regimes.Count == 0 ? null
        : regimes[0].Reasons.FirstOrDefault(r => string.Equals(r.Code, code, StringComparison.Ordinal))?.Source;

    /// <summary>What the rule asks, in our words after the citation: a colon and the rest; empty where there is none.</summary>
    private static string WhatItSays(string source) =>
        source.IndexOf(": ", StringComparison.Ordinal) is var at and >= 0 ? source[at..] : "";
}
