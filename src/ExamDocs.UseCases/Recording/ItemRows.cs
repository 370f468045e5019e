using ExamDocs.Intake.Drafting;

namespace ExamDocs.UseCases.Recording;

/// <summary>
/// What a record says in rows of what was done to an item: the tests of its examination at this visit, renewals of its parts, repairs,
/// releases and disposals.
/// </summary>
/// <param name="item">Place of the item in the record.</param>
public sealed class ItemRows(int item) : RowLists
{
    /// <summary>Lies in the examination; every other list lies in the record and names the item in each row.</summary>
    public const string Tests = "tests";

    public const string Renewals = "renewals",
        Remedies = "remedies",
        Releases = "releases",
        Disposals = "disposals";

    /// <inheritdoc cref="Members"/>
    public static IReadOnlyDictionary<string, IReadOnlyList<string>> Lists { get; } =
        new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal)
        {
            [Tests] = ["description", "result"],
            [Renewals] = ["removedPart", "fittedPart", "reason", "doneBy", "supervisedBy", "doneOn", "retiedBy"],
            [Remedies] = ["what", "doneBy", "doneOn", "evidence"],
            [Releases] = ["document", "withdrawnOn", "because", "by", "on", "grounds"],
            [Disposals] = ["action", "by", "on"],
        };

    public override IReadOnlyDictionary<string, IReadOnlyList<string>> Members => Lists;

    private protected override string NamedBy => "item";

    /// <summary>The draft with another id of an item in every row that names it.</summary>
    internal static RecordDraft Renamed(RecordDraft draft, string old, string id)
    {
        foreach (var list in Lists.Keys.Where(l => l is not Tests))
        {
            for (var n = 0; n < draft.Count($"/{list}"); n++)
            {
                foreach (var member in new[] { "item", "removedPart", "fittedPart" })
                {
                    var named = $"{Place($"/{list}", n)}/{member}";
                    if (old.Length > 0 && string.Equals(draft.Text(named), old, StringComparison.Ordinal))
                        draft = draft.With(named, id);
                }
            }
        }
        return draft;
    }

    internal override RecordDraft Without(RecordDraft draft, (string List, int Place, string Member) row) =>
        DraftExamination.WithoutEmpty(base.Without(draft, row), item);

    private protected override IReadOnlyList<string> Pointers(RecordDraft draft, string list)
    {
        ArgumentNullException.ThrowIfNull(draft);
        var (id, examination) = (Id(draft), list is Tests ? DraftExamination.Of(draft, item) : null);
        if (id.Length == 0 || (list is Tests && examination is null))
            return [];
        var rows = $"{examination?.Pointer}/{list}";
        return
        [
            .. Enumerable
                .Range(0, draft.Count(rows))
                .Select(n => Place(rows, n))
                .Where(row => list is Tests || string.Equals(draft.Text($"{row}/item"), id, StringComparison.Ordinal)),
        ];
    }

    private protected override (RecordDraft Draft, string Row) Added(RecordDraft draft, string list)
    {
        var whole = list is Tests ? DraftExamination.Of(draft, item)?.Pointer ?? DraftExamination.Next(draft) : "";
        var row = Place($"{whole}/{list}", draft.Count($"{whole}/{list}"));
        return (draft.With($"{(list is Tests ? whole : row)}/item", Id(draft)), row);
    }

    private string Id(RecordDraft draft) => draft.Text($"{Place("/items", item)}/id");
}
