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
public sealed record ParticularsModel(DeskVisit Visit, Sheet Sheet, KnownRules Rules, WorkbenchWords Words);

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
        ];
}
