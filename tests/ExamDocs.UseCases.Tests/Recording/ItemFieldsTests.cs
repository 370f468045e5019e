using System.Text;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Drafting;
using ExamDocs.UseCases.Recording;

namespace ExamDocs.UseCases.Tests.Recording;

/// <summary>
/// What is typed on the page of an item goes where it belongs, and nobody's answer is lost to a page that did not know of it.
/// </summary>
public sealed class ItemFieldsTests
{
    private const string Two = """
        {"format":"examdocs/1","visit":{},"items":[{"id":"A","category":"connector"},{"id":"B","category":"connector"}],
        "examinations":[{"item":"A","examinedOn":"2025-11-10",
        "observations":[{"criterion":"cracks","state":"noted","note":"old"}],"conclusion":"fit"}]}
        """;

    private static readonly ItemFields A = new(0);
    private static readonly ItemFields B = new(1);

    [Fact]
    public void An_answer_makes_the_examination_of_this_visit_and_leaves_history_alone()
    {
        var draft = Typed(Read(Two), A, ("answer/cracks", "clear"), ("examination/conclusion", "fit"));
        var record = draft.Record;
        Assert.Equal(2, record.Examinations.Count);
        Assert.Equal(ObservedState.Noted, record.Examinations[0].Observations.Single().State);
        Assert.Equal((null, Conclusion.Fit), (record.Examinations[1].ExaminedOn, record.Examinations[1].Conclusion));
        Assert.Equal("cracks", record.Examinations[1].Observations.Single().Criterion);
        Assert.Equal("", B.Value(draft, "answer/cracks"));
    }

    [Fact]
    public void An_answer_taken_back_leaves_nothing_that_says_it_was_examined()
    {
        var draft = Typed(Read(Two), B, ("answer/cracks", "defect"), ("defect/cracks/part", "gate"), ("readings/50", "11.1"));
        Assert.Equal("gate", draft.Record.Examinations[1].Defects.Single().Part);
        draft = Typed(draft, B, ("answer/cracks", ""), ("defect/cracks/part", ""), ("readings/50", ""));
        Assert.Equal(Bare(Two), Bare(Encoding.UTF8.GetString(draft.Write())));
    }

    [Fact]
    public void A_defect_that_was_entered_stays_when_its_answer_changes()
    {
        var draft = Typed(Read(Two), B, ("answer/cracks", "defect"), ("defect/cracks/danger", "now"));
        draft = Typed(draft, B, ("answer/cracks", "clear"));
        Assert.Equal(Danger.Now, draft.Record.Examinations[1].Defects.Single().Danger);
    }

    [Fact]
    public void The_later_of_two_pages_does_not_overwrite_what_it_never_saw()
    {
        var (first, _) = B.Save(Read(Two), [new("answer/cracks", "", "defect"), new("note/cracks", "", "across the body")]);
        var (second, notSaved) = B.Save(first, [new("answer/cracks", "", "clear"), new("answer/heat", "", "clear")]);
        Assert.Equal("defect", B.Value(second, "answer/cracks"));
        Assert.Equal("across the body", B.Value(second, "note/cracks"));
        Assert.Equal("clear", B.Value(second, "answer/heat"));
        var left = Assert.Single(notSaved);
        Assert.Equal(("defect", NotSavedBecause.ChangedMeanwhile), (left.Stands, left.Because));
    }

    [Fact]
    public void A_field_that_was_not_touched_is_not_saved_again()
    {
        var stands = Typed(Read(Two), B, ("answer/cracks", "doubt"));
        var (draft, notSaved) = B.Save(stands, [new("answer/cracks", "clear", "clear")]);
        Assert.Equal("doubt", B.Value(draft, "answer/cracks"));
        Assert.Empty(notSaved);
    }

    [Theory]
    [InlineData("item/id", "B", NotSavedBecause.IdIsNotItsOwn)]
    [InlineData("item/id", "", NotSavedBecause.IdIsNotItsOwn)]
    [InlineData("item/id", "A-2", NotSavedBecause.IdIsOnRecord)]
    public void An_id_that_would_part_an_item_from_its_record_is_not_taken(string name, string typed, NotSavedBecause because)
    {
        var (draft, notSaved) = A.Save(Read(Two), [new(name, "A", typed)]);
        Assert.Equal(because, Assert.Single(notSaved).Because);
        Assert.Equal("A", A.Value(draft, "item/id"));
    }

    [Fact]
    public void A_new_id_takes_the_answers_along()
    {
        var draft = Typed(Read(Two), B, ("answer/cracks", "defect"), ("item/id", "B-2"));
        Assert.Equal("B-2", draft.Record.Examinations[1].Item);
        Assert.Equal("defect", B.Value(draft, "answer/cracks"));
    }

    [Fact]
    public void What_is_fitted_to_an_item_stays_fitted_to_it_under_its_new_id()
    {
        var draft = Typed(Typed(Read(Two), A, ("item/fittedTo", "B")), B, ("item/id", "B-2"));
        draft = draft.With("/items/2/id", "B");
        Assert.Equal("B-2", A.Value(draft, "item/fittedTo"));
    }

    [Theory]
    [InlineData("item/notTheSameAs")]
    [InlineData("examination/examinedOn")]
    [InlineData("visit/reference")]
    [InlineData("defect/cracks/criterion")]
    [InlineData("../items")]
    public void A_name_that_no_page_has_changes_nothing(string name) =>
        Assert.Equal(Bare(Two), Bare(Encoding.UTF8.GetString(Typed(Read(Two), A, (name, "x")).Write())));

    private static RecordDraft Typed(RecordDraft draft, ItemFields fields, params (string Name, string Typed)[] typed)
    {
        var (after, notSaved) = fields.Save(draft, typed.Select(t => new TypedField(t.Name, fields.Value(draft, t.Name), t.Typed)));
        Assert.Empty(notSaved);
        return after;
    }

    private static RecordDraft Read(string json) => RecordDraft.Read(Encoding.UTF8.GetBytes(json)).Draft!;

    private static string Bare(string json) => System.Text.Json.JsonSerializer.Serialize(System.Text.Json.Nodes.JsonNode.Parse(json));
}
