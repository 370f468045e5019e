using System.Globalization;
using ExamDocs.Intake.Drafting;

namespace ExamDocs.UseCases.Recording;

/// <summary>What is put into a visit when it is started.</summary>
internal static class StartedVisit
{
    private static readonly string[] OfAPerson = ["name", "address", "qualifications", "selfEmployed", "employer/name", "employer/address"];

    /// <summary>Where a record names the people who did something.</summary>
    private static readonly (string List, string[] Members)[] Workers =
    [
        ("/examinations", ["examiner", "author", "authenticatedBy"]),
        ("/renewals", ["doneBy", "supervisedBy", "retiedBy"]),
        ("/remedies", ["doneBy"]),
        ("/releases", ["by"]),
        ("/disposals", ["by"]),
    ];

    /// <summary>
    /// The draft with somebody as the examiner of the visit: one of its people by this name, or one more. Their particulars are
    /// brought up to date; what is not given stays.
    /// </summary>
    public static RecordDraft WithExaminer(RecordDraft draft, string name, string address, string qualifications)
    {
        var people = draft.Count("/people");
        var at = Enumerable.Range(0, people).FirstOrDefault(n => IsCalled(draft, n, name), people);
        var person = string.Create(CultureInfo.InvariantCulture, $"/people/{at}");
        var id = at < people ? draft.Text($"{person}/id") : FreeId(draft);
        draft = draft.With($"{person}/id", id).With("/visit/examiner", id);
        foreach (var (member, value) in new[] { ("name", name), ("address", address), ("qualifications", qualifications) })
        {
            if (value.Length > 0)
                draft = draft.With($"{person}/{member}", value);
        }
        return draft;
    }

    /// <summary>
    /// The draft with the examiner as a person of their own where somebody of this id did earlier work: that was not done by whoever is
    /// named now. All but the name is taken along, as the page shows it.
    /// </summary>
    public static RecordDraft WithAnotherExaminer(RecordDraft draft)
    {
        var id = draft.Text("/visit/examiner");
        if (draft.IndexOf("/people", "id", id) is not { } at || !HasEarlierWork(draft, id))
            return draft;
        var (old, person, free) = (Place("/people", at), Place("/people", draft.Count("/people")), FreeId(draft));
        draft = draft.With($"{person}/id", free).With("/visit/examiner", free);
        return OfAPerson.Aggregate(draft, (d, member) => d.With($"{person}/{member}", d.Text($"{old}/{member}")));
    }

    private static bool HasEarlierWork(RecordDraft draft, string id) =>
        Workers.Any(w => w.Members.Any(member => draft.IndexOf(w.List, member, id) is not null));

    private static string Place(string list, int at) => string.Create(CultureInfo.InvariantCulture, $"{list}/{at}");

    private static bool IsCalled(RecordDraft draft, int person, string name) =>
        name.Length > 0
        && string.Equals(draft.Text(FormattableString.Invariant($"/people/{person}/name")), name, StringComparison.OrdinalIgnoreCase)
        && draft.Text(FormattableString.Invariant($"/people/{person}/id")).Length > 0;

    /// <summary>An id that no person of the visit has.</summary>
    internal static string FreeId(RecordDraft draft)
    {
        var n = 1;
        while (draft.IndexOf("/people", "id", FormattableString.Invariant($"ex{n}")) is not null)
            n++;
        return FormattableString.Invariant($"ex{n}");
    }
}
