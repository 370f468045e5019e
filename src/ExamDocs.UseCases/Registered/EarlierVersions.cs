using ExamDocs.Register;
using ExamDocs.Register.Model;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// Names visits of which an older version was read again: it is the latest again, which nobody means who only sends a file twice.
/// </summary>
internal static class EarlierVersions
{
    /// <returns>One sentence for each visit.</returns>
    public static IEnumerable<string> Of(DecideRun run, DocumentRegister register)
    {
        var added = run.Numbers.Where(n => n.IsNew).Select(n => n.Visit).ToHashSet();
        return from decided in run.Decided.Zip(run.Numbers, (d, n) => (d.Visit.Record.Visit.Reference, n.Visit, n.IsNew))
            where decided is { IsNew: true, Reference: not null }
            let versions = register.Visits.OfReference(decided.Reference)
            where versions[^1].Visit == decided.Visit && IsOld(versions, added)
            select $"{decided.Reference} is as it was recorded once before, and was corrected since. This older version counts again: "
                + "unless that is meant, bring the corrected one in once more.";
    }

    private static bool IsOld(IReadOnlyList<RememberedVisit> versions, HashSet<int> added)
    {
        var before = versions.Where(v => !added.Contains(v.Visit)).Select(v => v.Sha256).ToList();
        return before.Count > 1
            && before.Contains(versions[^1].Sha256, StringComparer.Ordinal)
            && !string.Equals(before[^1], versions[^1].Sha256, StringComparison.Ordinal);
    }
}
