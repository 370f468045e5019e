using ExamDocs.Core.Criteria;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Drafting;
using ExamDocs.UseCases.Recording;
using ExamDocs.Workbench.Desk;

namespace ExamDocs.Workbench.Pages;

/// <summary>What a page that records has in its fields, and what was found wrong with it.</summary>
/// <param name="Draft">The visit as it stands.</param>
/// <param name="Fields">Where each field lies in it.</param>
/// <param name="Findings">Of the whole visit; empty where it could not be checked just now.</param>
/// <param name="NotSaved">What was typed and not saved.</param>
/// <param name="Words">The language of the page.</param>
public sealed record Sheet(
    RecordDraft Draft,
    DraftFields Fields,
    IReadOnlyList<Finding> Findings,
    IReadOnlyList<NotSaved> NotSaved,
    WorkbenchWords Words
)
{
    /// <summary>The list of rows that is shown open, whatever is in it; null for none.</summary>
    public string? OpenRows { get; init; }

    /// <summary>Whether a row is to be added to that list.</summary>
    public bool IsRowAdded { get; init; }

    /// <summary>How many rows of a list are shown: those there are, and one to type in where there is none or one is to be added.</summary>
    public int RowsShown(string list) =>
        Fields.Rows!.Count(Draft, list) is var count
        && (count == 0 || (IsRowAdded && string.Equals(list, OpenRows, StringComparison.Ordinal)))
            ? count + 1
            : count;

    /// <summary>Every row, for example renewals/0: what was found of it is told there.</summary>
    public IEnumerable<string> Rows =>
        Fields.Rows!.Members.Keys.SelectMany(l => Enumerable.Range(0, RowsShown(l)).Select(n => FormattableString.Invariant($"{l}/{n}")));

    /// <summary>Every field in a row.</summary>
    public IEnumerable<string> RowNames => Rows.SelectMany(r => Fields.Rows!.Members[r.Split('/')[0]].Select(m => $"{r}/{m}"));

    public string Value(string name) => Fields.Value(Draft, name);

    /// <summary>What was found at the field's own place, each sentence once; what only follows from something else is not told.</summary>
    public IReadOnlyList<Finding> At(string name) =>
        Fields.PointerTo(Draft, name) is { } pointer
            ? [.. Findings.Where(f => f.FollowsFrom is null && IsAt(f, pointer)).DistinctBy(f => f.Message)]
            : [];

    /// <summary>What was found at or within some places and at none of these fields.</summary>
    public IReadOnlyList<Finding> Elsewhere(IEnumerable<string> names, IEnumerable<string> places)
    {
        var shown = names.SelectMany(At).ToHashSet(ReferenceEqualityComparer.Instance);
        return
        [
            .. Findings.Where(f => f.FollowsFrom is null && !shown.Contains(f) && places.Any(p => IsAt(f, p))).DistinctBy(f => f.Message),
        ];
    }

    /// <summary>What the fields show, for the page to hand back.</summary>
    public string Was(IEnumerable<string> names) => TypedForm.Json(names.Select(n => KeyValuePair.Create(n, Value(n))));

    private static bool IsAt(Finding finding, string pointer) =>
        string.Equals(finding.Path, pointer, StringComparison.Ordinal) || finding.Path.StartsWith($"{pointer}/", StringComparison.Ordinal);
}

/// <summary>A visit that is recorded here: its items.</summary>
public sealed record RecordModel(
    DeskVisit Visit,
    RecordDraft Draft,
    IReadOnlyList<ItemProgress> Items,
    IReadOnlyList<DeterminedItem> Determined,
    KnownRules Rules,
    IReadOnlyDictionary<string, string> Typed,
    string? Refused,
    WorkbenchWords Words
);

/// <summary>The particulars of a visit that is recorded here.</summary>
public sealed record ParticularsModel(DeskVisit Visit, Sheet Sheet, KnownRules Rules, WorkbenchWords Words)
{
    /// <summary>Every field of the page.</summary>
    public IReadOnlyList<string> Names => [.. VisitFields.Names, .. Sheet.RowNames];
}

/// <summary>One item of a visit that is recorded here.</summary>
public sealed record ItemModel(
    DeskVisit Visit,
    int At,
    Sheet Sheet,
    ItemProgress Progress,
    DeterminedItem? Determined,
    LastFound? Last,
    IReadOnlyList<string> Places,
    int? Next,
    IReadOnlyList<string> OtherItems,
    IReadOnlyList<Category> Categories,
    WorkbenchWords Words
)
{
    /// <summary>By criterion why a photo that was sent is not kept.</summary>
    public IReadOnlyDictionary<string, string> PhotosRefused { get; init; } = new Dictionary<string, string>(StringComparer.Ordinal);

    /// <summary>The people of the visit, to pick from.</summary>
    public IReadOnlyList<(string Value, string Label)> People =>
        [.. Sheet.Draft.Record.People.Where(p => p.Id is { Length: > 0 }).Select(p => (p.Id!, p.Name ?? p.Id!))];

    /// <summary>Whether something is fitted to it.</summary>
    public bool HasPart => Id.Length > 0 && Sheet.Draft.IndexOf("/items", "fittedTo", Id) is not null;

    public string Id => Sheet.Draft.Text(FormattableString.Invariant($"/items/{At}/id"));

    public Category? Category => Progress.Category;

    /// <summary>Whether diameters are measured along items of this kind.</summary>
    public bool IsMeasured => Category?.Criteria.Any(c => c.Id.StartsWith("diameter", StringComparison.Ordinal)) ?? false;

    /// <summary>Every field of the page.</summary>
    public IReadOnlyList<string> Names =>
        [
            .. ItemFields.Particulars.Select(p => $"item/{p}"),
            .. (Category?.Criteria ?? []).SelectMany(c =>
                ItemFields.DefectMembers.Select(m => $"defect/{c.Id}/{m}").Prepend($"note/{c.Id}").Prepend($"answer/{c.Id}")
            ),
            .. Places.Select(p => $"readings/{p}"),
            .. ItemFields.Examination.Select(m => $"examination/{m}"),
            .. Sheet.RowNames,
        ];
}
