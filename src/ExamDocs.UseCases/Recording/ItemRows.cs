using System.Globalization;
using ExamDocs.Intake.Drafting;

namespace ExamDocs.UseCases.Recording;

/// <summary>
/// The rows that a record has about what was done to an item: the tests of its examination at this visit, renewals of its parts,
/// repairs, releases and disposals. A row has no name of its own: it is known by its place among the rows of the item and by what
/// stands in it.
/// </summary>
public static class ItemRows
{
    /// <summary>Lies in the examination; every other list lies in the record and names the item in each row.</summary>
    public const string Tests = "tests";

    public const string Renewals = "renewals",
        Remedies = "remedies",
        Releases = "releases",
        Disposals = "disposals";

    /// <summary>What each list says of a row, in the order of the page.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<string>> Members { get; } =
        new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal)
        {
            [Tests] = ["description", "result"],
            [Renewals] = ["removedPart", "fittedPart", "reason", "doneBy", "supervisedBy", "doneOn", "retiedBy"],
            [Remedies] = ["what", "doneBy", "doneOn", "evidence"],
            [Releases] = ["document", "withdrawnOn", "because", "by", "on", "grounds"],
            [Disposals] = ["action", "by", "on"],
        };

    /// <summary>How many rows of a list are about the item.</summary>
    public static int Count(RecordDraft draft, int item, string list) => Pointers(draft, item, list).Count;

    /// <summary>The parts of a field's name: the list, the place among the item's rows, the member; null for a name of another kind.</summary>
    /// <param name="name">For example renewals/0/reason, or renewals/0 for the row.</param>
    internal static (string List, int Place, string Member)? Parts(string name)
    {
        var parts = name.Split('/');
        return
            parts.Length is 2 or 3
            && Members.TryGetValue(parts[0], out var members)
            && int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var place)
            && (parts.Length == 2 || members.Contains(parts[2], StringComparer.Ordinal))
            ? (parts[0], place, parts.Length == 2 ? "" : parts[2])
            : null;
    }

    /// <summary>Pointer to a row; null where the item has none at this place.</summary>
    internal static string? Pointer(RecordDraft draft, int item, string list, int place) =>
        Pointers(draft, item, list) is var all && place < all.Count ? all[place] : null;

    /// <summary>The draft with this value; the place after the last row adds one.</summary>
    internal static RecordDraft With(RecordDraft draft, int item, (string List, int Place, string Member) field, string typed)
    {
        if (Pointer(draft, item, field.List, field.Place) is not { } row)
        {
            var id = Id(draft, item);
            var whole = field.List is Tests ? DraftExamination.Of(draft, item)?.Pointer ?? DraftExamination.Next(draft) : "";
            row = Place($"{whole}/{field.List}", draft.Count($"{whole}/{field.List}"));
            draft = field.List is Tests ? draft.With($"{whole}/item", id) : draft.With($"{row}/item", id);
        }
        draft = draft.With($"{row}/{field.Member}", typed);
        // One with others behind it stays, and says that it is empty: theirs would be other places than the page knows.
        return draft.HoldsOnly(row, "item") && field.Place == Count(draft, item, field.List) - 1
            ? Without(draft, item, field.List, field.Place)
            : draft;
    }

    /// <summary>The draft without a row of the item.</summary>
    internal static RecordDraft Without(RecordDraft draft, int item, string list, int place)
    {
        if (Pointer(draft, item, list, place) is not { } row)
            return draft;
        draft = draft.Without(row);
        return list is Tests ? DraftExamination.WithoutEmpty(draft, item) : draft;
    }

    /// <summary>The draft with another id of an item in every row that names it.</summary>
    internal static RecordDraft Renamed(RecordDraft draft, string old, string id)
    {
        foreach (var list in Members.Keys.Where(l => l is not Tests))
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

    private static List<string> Pointers(RecordDraft draft, int item, string list)
    {
        ArgumentNullException.ThrowIfNull(draft);
        var id = Id(draft, item);
        var examination = list is Tests ? DraftExamination.Of(draft, item) : null;
        if (id.Length == 0 || (list is Tests && examination is null))
            return [];
        var rows = $"{examination?.Pointer}/{list}";
        return
        [
            .. Enumerable
                .Range(0, draft.Count(rows))
                .Select(n => Place(rows, n))
                .Where(row => examination is not null || string.Equals(draft.Text($"{row}/item"), id, StringComparison.Ordinal)),
        ];
    }

    private static string Id(RecordDraft draft, int item) => draft.Text($"{Place("/items", item)}/id");

    private static string Place(string list, int at) => string.Create(CultureInfo.InvariantCulture, $"{list}/{at}");
}
