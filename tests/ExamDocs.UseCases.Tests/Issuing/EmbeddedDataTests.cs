using System.Text;
using System.Text.Json.Nodes;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Documents.Finishing;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;
using NodaTime;

namespace ExamDocs.UseCases.Tests.Issuing;

/// <summary>A document holds what it was made from, and that gives what it says.</summary>
public sealed class EmbeddedDataTests(ExampleIssued example)
{
    [Fact]
    public void The_data_of_every_document_fed_back_give_the_printed_outcomes()
    {
        Assert.True(example.Result.Documents.Count > 20);
        Assert.All(example.Result.Documents, issued =>
        {
            var printed = JsonNode.Parse(issued.Document.OutcomesJson)!.AsObject();
            var again = CheckRecord.Of(example.File(issued), Workspace.Today);
            Assert.Null(again.Unreadable);
            Assert.All(printed, outcome =>
                Assert.Equal(
                    (string)outcome.Value!,
                    again.Visit!.Everything.Where(i => i.Item.Id == outcome.Key).Max(i => i.Outcome).Word()
                )
            );
        });
    }

    [Fact]
    public void Every_document_claims_to_be_accessible()
    {
        var files = example.Result.Documents.Select(example.File).Concat(example.PerItem.Documents.Select(example.PerItemFile));
        Assert.All(files, file =>
            Assert.Contains("<pdfuaid:part>1</pdfuaid:part>", Encoding.UTF8.GetString(File.ReadAllBytes(file)), StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Everything_is_determined_as_it_was()
    {
        var report = example.Result.Documents.First(d => d.Document.Kind == "report");
        var again = CheckRecord.Of(example.File(report), Workspace.Today).Visit!;
        Assert.Equal(example.Visit.Everything.Select(Said), again.Everything.Select(Said));
        Assert.Equal(
            example.Visit.Findings.Select(f => (f.Code, f.Path, f.Message.Text)),
            again.Findings.Select(f => (f.Code, f.Path, f.Message.Text))
        );
    }

    /// <summary>What was in the future on the day of issue is not so for ever; a report speaks of no such item.</summary>
    [Fact]
    public void What_a_report_says_holds_on_any_later_day()
    {
        var report = example.Result.Documents.First(d => d.Document.Kind == "report");
        var later = CheckRecord.Of(example.File(report), new LocalDate(2040, 1, 1)).Visit!;
        Assert.All(report.Document.Items, id => Assert.Equal(Said(Item(example.Visit, id)), Said(Item(later, id))));
    }

    [Fact]
    public void The_outcomes_within_are_those_of_its_items()
    {
        var notice = example.Result.Documents.First(d => d.Document.Kind == "notice");
        var outcome = JsonNode.Parse(AttachedFiles.Find(File.ReadAllBytes(example.File(notice)), "outcome.json", 1 << 20))!;
        Assert.Equal("examdocs-findings/1", (string)outcome["format"]!);
        var item = Assert.Single(outcome["items"]!.AsArray())!;
        var determined = Item(example.Visit, Assert.Single(notice.Document.Items));
        Assert.Equal(determined.Outcome.Word(), (string)item["outcome"]!);
        Assert.Equal(determined.Reasons.Select(r => r.Code), item["reasons"]!.AsArray().Select(r => (string)r!["code"]!));
        Assert.Equal(determined.CaseForService.Select(e => e.Text), item["case"]!.AsArray().Select(e => (string)e!["text"]!));
    }

    [Fact]
    public async Task What_could_not_be_read_is_still_said_when_the_document_is_read()
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("CON-01", "CON-07");
        record.Item("CON-01")["obsoleteOn"] = "03/04/2034";
        var result = await workspace.IssueAsync(workspace.Write(record));
        var label = result.Documents.First(d => d.Document.Kind == "quarantine-label" && d.Document.Items.Contains("CON-01"));
        var again = CheckRecord.Of(workspace.FileOf(label), Workspace.Today).Visit!;
        Assert.Equal(Outcome.Undetermined, Item(again, "CON-01").Outcome);
        Assert.Equal("INT004", Assert.Single(again.Reading).Code);
    }

    [Theory]
    [InlineData("%PDF-1.7\nno more than that")]
    [InlineData("%PDF-1.4\nxref\n0 1\n0000000000 65535 f \ntrailer\n<</Root 1 0 R>>\nstartxref\n9\n%%EOF")]
    public void Another_pdf_is_refused_in_words(string content)
    {
        using var workspace = new Workspace();
        var file = Path.Combine(workspace.Folder, "other.pdf");
        File.WriteAllText(file, content, Encoding.Latin1);
        Assert.Contains("PDF", CheckRecord.Of(file, Workspace.Today).Unreadable, StringComparison.Ordinal);
    }

    [Fact]
    public void A_document_without_data_is_refused_in_words()
    {
        using var workspace = new Workspace();
        var file = Path.Combine(workspace.Folder, "bare.pdf");
        File.WriteAllBytes(file, Bare());
        Assert.Contains("no recorded examination in this PDF", CheckRecord.Of(file, Workspace.Today).Unreadable, StringComparison.Ordinal);
    }

    /// <summary>One of ours whose list of attached files was taken out, place for place.</summary>
    private byte[] Bare()
    {
        var text = Encoding.Latin1.GetString(File.ReadAllBytes(example.File(example.Result.Documents[0])));
        return Encoding.Latin1.GetBytes(text.Replace("/EmbeddedFiles", "/EmbeddedXxxxx", StringComparison.Ordinal));
    }

    private static DeterminedItem Item(DeterminedVisit visit, string id) => visit.Everything.First(i => i.Item.Id == id);

    private static string Said(DeterminedItem i) =>
        $"{i.Item.Id} {i.Outcome} {i.Until} {i.NextExaminationBy} {string.Join("; ", i.Reasons)} {string.Join("; ", i.CaseForService)}";
}
