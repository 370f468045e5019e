using System.Globalization;
using ExamDocs.Intake.Drafting;

namespace ExamDocs.UseCases.Recording;

/// <summary>
/// Lists of a draft whose rows have no name of their own. A row is known by its place and by what stands in it: a page that is out of
/// date types into none that it does not know.
/// </summary>
public abstract class RowLists
{
    /// <summary>What each list says of a row, in the order of the page.</summary>
    public abstract IReadOnlyDictionary<string, IReadOnlyList<string>> Members { get; }

    /// <summary>How many rows of a list there are.</summary>
    public int Count(RecordDraft draft, string list) => Pointers(draft, list).Count;

    /// <summary>The parts of a field's name: the list, the place of the row, the member; null for a name of another kind.</summary>
    /// <param name="name">For example renewals/0/reason; renewals/0 for the row, with no member.</param>
    internal (string List, int Place, string Member)? Parts(string name)
    {
        var parts = name.Split('/', 3);
        return
            parts.Length > 1
            && Members.TryGetValue(parts[0], out var members)
            && int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var place)
            && (parts.Length == 2 || members.Contains(parts[2], StringComparer.Ordinal))
            ? (parts[0], place, parts.Length == 2 ? "" : parts[2])
            : null;
    }

    /// <summary>Null where there is no row at this place.</summary>
    internal string? PointerTo(RecordDraft draft, (string List, int Place, string Member) field) =>
        Pointers(draft, field.List).ElementAtOrDefault(field.Place) is not { } row ? null
        : field.Member.Length == 0 ? row
        : $"{row}/{field.Member}";

    /// <summary>
    /// Whether the row at this place is the one that the page shows there: all that stands in it is what the page showed, or what it
    /// says now.
    /// </summary>
    /// <param name="draft">As it stands.</param>
    /// <param name="field">A field of the row, or the row.</param>
    /// <param name="page">What came back of the page, by name.</param>
    internal bool IsAsShown(RecordDraft draft, (string List, int Place, string Member) field, IReadOnlyDictionary<string, TypedField> page)
    {
        bool IsKnown(string member)
        {
            var stands = PointerTo(draft, field with { Member = member }) is { } pointer ? draft.Text(pointer) : "";
            return page.TryGetValue(FormattableString.Invariant($"{field.List}/{field.Place}/{member}"), out var shown)
                ? DraftFields.Same(stands, shown.Was) || DraftFields.Same(stands, shown.Now)
                : stands.Length == 0;
        }
        return field.Place <= Count(draft, field.List) && Members[field.List].All(IsKnown);
    }

    /// <summary>The draft with this value; the place after the last row adds one.</summary>
    internal RecordDraft With(RecordDraft draft, (string List, int Place, string Member) field, string typed)
    {
        var row = PointerTo(draft, field with { Member = "" });
        if (row is null)
            (draft, row) = Added(draft, field.List);
        draft = draft.With($"{row}/{field.Member}", typed);
        // One with others behind it stays, and says that it is empty: theirs would be other places than the page knows.
        return draft.HoldsOnly(row, NamedBy) && field.Place == Count(draft, field.List) - 1 ? Without(draft, field) : draft;
    }

    /// <summary>The draft without a row.</summary>
    internal virtual RecordDraft Without(RecordDraft draft, (string List, int Place, string Member) row) =>
        PointerTo(draft, row with { Member = "" }) is { } pointer ? draft.Without(pointer) : draft;

    /// <summary>The member that a row has before anything is typed in it.</summary>
    private protected abstract string NamedBy { get; }

    /// <summary>The rows of a list, in their order.</summary>
    private protected abstract IReadOnlyList<string> Pointers(RecordDraft draft, string list);

    /// <summary>The draft with whatever names a further row, and the pointer to that row.</summary>
    private protected abstract (RecordDraft Draft, string Row) Added(RecordDraft draft, string list);

    private protected static string Place(string list, int at) => string.Create(CultureInfo.InvariantCulture, $"{list}/{at}");
}
