using System.Text;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Drafting;
using ExamDocs.UseCases.Recording;

namespace ExamDocs.UseCases.Tests.Recording;

/// <summary>
/// What was done to an item goes to a row of its own, and what is typed on a page that is out of date never gets into another row.
/// </summary>
public sealed class ItemRowsTests
{
    private const string Three = """
        {"format":"examdocs/1","visit":{},"people":[{"id":"ex1"},{"id":"ex2"}],
        "items":[{"id":"H","category":"harness"},{"id":"B1","category":"rope-bridge"},{"id":"B2","category":"rope-bridge"}],
        "renewals":[{"item":"X","reason":"of another item"},{"item":"H","removedPart":"B1","reason":"worn"},
        {"item":"H","doneBy":"ex1"}]}
        """;

    private static readonly ItemFields H = new(0);
    private static readonly ItemFields B1 = new(1);

    [Fact]
    public void Each_deed_is_typed_as_the_record_has_it()
    {
        var draft = Typed(
            Read("""{"format":"examdocs/1","visit":{},"items":[{"id":"H","category":"harness"}]}"""),
            H,
            ("renewals/0/removedPart", "B1"),
            ("renewals/0/fittedPart", "B2"),
            ("renewals/0/reason", "cut"),
            ("renewals/0/doneBy", "ex2"),
            ("renewals/0/supervisedBy", "ex1"),
            ("renewals/0/doneOn", "12 May 2026"),
            ("renewals/0/retiedBy", "ex2"),
            ("remedies/0/what", "gate renewed"),
            ("remedies/0/doneBy", "Fennick Works"),
            ("remedies/0/doneOn", "2026-05-11"),
            ("remedies/0/evidence", "their note"),
            ("releases/0/document", "Q-2025-000007"),
            ("releases/0/withdrawnOn", "2025-11-12"),
            ("releases/0/because", "made-good"),
            ("releases/0/by", "ex1"),
            ("releases/0/on", "2026-05-12"),
            ("releases/0/grounds", "the bridge is another"),
            ("disposals/0/action", "sent for repair"),
            ("disposals/0/by", "Ada Fenn"),
            ("disposals/0/on", "2026-05-12"),
            ("tests/0/description", "hung in it"),
            ("tests/0/result", "held")
        );
        const string AsJson = """
            {"format":"examdocs/1","visit":{},"items":[{"id":"H","category":"harness"}],
            "renewals":[{"item":"H","removedPart":"B1","fittedPart":"B2","reason":"cut","doneBy":"ex2","supervisedBy":"ex1",
            "doneOn":"2026-05-12","retiedBy":"ex2"}],
            "remedies":[{"item":"H","what":"gate renewed","doneBy":"Fennick Works","doneOn":"2026-05-11","evidence":"their note"}],
            "releases":[{"item":"H","document":"Q-2025-000007","withdrawnOn":"2025-11-12","because":"made-good","by":"ex1",
            "on":"2026-05-12","grounds":"the bridge is another"}],
            "disposals":[{"item":"H","action":"sent for repair","by":"Ada Fenn","on":"2026-05-12"}],
            "examinations":[{"item":"H","tests":[{"description":"hung in it","result":"held"}]}]}
            """;
        Assert.Equal(Bare(AsJson), Bare(Written(draft)));
        Assert.Empty(draft.Findings);
    }

    [Fact]
    public void Only_the_rows_of_the_item_are_shown_on_its_page()
    {
        Assert.Equal((2, 0), (H.Rows.Count(Read(Three), "renewals"), B1.Rows.Count(Read(Three), "renewals")));
        Assert.Equal("worn", H.Value(Read(Three), "renewals/0/reason"));
        Assert.Equal("/renewals/1/reason", H.PointerTo(Read(Three), "renewals/0/reason"));
        Assert.Equal("", B1.Value(Read(Three), "renewals/0/reason"));
    }

    [Fact]
    public void Another_row_is_added_behind_and_a_last_one_that_says_nothing_any_more_goes()
    {
        var draft = Typed(Read(Three), H, ("renewals/2/fittedPart", "B2"));
        Assert.Equal(("H", "B2"), (draft.Record.Renewals[3].Item, draft.Record.Renewals[3].FittedPart));
        Assert.Equal(Bare(Three), Bare(Written(Typed(draft, H, ("renewals/2/fittedPart", "")))));
        var tested = Typed(Read(Three), H, ("tests/0/result", "held"));
        Assert.Single(tested.Record.Examinations);
        Assert.Equal(Bare(Three), Bare(Written(Typed(tested, H, ("tests/0/result", "")))));
    }

    [Fact]
    public void A_row_that_is_emptied_before_another_keeps_its_place()
    {
        var draft = Typed(Read(Three), H, ("renewals/0/removedPart", ""), ("renewals/0/reason", ""));
        Assert.Equal("ex1", H.Value(draft, "renewals/1/doneBy"));
        Assert.Equal(3, draft.Record.Renewals.Count);
    }

    [Fact]
    public void A_row_is_taken_off_as_the_page_shows_it()
    {
        var (draft, notSaved) = H.TakeOff(Read(Three), "renewals/0", Shown(Read(Three), "renewals/0"));
        Assert.Empty(notSaved);
        Assert.Equal(["X", "H"], draft.Record.Renewals.Select(r => r.Item));
        Assert.Equal("ex1", H.Value(draft, "renewals/0/doneBy"));
    }

    [Fact]
    public void A_page_that_does_not_know_that_a_row_was_taken_off_takes_no_other_off()
    {
        var (shifted, _) = H.TakeOff(Read(Three), "renewals/0", Shown(Read(Three), "renewals/0"));
        var (draft, notSaved) = H.TakeOff(shifted, "renewals/0", Shown(Read(Three), "renewals/0"));
        Assert.Equal(NotSavedBecause.RowIsAnother, Assert.Single(notSaved).Because);
        Assert.Equal(Written(shifted), Written(draft));
    }

    [Theory]
    // The row that it was meant for stands somewhere else now, or another one has its place, also where that has the same value already.
    [InlineData("renewals/0/supervisedBy", "ex2")]
    [InlineData("renewals/0/doneBy", "ex1")]
    [InlineData("renewals/1/supervisedBy", "ex2")]
    public void What_is_typed_on_a_page_that_is_out_of_date_gets_into_no_other_row(string name, string typed)
    {
        var row = name[..name.LastIndexOf('/')];
        var (shifted, _) = H.TakeOff(Read(Three), "renewals/0", Shown(Read(Three), "renewals/0"));
        var fields = Shown(Read(Three), row).Select(f => f.Name == name ? f with { Now = typed } : f);
        var (draft, notSaved) = H.Save(shifted, fields);
        Assert.Equal(NotSavedBecause.RowIsAnother, Assert.Single(notSaved).Because);
        Assert.Equal(Written(shifted), Written(draft));
    }

    [Fact]
    public void Two_pages_that_add_a_row_at_once_do_not_share_one()
    {
        var empty = Shown(Read(Three), "renewals/2").ToList();
        var (first, _) = H.Save(Read(Three), With(empty, "renewals/2/removedPart", "B1"));
        var (second, notSaved) = H.Save(first, With(empty, "renewals/2/reason", "cut"));
        Assert.Equal(NotSavedBecause.RowIsAnother, Assert.Single(notSaved).Because);
        Assert.Equal(Written(first), Written(second));
        // One page that did not hear of its own save is no other page.
        var (again, told) = H.Save(first, With(With(empty, "renewals/2/removedPart", "B1"), "renewals/2/reason", "cut"));
        Assert.Empty(told);
        Assert.Equal(("B1", "cut"), (again.Record.Renewals[3].RemovedPart, again.Record.Renewals[3].Reason));
    }

    [Fact]
    public void All_of_it_stays_with_an_item_that_gets_another_id()
    {
        var draft = Typed(Typed(Read(Three), B1, ("disposals/0/action", "destroyed")), B1, ("item/id", "B-1"));
        draft = Typed(Typed(draft, H, ("releases/0/grounds", "looked again")), H, ("item/id", "H-1"));
        var record = draft.Record;
        Assert.Equal("B-1", record.Disposals.Single().Item);
        Assert.Equal(["X", "H-1", "H-1"], record.Renewals.Select(r => r.Item));
        Assert.Equal(("B-1", "H-1"), (record.Renewals[1].RemovedPart, record.Releases.Single().Item));
    }

    [Theory]
    [InlineData("renewals/0/item")]
    [InlineData("renewals/x/reason")]
    [InlineData("renewals/-1/reason")]
    [InlineData("renewals/0")]
    [InlineData("renewals/9/reason")]
    [InlineData("limits/0/maker")]
    public void A_row_that_no_page_has_changes_nothing(string name)
    {
        var (draft, _) = H.Save(Read(Three), [new TypedField(name, "", "x")]);
        Assert.Equal(Bare(Three), Bare(Written(draft)));
    }

    private static RecordDraft Typed(RecordDraft draft, ItemFields fields, params (string Name, string Typed)[] typed)
    {
        foreach (var (name, now) in typed)
        {
            var row = name.StartsWith("item/", StringComparison.Ordinal) ? null : name[..name.LastIndexOf('/')];
            var shown = row is null ? [new(name, fields.Value(draft, name), "")] : Shown(draft, row, fields);
            (draft, var notSaved) = fields.Save(draft, With(shown, name, now));
            Assert.Empty(notSaved);
        }
        return draft;
    }

    /// <summary>The fields of a row as a page shows them that was made of this draft.</summary>
    private static IEnumerable<TypedField> Shown(RecordDraft draft, string row, ItemFields? of = null) =>
        ItemRows
            .Lists[row[..row.IndexOf('/')]]
            .Select(m => (Name: $"{row}/{m}", Value: (of ?? H).Value(draft, $"{row}/{m}")))
            .Select(f => new TypedField(f.Name, f.Value, f.Value));

    private static IEnumerable<TypedField> With(IEnumerable<TypedField> shown, string name, string typed) =>
        shown.Select(f => f.Name == name ? f with { Now = typed } : f);

    private static RecordDraft Read(string json) => RecordDraft.Read(Encoding.UTF8.GetBytes(json)).Draft!;

    private static string Written(RecordDraft draft) => Encoding.UTF8.GetString(draft.Write());

    private static string Bare(string json)
    {
        var root = System.Text.Json.Nodes.JsonNode.Parse(json)!.AsObject();
        // In which order the lists stand says nothing; one without a row is none.
        var lists = root.Where(m => m.Value is not System.Text.Json.Nodes.JsonArray { Count: 0 })
            .OrderBy(m => m.Key, StringComparer.Ordinal);
        return string.Join('\n', lists.Select(m => $"{m.Key}: {m.Value!.ToJsonString()}"));
    }
}
