using ExamDocs.Intake.Drafting;

namespace ExamDocs.UseCases.Recording;

/// <summary>The particulars of a visit: for whom, where, when, by whom.</summary>
public sealed class VisitFields : DraftFields
{
    /// <summary>Every field, in the order of the page.</summary>
    public static IReadOnlyList<string> Names { get; } =
    [
        "visit/reference",
        "visit/employer/name",
        "visit/employer/address",
        "visit/premises/name",
        "visit/premises/address",
        "visit/examinedOn",
        "visit/reportedOn",
        "visit/regime",
        "visit/basis",
        "examiner/name",
        "examiner/address",
        "examiner/qualifications",
        "examiner/selfEmployed",
        "examiner/employer/name",
        "examiner/employer/address",
        "visit/hiredFrom/name",
        "visit/hiredFrom/address",
        "visit/enforcingAuthority/name",
        "visit/enforcingAuthority/address",
    ];

    public override RowLists Rows { get; } = new PeopleRows();

    public override bool IsKnown(string name) => Names.Contains(name, StringComparer.Ordinal) || Rows.Parts(name) is { Member.Length: > 0 };

    public override string? PointerTo(RecordDraft draft, string name)
    {
        ArgumentNullException.ThrowIfNull(draft);
        ArgumentNullException.ThrowIfNull(name);
        if (Rows.Parts(name) is { } row)
            return Rows.PointerTo(draft, row);
        if (!name.StartsWith("examiner/", StringComparison.Ordinal))
            return $"/{name}";
        return Examiner(draft) is { } at ? FormattableString.Invariant($"/people/{at}/{name["examiner/".Length..]}") : null;
    }

    private protected override RecordDraft With(RecordDraft draft, string name, string typed)
    {
        if (Rows.Parts(name) is { } row)
            return Rows.With(draft, row, typed);
        if (PointerTo(draft, name) is null)
            draft = StartedVisit.WithExaminer(draft, "", "", "");
        else if (name is "examiner/name")
            draft = StartedVisit.WithAnotherExaminer(draft);
        return draft.With(PointerTo(draft, name)!, typed);
    }

    private static int? Examiner(RecordDraft draft) =>
        draft.Text("/visit/examiner") is { Length: > 0 } id ? draft.IndexOf("/people", "id", id) : null;
}
