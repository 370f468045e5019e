using ExamDocs.Intake.OwnList.Mapping;
using ExamDocs.UseCases.Commands;
using ExamDocs.Workbench.Desk;
using NodaTime;

namespace ExamDocs.Workbench.Pages;

/// <summary>A list of the user's own: how it is read, and what comes out.</summary>
/// <param name="Visit">Where it lies on the desk.</param>
/// <param name="Mapping">What each column and word is taken for.</param>
/// <param name="ToSettle">What has to be settled before anything comes out.</param>
/// <param name="Adopted">What comes out; null while something is left to settle, or where no row is about an item.</param>
/// <param name="AsOf">The day taken for what the list has as out of use without a day.</param>
/// <param name="Refused">Why what was sent was not taken; null where it was.</param>
/// <param name="Words">The language of the page.</param>
public sealed record ListModel(
    DeskVisit Visit,
    ListMapping Mapping,
    IReadOnlyList<string> ToSettle,
    AdoptedList? Adopted,
    LocalDate AsOf,
    string? Refused,
    WorkbenchWords Words
)
{
    /// <summary>Rows of one kind on the page; what is beyond them stays as it is proposed.</summary>
    public const int Most = 150;

    public string Action => $"/visit/{Visit.Id}/list";

    public IReadOnlyList<ColumnMap> Columns =>
        [.. Mapping.Map.Columns.Index().Where(c => c.Index < Most || c.Item.IsNecessary).Select(c => c.Item)];

    public IReadOnlyList<KindMap> Kinds => [.. Mapping.Map.Kinds.Take(Most)];

    /// <summary>What could count against an item comes first.</summary>
    public IReadOnlyList<WordMap> WordsOfUse => [.. Mapping.Map.Words.OrderByDescending(w => w.Means is null).Take(Most)];

    public IReadOnlyList<ColourMap> Colours => [.. Mapping.Map.Colours.Take(Most)];

    /// <summary>How many rows are not on the page.</summary>
    public int NotShown =>
        Mapping.Map.Columns.Count
        - Columns.Count
        + Mapping.Map.Kinds.Count
        - Kinds.Count
        + Mapping.Map.Words.Count
        - WordsOfUse.Count
        + Mapping.Map.Colours.Count
        - Colours.Count;
}
