using System.Text;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Drafting;
using NodaTime;

namespace ExamDocs.Intake.Tests.Drafting;

/// <summary>What is typed into a draft stands in it as typed, beside everything that stood there before.</summary>
public sealed class RecordDraftTests
{
    private const string Odd = """
        {"format":"examdocs/1","visit":{"reference":"V-1","shoeSize":44},
        "items":[{"id":"A","manufactured":"sometime","serial":7},{}],"extra":[1,null]}
        """;

    [Fact]
    public void Setting_one_value_keeps_every_other_readable_or_not()
    {
        var draft = Read(Odd).With("/items/0/maker", "Fennick Works").With("/visit/employer/name", "Alder Vale Ltd");
        const string expected = """
            {"format":"examdocs/1","visit":{"reference":"V-1","shoeSize":44,"employer":{"name":"Alder Vale Ltd"}},
            "items":[{"id":"A","manufactured":"sometime","serial":7,"maker":"Fennick Works"},{}],"extra":[1,null]}
            """;
        Assert.Equal(Bare(expected), Bare(Encoding.UTF8.GetString(draft.Write())));
    }

    [Theory]
    [InlineData("manufactured", "2024-02", "\"2024-02\"")]
    [InlineData("manufactured", "20 Feb 2024", "\"2024-02-20\"")]
    [InlineData("manufactured", "03/04/2024", "\"03/04/2024\"")] // two days, so as typed
    [InlineData("cleanings", "3", "3")]
    [InlineData("cleanings", "three", "\"three\"")]
    [InlineData("neverUsed", "yes", "true")]
    [InlineData("neverUsed", "perhaps", "\"perhaps\"")]
    [InlineData("standards", "EN 362; EN 12275", "[\"EN 362\",\"EN 12275\"]")]
    [InlineData("serial", "0012", "\"0012\"")]
    [InlineData("description", "<b>\r\nred</b>", "\"<b>\\nred</b>\"")]
    public void A_value_is_kept_as_the_format_has_it_and_what_cannot_be_read_as_it_was_typed(string member, string typed, string json)
    {
        var draft = Read("""{"items":[{"id":"A"}]}""").With($"/items/0/{member}", typed);
        Assert.Equal(Bare($$"""{"items":[{"id":"A","{{member}}":{{json}}}]}"""), Bare(Encoding.UTF8.GetString(draft.Write())));
    }

    [Theory]
    [InlineData("11.1 11.0", "[11.1,11.0]", "11.1 11.0")]
    [InlineData("11,1 / 11,0", "[11.1,11.0]", "11.1 11.0")]
    [InlineData("11.1 eleven", "[11.1,\"eleven\"]", "11.1 eleven")]
    [InlineData("eleven", "[\"eleven\"]", "eleven")]
    public void Readings_are_parted_at_blanks_and_one_that_is_no_number_is_kept(string typed, string json, string shown)
    {
        var draft = Read("{}").With("/examinations/0/diameters/0/readingsMm", typed);
        Assert.Equal(
            Bare($$"""{"examinations":[{"diameters":[{"readingsMm":{{json}}}]}]}"""),
            Bare(Encoding.UTF8.GetString(draft.Write()))
        );
        Assert.Equal(shown, draft.Text("/examinations/0/diameters/0/readingsMm"));
    }

    [Fact]
    public void An_emptied_value_goes_and_other_rows_keep_their_places()
    {
        var draft = Read("""{"items":[{"id":"A"},{"id":"B"}]}""").With("/items/0/id", " ");
        Assert.Equal(Bare("""{"items":[{},{"id":"B"}]}"""), Bare(Encoding.UTF8.GetString(draft.Write())));
        Assert.Equal("B", draft.Without("/items/0").Text("/items/0/id"));
    }

    [Fact]
    public void The_next_visit_begins_without_an_answer_and_keeps_the_last_one_as_history()
    {
        var last = new ExaminationRecord
        {
            Visit = new Visit { Reference = "V-1", ExaminedOn = new LocalDate(2026, 5, 11) },
            Items = [new Item { Id = "A", Category = "connector" }],
            Examinations =
            [
                new Examination { Item = "A", Conclusion = Conclusion.Fit },
                // Of a day that nobody can read: it must not pass for an answer of the next visit.
                new Examination
                {
                    Item = "A",
                    ExaminedOnUnreadable = true,
                    Conclusion = Conclusion.Fit,
                },
            ],
        };
        var record = RecordDraft.ForNextVisit(last).Record;
        Assert.Equal(new LocalDate(2026, 5, 11), Assert.Single(record.Examinations).ExaminedOn);
        Assert.Null(record.Visit.Reference);
        Assert.Equal("2026-05-11", record.Items[0].LastExamined?.ToString());
    }

    private static RecordDraft Read(string json) => RecordDraft.Read(Encoding.UTF8.GetBytes(json)).Draft!;

    private static string Bare(string json) => System.Text.Json.JsonSerializer.Serialize(System.Text.Json.Nodes.JsonNode.Parse(json));
}
