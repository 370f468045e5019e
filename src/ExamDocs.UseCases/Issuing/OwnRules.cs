using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;

namespace ExamDocs.UseCases.Issuing;

/// <summary>The user's own rules that a visit was decided by. They may change without a new version of the program.</summary>
internal static class OwnRules
{
    /// <summary>Each file with the digest of what it says, in order; empty where all rules are built in.</summary>
    public static IReadOnlyList<string> Of(DeterminedVisit visit) =>
        [
            .. Regimes(visit)
                .Select(r => (r.AddedFrom, r.AddedDigest))
                .Concat(visit.Record.Items.Select(i => visit.Rules.FindCategory(i.Category)).Select(c => (c?.AddedFrom, c?.AddedDigest)))
                .Where(f => f.Item1 is not null)
                .Select(f => $"{f.Item1} {f.Item2}")
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal),
        ];

    /// <summary>Whether a record names a category or a regime that is not built in.</summary>
    public static bool AreNamedIn(ExaminationRecord record) =>
        record.Items.Any(i => i.Category is not null && KnownRules.BuiltIn.FindCategory(i.Category) is null)
        || record
            .Examinations.Select(e => e.Regime)
            .Append(record.Visit.Regime)
            .Any(r => r is not null && KnownRules.BuiltIn.FindRegime(r) is null);

    private static IEnumerable<Regime> Regimes(DeterminedVisit visit) =>
        visit.Record.Examinations.Select(e => e.Regime).Append(visit.Record.Visit.Regime).Select(visit.Rules.FindRegime).OfType<Regime>();
}
