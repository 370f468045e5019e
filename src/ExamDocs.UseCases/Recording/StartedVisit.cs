using System.Globalization;
using ExamDocs.Intake.Drafting;

namespace ExamDocs.UseCases.Recording;

/// <summary>What is put into a visit when it is started.</summary>
internal static class StartedVisit
{
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

    private static bool IsCalled(RecordDraft draft, int person, string name) =>
        name.Length > 0
        && string.Equals(draft.Text(FormattableString.Invariant($"/people/{person}/name")), name, StringComparison.OrdinalIgnoreCase)
        && draft.Text(FormattableString.Invariant($"/people/{person}/id")).Length > 0;

    private static string FreeId(RecordDraft draft)
    {
        var n = 1;
        while (draft.IndexOf("/people", "id", FormattableString.Invariant($"ex{n}")) is not null)
            n++;
        return FormattableString.Invariant($"ex{n}");
    }
}
