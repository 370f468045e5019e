using System.Globalization;
using ExamDocs.Intake.Drafting;

namespace ExamDocs.UseCases.Recording;

/// <summary>The examination of an item at the visit that is being recorded.</summary>
/// <param name="draft">The draft.</param>
/// <param name="pointer">Where in it the examination lies.</param>
internal sealed class DraftExamination(RecordDraft draft, string pointer)
{
    private const string All = "/examinations";

    public string Pointer => pointer;

    /// <summary>Null where nothing was answered yet.</summary>
    public static DraftExamination? Of(RecordDraft draft, int item)
    {
        var id = draft.Text(FormattableString.Invariant($"/items/{item}/id"));
        if (id.Length == 0)
            return null;
        for (var n = 0; n < draft.Count(All); n++)
        {
            var at = Place(All, n);
            if (IsOf(draft, at, id) && draft.Text($"{at}/examinedOn").Length == 0)
                return new DraftExamination(draft, at);
        }
        return null;
    }

    /// <summary>Whether the draft knows an earlier examination under this id.</summary>
    public static bool HasHistory(RecordDraft draft, string id) =>
        Enumerable
            .Range(0, draft.Count(All))
            .Any(n => IsOf(draft, Place(All, n), id) && draft.Text($"{Place(All, n)}/examinedOn").Length > 0);

    /// <summary>Pointer to the first row of a list with this key; null where there is none.</summary>
    public string? Row(string list, string key, string value) =>
        draft.IndexOf($"{pointer}/{list}", key, value) is { } at ? Place($"{pointer}/{list}", at) : null;

    /// <summary>
    /// The draft with this value, in a row of a list or in the examination itself. A row that says nothing any more goes, and so does
    /// an examination: nobody is to be told that something was examined because a field was filled in and emptied again.
    /// </summary>
    public static RecordDraft WithValue(
        RecordDraft draft,
        int item,
        (string List, string Key, string Value) row,
        string member,
        string typed
    )
    {
        var id = draft.Text(FormattableString.Invariant($"/items/{item}/id"));
        var at = Of(draft, item)?.Pointer ?? Next(draft);
        draft = draft.With($"{at}/item", id);
        if (row.List.Length == 0)
        {
            draft = draft.With($"{at}/{member}", typed);
        }
        else
        {
            var rows = $"{at}/{row.List}";
            var place = Place(rows, draft.IndexOf(rows, row.Key, row.Value) ?? draft.Count(rows));
            draft = draft.With($"{place}/{row.Key}", row.Value).With($"{place}/{member}", typed);
            if (draft.HoldsOnly(place, row.Key))
                draft = draft.Without(place);
        }
        return WithoutEmpty(draft, item);
    }

    /// <summary>Where the next examination is put.</summary>
    public static string Next(RecordDraft draft) => Place(All, draft.Count(All));

    /// <summary>The draft without the item's examination where it says nothing any more.</summary>
    public static RecordDraft WithoutEmpty(RecordDraft draft, int item) =>
        Of(draft, item) is { } now && draft.HoldsOnly(now.Pointer, "item") ? draft.Without(now.Pointer) : draft;

    private static bool IsOf(RecordDraft draft, string at, string id) =>
        string.Equals(draft.Text($"{at}/item"), id, StringComparison.Ordinal);

    private static string Place(string list, int at) => string.Create(CultureInfo.InvariantCulture, $"{list}/{at}");
}
