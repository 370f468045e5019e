using ExamDocs.Core.Determination;
using ExamDocs.Core.Regimes;

namespace ExamDocs.UseCases.Issuing;

/// <summary>The version that determines, composes and prints.</summary>
internal static class ProgramVersion
{
    public static string Current { get; } = typeof(ProgramVersion).Assembly.GetName().Version!.ToString(3);

    /// <summary>
    /// The version whose rules decided a visit; it says so where the record uses rules of the user's own, which may change without a new
    /// version.
    /// </summary>
    public static string Deciding(DeterminedVisit visit) => UsesOwn(visit) ? $"{Current} with rules of your own" : Current;

    private static bool UsesOwn(DeterminedVisit visit) =>
        visit.Record.Items.Any(i =>
            visit.Rules.FindCategory(i.Category) is { } category && KnownRules.BuiltIn.FindCategory(i.Category) != category
        )
        || visit
            .Record.Examinations.Select(e => e.Regime)
            .Append(visit.Record.Visit.Regime)
            .Any(r => visit.Rules.FindRegime(r) is { } regime && KnownRules.BuiltIn.FindRegime(r) != regime);
}
