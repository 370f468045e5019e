using System.Globalization;
using ExamDocs.Intake.Drafting;

namespace ExamDocs.UseCases.Recording;

/// <summary>
/// The fields of one item: its particulars, and its examination at this visit, which is made by the first answer. The examination of
/// this visit is the one without a day of its own; those with one are history, and nothing is typed into them.
/// </summary>
/// <param name="item">Place of the item in the record.</param>
public sealed class ItemFields(int item) : DraftFields
{
    /// <summary>Particulars of an item, in the order of the page.</summary>
    public static IReadOnlyList<string> Particulars { get; } =
    [
        "id",
        "category",
        "description",
        "maker",
        "model",
        "partNumber",
        "serial",
        "ownersMark",
        "manufactured",
        "purchased",
        "firstUsed",
        "neverUsed",
        "obsoleteOn",
        "safeWorkingLoad/value",
        "safeWorkingLoad/unit",
        "safeWorkingLoad/notMarked",
        "safeWorkingLoad/basis",
        "markedStrength/value",
        "markedStrength/unit",
        "standards",
        "fittedTo",
        "lastExamined",
        "purpose",
        "status",
        "declaration/reference",
        "declaration/on",
        "transferEvidence",
        "formerly",
    ];

    /// <summary>What is said of a defect.</summary>
    public static IReadOnlyList<string> DefectMembers { get; } =
    ["part", "description", "danger", "becomesDangerOn", "remedy", "imminentRisk", "notified/whom", "notified/how", "notified/on"];

    /// <summary>What is said of the examination as a whole.</summary>
    public static IReadOnlyList<string> Examination { get; } =
    ["conclusion", "nextBy", "exposure/hardware", "exposure/ground", "exposure/userMassKg", "exposure/use"];

    /// <summary>
    /// The places along an item at which a diameter is asked for, from the reference end: where one was read, where one was read last
    /// time, and those that somebody named. A place is nothing that was recorded before something is read there.
    /// </summary>
    public static IReadOnlyList<string> Places(RecordDraft draft, int item, LastFound? last, IEnumerable<string> named)
    {
        ArgumentNullException.ThrowIfNull(draft);
        var diameters = DraftExamination.Of(draft, item) is { } now ? $"{now.Pointer}/diameters" : null;
        var read = Enumerable
            .Range(0, diameters is null ? 0 : draft.Count(diameters))
            .Select(n => draft.Text(FormattableString.Invariant($"{diameters}/{n}/positionMm")));
        var before = last?.Diameters.Select(d => d.PositionMm).OfType<decimal>().Select(p => p.ToString(CultureInfo.InvariantCulture))
            ?? [];
        return
        [
            .. read.Concat(before)
                .Concat(named.Select(RecordDraft.NumberAsKept))
                .Where(p => p.Length is > 0 and <= 80)
                .Distinct(StringComparer.Ordinal)
                .OrderBy(p => decimal.TryParse(p, CultureInfo.InvariantCulture, out var mm) ? mm : decimal.MaxValue),
        ];
    }

    private readonly string _item = FormattableString.Invariant($"/items/{item}");

    public override RowLists Rows { get; } = new ItemRows(item);

    public override bool IsKnown(string name)
    {
        var (kind, rest) = Parts(name);
        return kind switch
        {
            "item" => Particulars.Contains(rest, StringComparer.Ordinal),
            "examination" => Examination.Contains(rest, StringComparer.Ordinal),
            "answer" or "note" or "readings" => rest.Length is > 0 and <= 80,
            "defect" => Parts(rest) is { Kind.Length: > 0 and <= 80 } parts && DefectMembers.Contains(parts.Within, StringComparer.Ordinal),
            _ => Rows.Parts(name) is { Member.Length: > 0 },
        };
    }

    public override string? PointerTo(RecordDraft draft, string name)
    {
        ArgumentNullException.ThrowIfNull(draft);
        var (kind, rest) = Parts(name);
        if (kind is "item")
            return $"{_item}/{rest}";
        if (Rows.Parts(name) is { } row)
            return Rows.PointerTo(draft, row);
        if (DraftExamination.Of(draft, item) is not { } examination)
            return null;
        return kind switch
        {
            "answer" => examination.Row("observations", "criterion", rest) is { } at ? $"{at}/state" : null,
            "note" => examination.Row("observations", "criterion", rest) is { } at ? $"{at}/note" : null,
            "defect" => examination.Row("defects", "criterion", Parts(rest).Kind) is { } at ? $"{at}/{Parts(rest).Within}" : null,
            "readings" => examination.Row("diameters", "positionMm", rest) is { } at ? $"{at}/readingsMm" : null,
            _ => $"{examination.Pointer}/{rest}",
        };
    }

    private protected override RecordDraft With(RecordDraft draft, string name, string typed)
    {
        var (kind, rest) = Parts(name);
        if (kind is "item")
            return rest is "id" ? Renamed(draft, typed) : draft.With($"{_item}/{rest}", typed);
        if (Rows.Parts(name) is { } row)
            return Rows.With(draft, row, typed);
        var (list, key, value, member) = kind switch
        {
            "answer" => ("observations", "criterion", rest, "state"),
            "note" => ("observations", "criterion", rest, "note"),
            "defect" => ("defects", "criterion", Parts(rest).Kind, Parts(rest).Within),
            "readings" => ("diameters", "positionMm", rest, "readingsMm"),
            _ => ("", "", "", rest),
        };
        return DraftExamination.WithValue(draft, item, (list, key, value), member, typed);
    }

    private protected override NotSavedBecause? WhyNot(RecordDraft draft, TypedField field)
    {
        if (field.Name is not "item/id")
            return null;
        var id = field.Now.Trim();
        if (id.Length == 0 || draft.IndexOf("/items", "id", id) is not null)
            return NotSavedBecause.IdIsNotItsOwn;
        return DraftExamination.HasHistory(draft, draft.Text($"{_item}/id")) ? NotSavedBecause.IdIsOnRecord : null;
    }

    private RecordDraft Renamed(RecordDraft draft, string id)
    {
        // Looked for under the old id, before it goes.
        var (examination, old) = (DraftExamination.Of(draft, item), draft.Text($"{_item}/id"));
        draft = draft.With($"{_item}/id", id);
        // What is fitted to it must not come to be fitted to another item that gets the old id.
        for (var n = 0; old.Length > 0 && n < draft.Count("/items"); n++)
        {
            var whole = FormattableString.Invariant($"/items/{n}/fittedTo");
            if (string.Equals(draft.Text(whole), old, StringComparison.Ordinal))
                draft = draft.With(whole, id);
        }
        draft = ItemRows.Renamed(draft, old, id);
        return examination is null ? draft : draft.With($"{examination.Pointer}/item", id);
    }

    private static (string Kind, string Within) Parts(string name) =>
        name.IndexOf('/', StringComparison.Ordinal) is > 0 and var at ? (name[..at], name[(at + 1)..]) : (name, "");
}
