using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Items;

namespace ExamDocs.Templates.Shared;

/// <summary>A photo of an item with what it shows.</summary>
/// <param name="Print">The picture.</param>
/// <param name="Caption">Its number, the criterion, the answer and the examiner's note.</param>
/// <param name="IsOfDefect">Whether it shows what speaks against the item.</param>
public sealed record ItemPhoto(PhotoPrint Print, string Caption, bool IsOfDefect)
{
    /// <summary>The photos of the examination that counts, those of defects and doubts first.</summary>
    /// <param name="item">The item.</param>
    /// <param name="photos">The photo of an observation; null where it has none that can be printed.</param>
    public static IReadOnlyList<ItemPhoto> Of(DeterminedItem item, Func<Observation, PhotoPrint?>? photos)
    {
        if (photos is null || item.Examination is not { } examination)
            return [];
        var told = examination.Defects.Select(d => d.Criterion).ToHashSet(StringComparer.Ordinal);
        var shown = examination
            .Observations.Select(o => (Observation: o, Print: photos(o), Against: IsAgainst(o, told)))
            .Where(p => p.Print is not null)
            .OrderByDescending(p => p.Against);
        return
        [
            .. shown.Select(
                (p, at) =>
                    new ItemPhoto(
                        p.Print!,
                        ItemPhrases.Current.PhotoCaption(
                            at + 1,
                            Printed.Criterion(p.Observation.Criterion),
                            p.Observation.State,
                            p.Observation.Note
                        ),
                        p.Against
                    )
            ),
        ];
    }

    private static bool IsAgainst(Observation observation, HashSet<string?> told) =>
        observation.State is ObservedState.Defect or ObservedState.Doubt || told.Contains(observation.Criterion);
}
