using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates;
using ExamDocs.Templates.Evidence;
using ExamDocs.Templates.Report;

namespace ExamDocs.UseCases.Issuing;

/// <summary>The evidence files of a visit.</summary>
internal static class ComposeEvidence
{
    /// <summary>For every item, whatever its outcome, in one file; item by item where the reports are.</summary>
    public static IEnumerable<DocumentJob> Of(
        DeterminedVisit visit,
        bool perItem,
        Func<Observation, PhotoPrint?>? photos,
        LeftOutItems? leftOut
    )
    {
        var left = leftOut ?? LeftOutItems.None;
        var items = visit.Everything.Except(left.Items).ToList();
        return items.Count == 0 ? []
            : perItem ? items.Select(i => File(visit, [i], perItem, photos, LeftOutItems.None))
            : [File(visit, items, perItem, photos, left)];
    }

    private static DocumentJob File(
        DeterminedVisit visit,
        IReadOnlyList<DeterminedItem> items,
        bool perItem,
        Func<Observation, PhotoPrint?>? photos,
        LeftOutItems left
    ) =>
        new(DocumentTypes.Evidence, visit, items, (renderer, identity) =>
            renderer.HtmlAsync(new EvidenceModel(identity, visit, items, photos, left))
        )
        {
            PerItem = perItem,
            LeftOut = left,
            Without = less => items.Except(less.Items).ToList() is { Count: > 0 } rest ? File(visit, rest, perItem, photos, less) : null,
        };
}
