using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Intake.Merging;

/// <summary>The particulars of one visit, taken together from several inputs.</summary>
internal static class MergedVisit
{
    /// <summary>Of each particular the first that is there.</summary>
    public static Visit Of(IEnumerable<Visit> visits) =>
        visits.Aggregate(
            (first, next) =>
                new Visit
                {
                    Reference = first.Reference ?? next.Reference,
                    Regime = first.Regime ?? next.Regime,
                    Employer = Of(first.Employer, next.Employer),
                    Premises = Of(first.Premises, next.Premises),
                    HiredFrom = Of(first.HiredFrom, next.HiredFrom),
                    EnforcingAuthority = Of(first.EnforcingAuthority, next.EnforcingAuthority),
                    Examiner = first.Examiner ?? next.Examiner,
                    Basis = first.Basis ?? next.Basis,
                    ExaminedOn = first.ExaminedOn ?? next.ExaminedOn,
                    ReportedOn = first.ReportedOn ?? next.ReportedOn,
                }
        );

    /// <summary>A disagreement for every particular that two inputs give differently.</summary>
    public static IEnumerable<Finding> Disagreements(IReadOnlyList<SourceInput> inputs) =>
        inputs
            .SelectMany(input => input.Visit.Leaves().Select(leaf => (input.Read, Leaf: leaf)))
            .GroupBy(p => p.Leaf.Path, StringComparer.Ordinal)
            .SelectMany(about =>
                about
                    .Skip(1)
                    .Where(p => !string.Equals(p.Leaf.Value, about.First().Leaf.Value, StringComparison.Ordinal))
                    .Select(p =>
                        MergeFindings.Disagreement.At(
                            $"/visit{about.Key}",
                            $"it is '{about.First().Leaf.Value}' here, but '{p.Leaf.Value}' at "
                                + $"{p.Read.Sources.Locate($"/visit{about.Key}")}"
                        )
                    )
            );

    /// <summary>Which input gives a particular first, by its pointer; the first input where none does.</summary>
    public static IEnumerable<(string Pointer, int Input)> Givers(IReadOnlyList<SourceInput> inputs) =>
        inputs
            .SelectMany((input, n) => input.Visit.Leaves().Select(leaf => (Pointer: $"/visit{leaf.Path}", Input: n)))
            .DistinctBy(g => g.Pointer, StringComparer.Ordinal);

    private static Party? Of(Party? first, Party? next) =>
        first is null || next is null
            ? first ?? next
            : new Party
            {
                Name = first.Name ?? next.Name,
                Address = first.Address ?? next.Address,
                Telephone = first.Telephone ?? next.Telephone,
            };
}
