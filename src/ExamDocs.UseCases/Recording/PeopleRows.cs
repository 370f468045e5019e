using ExamDocs.Intake.Drafting;

namespace ExamDocs.UseCases.Recording;

/// <summary>The people of a visit besides its examiner: whoever did or supervised something that is recorded.</summary>
public sealed class PeopleRows : RowLists
{
    public const string List = "people";

    /// <inheritdoc cref="Members"/>
    public static IReadOnlyDictionary<string, IReadOnlyList<string>> Lists { get; } =
        new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal)
        {
            [List] = ["name", "address", "qualifications", "selfEmployed", "employer/name", "employer/address"],
        };

    public override IReadOnlyDictionary<string, IReadOnlyList<string>> Members => Lists;

    private protected override string NamedBy => "id";

    private protected override IReadOnlyList<string> Pointers(RecordDraft draft, string list)
    {
        ArgumentNullException.ThrowIfNull(draft);
        var examiner = draft.Text("/visit/examiner");
        return
        [
            .. Enumerable
                .Range(0, draft.Count("/people"))
                .Select(n => Place("/people", n))
                .Where(p => draft.Text($"{p}/id") is var id && (id.Length == 0 || !string.Equals(id, examiner, StringComparison.Ordinal))),
        ];
    }

    private protected override (RecordDraft Draft, string Row) Added(RecordDraft draft, string list)
    {
        var row = Place("/people", draft.Count("/people"));
        return (draft.With($"{row}/id", StartedVisit.FreeId(draft)), row);
    }
}
