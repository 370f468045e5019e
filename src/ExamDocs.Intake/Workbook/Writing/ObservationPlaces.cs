using ExamDocs.Core.Regimes;

namespace ExamDocs.Intake.Workbook.Writing;

/// <summary>Which observations of an examination have a column in the item's row, and which stand on the sheet of observations.</summary>
/// <param name="rules">The categories there are.</param>
/// <param name="sheetCategories">The categories that have a sheet.</param>
/// <param name="firstOfId">The item of each id, of two the first.</param>
internal sealed class ObservationPlaces(
    KnownRules rules,
    IReadOnlySet<string> sheetCategories,
    IReadOnlyDictionary<string, ObjectNode> firstOfId
)
{
    /// <summary>Those that have a column in the item's row: the first of each criterion that the category has.</summary>
    public IEnumerable<ObjectNode> InItemRow(CapturedExamination examination)
    {
        var category = examination is { InItemRow: true, Item: { } id } ? rules.FindCategory(firstOfId[id].Text("category")) : null;
        return category is not null && sheetCategories.Contains(category.Id)
            ? examination
                .Entries("observations")
                .Where(o => category.Find(o.Text("criterion")) is not null && HasContent(o))
                .DistinctBy(o => o.Text("criterion"), StringComparer.Ordinal)
            : [];
    }

    public IEnumerable<ObjectNode> OnObservationSheet(CapturedExamination examination) =>
        examination.Entries("observations").Except(InItemRow(examination), ReferenceEqualityComparer.Instance).Cast<ObjectNode>();

    /// <summary>Those in the item's row that have a photo, for which the row has no column.</summary>
    public IEnumerable<ObjectNode> OnPhotoSheet(CapturedExamination examination) =>
        InItemRow(examination).Where(o => o.Find("photo") is not null);

    private static bool HasContent(ObjectNode observation) => observation.Find("state") is not null || observation.Find("note") is not null;
}
