using ExamDocs.Core.Findings;
using ExamDocs.Register.Checking;
using ExamDocs.Templates.AuditPack;

namespace ExamDocs.UseCases.Company.Packing;

/// <summary>What a check of the register found, as gaps of a pack: what is about other employers' kit is only counted.</summary>
internal static class RegisterGaps
{
    /// <param name="check">What was found.</param>
    /// <param name="things">What the pack is about.</param>
    /// <param name="asked">What it is asked to show.</param>
    public static IEnumerable<PackGap> Of(RegisterCheckResult check, PackedThings things, PackQuestion asked)
    {
        var numbers = things.Documents.Select(d => d.Number).ToHashSet(StringComparer.Ordinal);
        var visits = check.OfVisits.Where(v => things.Visits.Contains(v.Visit)).ToList();
        var documents = check.OfDocuments.Where(d => numbers.Contains(d.Number)).ToList();
        var named = visits.Select(v => v.Words).Concat(documents.Select(d => d.Words)).ToHashSet(StringComparer.Ordinal);
        var others = check.Faults.Count(f => !named.Contains(f));
        if (others > 0)
            yield return new(
                PackGapKind.RegisterNotSound,
                asked.Say($"the register"),
                asked.Say(
                    others == 1
                        ? (Message)$"examdocs register check finds one thing that is wrong"
                        : $"examdocs register check finds {others} things that are wrong"
                )
            );
        foreach (var (visit, words) in visits)
            yield return new(
                PackGapKind.DecidedOtherwise,
                asked.Say($"visit {visit}"),
                asked.Say($"from what is recorded of this visit the program decides something else today: {Message.AsIs(words)}")
            );
        foreach (var (number, words) in documents)
            yield return new(
                PackGapKind.DocumentMissingOrDiffers,
                number,
                asked.Say($"the register no longer holds this document as it was issued: {Message.AsIs(words)}")
            );
    }
}
