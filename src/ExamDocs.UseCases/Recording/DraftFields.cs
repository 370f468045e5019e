using ExamDocs.Intake.Drafting;

namespace ExamDocs.UseCases.Recording;

/// <summary>A field of a page as it came back.</summary>
/// <param name="Name">Which field.</param>
/// <param name="Was">What the page showed when it was made.</param>
/// <param name="Now">What stands in it now.</param>
public sealed record TypedField(string Name, string Was, string Now);

/// <summary>Why something that was typed was not saved.</summary>
public enum NotSavedBecause
{
    /// <summary>Another page saved something else there meanwhile.</summary>
    ChangedMeanwhile,

    /// <summary>An item needs an id, and one that no other item of the visit has.</summary>
    IdIsNotItsOwn,

    /// <summary>What is known of the item from before is known under its id.</summary>
    IdIsOnRecord,

    /// <summary>The row is not the one that the page shows: another page changed it, added one in its place, or took one off.</summary>
    RowIsAnother,
}

/// <summary>What was typed and not saved.</summary>
/// <param name="Field">As it came back.</param>
/// <param name="Stands">What the draft holds there.</param>
/// <param name="Because">Why.</param>
public sealed record NotSaved(TypedField Field, string Stands, NotSavedBecause Because);

/// <summary>The fields of one page, and where in a draft each of them lies.</summary>
public abstract class DraftFields
{
    /// <summary>Pointer to the field's value; null where the draft has no place for it yet.</summary>
    public abstract string? PointerTo(RecordDraft draft, string name);

    /// <summary>What the draft holds, as somebody would type it; empty for nothing.</summary>
    public string Value(RecordDraft draft, string name)
    {
        ArgumentNullException.ThrowIfNull(draft);
        return PointerTo(draft, name) is { } pointer ? draft.Text(pointer) : "";
    }

    /// <summary>
    /// Puts what was changed on the page into the draft. What the page showed and nobody changed is left alone, and where another page
    /// was quicker its value stands: an answer is never lost to a page that did not know of it.
    /// </summary>
    public (RecordDraft Draft, IReadOnlyList<NotSaved> NotSaved) Save(RecordDraft draft, IEnumerable<TypedField> fields)
    {
        ArgumentNullException.ThrowIfNull(draft);
        ArgumentNullException.ThrowIfNull(fields);
        var (left, all) = (new List<NotSaved>(), fields.DistinctBy(f => f.Name, StringComparer.Ordinal).ToList());
        var page = all.ToDictionary(f => f.Name, StringComparer.Ordinal);
        foreach (var field in all.Where(f => IsKnown(f.Name) && !Same(f.Was, f.Now)))
        {
            var stands = Value(draft, field.Name);
            if (Rows?.Parts(field.Name) is { } row && !Rows.IsAsShown(draft, row, page))
                left.Add(new NotSaved(field, stands, NotSavedBecause.RowIsAnother));
            else if (Same(stands, field.Now))
                continue;
            else if ((Same(stands, field.Was) ? WhyNot(draft, field) : NotSavedBecause.ChangedMeanwhile) is { } because)
                left.Add(new NotSaved(field, stands, because));
            else
                draft = With(draft, field.Name, field.Now);
        }
        return (draft, left);
    }

    /// <summary>The draft without a row, where that is the row that the page shows at its place.</summary>
    /// <param name="draft">As it stands.</param>
    /// <param name="row">For example renewals/0.</param>
    /// <param name="fields">What came back of the page.</param>
    public (RecordDraft Draft, IReadOnlyList<NotSaved> NotSaved) TakeOff(RecordDraft draft, string row, IEnumerable<TypedField> fields)
    {
        ArgumentNullException.ThrowIfNull(row);
        ArgumentNullException.ThrowIfNull(fields);
        if (Rows is not { } rows || rows.Parts(row) is not { } taken || rows.PointerTo(draft, taken) is null)
            return (draft, []);
        var page = fields.DistinctBy(f => f.Name, StringComparer.Ordinal).ToDictionary(f => f.Name, StringComparer.Ordinal);
        return rows.IsAsShown(draft, taken, page)
            ? (rows.Without(draft, taken), [])
            : (draft, [new NotSaved(new TypedField(row, "", ""), "", NotSavedBecause.RowIsAnother)]);
    }

    /// <summary>The lists of the page that have rows; null where it has none.</summary>
    public abstract RowLists? Rows { get; }

    /// <summary>False for a name that no page of ours has.</summary>
    public abstract bool IsKnown(string name);

    private protected abstract RecordDraft With(RecordDraft draft, string name, string typed);

    private protected virtual NotSavedBecause? WhyNot(RecordDraft draft, TypedField field) => null;

    /// <summary>Forms turn line breaks into two characters.</summary>
    internal static bool Same(string one, string other) =>
        string.Equals(one.ReplaceLineEndings("\n").Trim(), other.ReplaceLineEndings("\n").Trim(), StringComparison.Ordinal);
}
