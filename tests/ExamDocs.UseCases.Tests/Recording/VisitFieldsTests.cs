using System.Text;
using ExamDocs.Intake.Drafting;
using ExamDocs.UseCases.Recording;

namespace ExamDocs.UseCases.Tests.Recording;

/// <summary>The particulars of a visit go to the visit and its examiner, and to nobody who did earlier work.</summary>
public sealed class VisitFieldsTests
{
    private const string Earlier = """
        {"format":"examdocs/1","visit":{"examiner":"ex1"},
        "people":[{"id":"ex1","name":"Ada Fenn","address":"2 Some Lane","qualifications":"Guild examiner","selfEmployed":true}],
        "items":[{"id":"A"}],"examinations":[WORK]}
        """;

    private static readonly VisitFields Visit = new();

    [Fact]
    public void Another_examiner_has_not_done_what_was_done_before()
    {
        const string Work = """{"item":"A","examinedOn":"2025-11-10","examiner":"ex1"}""";
        var draft = Typed(Earlier.Replace("WORK", Work, StringComparison.Ordinal), "examiner/name", "Bo Lark");
        Assert.Equal("Ada Fenn", draft.Text("/people/0/name"));
        Assert.Equal("ex1", draft.Text("/examinations/0/examiner"));
        Assert.Equal(draft.Text("/people/1/id"), draft.Text("/visit/examiner"));
        // All else is as the page shows it.
        string[] shown = ["name", "address", "qualifications", "selfEmployed"];
        Assert.Equal(["Bo Lark", "2 Some Lane", "Guild examiner", "yes"], shown.Select(m => Visit.Value(draft, $"examiner/{m}")));
        Assert.Equal(2, draft.Record.People.Count);
    }

    [Fact]
    public void An_examiner_without_earlier_work_is_only_renamed()
    {
        var draft = Typed(Earlier.Replace("WORK", "", StringComparison.Ordinal), "examiner/name", "Ada Fenner");
        Assert.Equal("Ada Fenner", Assert.Single(draft.Record.People).Name);
    }

    [Fact]
    public void Whoever_else_worked_gets_an_id_to_be_picked_by_and_the_examiner_is_not_among_them()
    {
        const string Work = """{"item":"A","examinedOn":"2025-11-10","examiner":"ex1"}""";
        var draft = Typed(Earlier.Replace("WORK", Work, StringComparison.Ordinal), "people/0/name", "Cy Vale");
        Assert.Equal(("ex2", "Cy Vale"), (draft.Text("/people/1/id"), draft.Text("/people/1/name")));
        Assert.Equal((1, "ex1"), (Visit.Rows.Count(draft, "people"), draft.Text("/visit/examiner")));
        // A page that took the examiner for somebody else neither renames nor takes off whoever stands there now.
        draft = draft.With("/visit/examiner", "ex2");
        TypedField[] shown = [new("people/0/name", "Cy Vale", "Di Vale")];
        Assert.Equal(NotSavedBecause.RowIsAnother, Assert.Single(Visit.Save(draft, shown).NotSaved).Because);
        Assert.Equal(2, Visit.TakeOff(draft, "people/0", [new("people/0/name", "Cy Vale", "Cy Vale")]).Draft.Record.People.Count);
        draft = Visit.TakeOff(draft.With("/visit/examiner", "ex1"), "people/0", [new("people/0/name", "Cy Vale", "Cy Vale")]).Draft;
        Assert.Equal("Ada Fenn", Assert.Single(draft.Record.People).Name);
    }

    private static RecordDraft Typed(string json, string name, string typed)
    {
        var draft = RecordDraft.Read(Encoding.UTF8.GetBytes(json)).Draft!;
        var (after, notSaved) = Visit.Save(draft, [new TypedField(name, Visit.Value(draft, name), typed)]);
        Assert.Empty(notSaved);
        return after;
    }
}
