using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules;

/// <summary>A defect that was entered for a criterion and names it nearly, so that it counts for none.</summary>
internal static class EnteredAstray
{
    /// <returns>Pointer to that defect; null where there is none.</returns>
    public static string? Of(ExaminationCase examination, string criterion) =>
        examination
            .Defects.FirstOrDefault(d =>
                d.Defect.Criterion is { } typed
                && examination.Category?.Find(typed) is null
                && SpellingSuggestion.Of(typed, [criterion]) is not null
            )
            .Path;
}
