using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Determination.CaseForService;

/// <summary>What the checks found, under the step of the argument that it belongs to. Notes carry no weight and are left out.</summary>
internal static class FindingEvidence
{
    public static IEnumerable<LedgerEntry> Of(IReadOnlyList<Finding> findings, Heading heading) =>
        findings
            .Where(f => f.Severity is not Severity.Note && f.Code is not EarlierDefects.Unanswered && HeadingOf(f) == heading)
            .DistinctBy(f => (f.Code, f.Message))
            .Select(f => new LedgerEntry(heading, Bearing.Open, new(w => w.Words.Said(f.Message)), f.Source) { Code = f.Code });

    private static Heading HeadingOf(Finding finding) =>
        finding.Code[..3] switch
        {
            "IDN" => Heading.Identity,
            "DAT" or "REN" => Heading.History,
            "MEA" => Heading.Measurements,
            _ when finding.Path.StartsWith("/limits", StringComparison.Ordinal) => Heading.Limits,
            _ => Heading.Doubts,
        };
}
