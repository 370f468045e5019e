using System.Text;
using System.Text.Json.Nodes;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Regimes;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.Rendering;
using ExamDocs.Intake.Json;
using ExamDocs.Templates.Label;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Verifying;

namespace ExamDocs.UseCases.Tests.Issuing;

/// <summary>A document of a large visit holds that part of the record which bears on it, and says and decides the same from it.</summary>
public sealed class EmbeddedPartTests
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Every_document_about_some_items_of_a_large_visit_holds_a_part_that_gives_the_same_outcomes(bool perItem)
    {
        var visit = CheckedTwice().Visit!;
        await using var renderer = new DocumentRenderer();
        var data = new EmbeddedData(renderer);
        var jobs = ComposeDocuments.Of(visit, perItem, ReadingDistance.Default).Jobs.Where(j => !j.IsSchedule).ToList();
        Assert.True(jobs.Count > 300);
        foreach (var job in jobs.Where((_, n) => n % 5 == 0))
        {
            var contents = await ContentsAsync(data, job, renderer);
            Assert.Equal(124, contents.Record.PartOf?.Items);
            Assert.InRange(contents.Record.Record!.Items.Count, 0, 20);
            var again = contents.Determined(KnownRules.BuiltIn)!;
            Assert.Equal(Said(job.Items), Said(RecomposedDocument.Jobs(contents, again)[0].Items));
            Assert.Equal(Answer.Holds, OutcomeQuestion.Ask(contents, RecomposedDocument.Jobs(contents, again)[0].Items).Answer);
            Assert.Equal(contents.Record.PartOf!.Sha256, Sha256(EmbeddedRecord.Write(visit.Recorded, visit.Reading)));
        }
    }

    [Fact]
    public async Task A_schedule_and_the_documents_of_a_visit_of_a_hundred_items_hold_the_whole_record()
    {
        await using var renderer = new DocumentRenderer();
        var large = CheckedTwice().Visit!;
        var schedule = ComposeDocuments.Of(large, false, ReadingDistance.Default).Jobs.First(j => j.IsSchedule);
        Assert.Equal(124, (await WholeAsync(schedule, renderer)).Record.Record!.Items.Count);
        using var workspace = new Workspace();
        var record = Twice();
        while (record["items"]!.AsArray().Count > 100)
            record["items"]!.AsArray().RemoveAt(100);
        var hundred = CheckRecord.Of(workspace.Write(record), Workspace.Today).Visit!;
        var label = ComposeDocuments.Of(hundred, false, ReadingDistance.Default).Jobs[0];
        Assert.Equal(100, (await WholeAsync(label, renderer)).Record.Record!.Items.Count);
    }

    /// <summary>One examination elsewhere in the visit names another examiner: then nobody can say whose the others are.</summary>
    [Fact]
    public async Task Where_a_row_elsewhere_decides_the_document_holds_the_whole_record()
    {
        using var workspace = new Workspace();
        var record = Twice();
        var examiner = (string)record["people"]![0]!["id"]!;
        foreach (var examination in record.Rows("examinations"))
            examination.Remove("examiner");
        record["visit"]!["examiner"] = examiner;
        record.ExaminationOf("CON-01")["examiner"] = (string)record["people"]![1]!["id"]!;
        var visit = CheckRecord.Of(workspace.Write(record), Workspace.Today).Visit!;
        var job = ComposeDocuments.Of(visit, true, ReadingDistance.Default).Jobs.First(j => j.Items.All(i => i.Item.Id == "CON-02-B"));
        await using var renderer = new DocumentRenderer();
        Assert.Equal(124, (await WholeAsync(job, renderer)).Record.Record!.Items.Count);
    }

    [Fact]
    public async Task A_part_is_refused_as_a_record_and_nothing_is_issued_or_taken_back()
    {
        using var workspace = new Workspace();
        await using var renderer = new DocumentRenderer();
        var job = ComposeDocuments.Of(CheckedTwice().Visit!, false, ReadingDistance.Default).Jobs.First(j => !j.IsSchedule);
        var files = await new EmbeddedData(renderer).OfAsync(job, DocumentJob.Draft(job.Type), await job.DraftAsync(renderer));
        var record = files[0].Content;
        Assert.Contains("only that part of its visit", EmbeddedRecord.Read(record, "").Unreadable, StringComparison.Ordinal);
        Assert.Contains("only that part of its visit", JsonRecordReader.Read(record, "").Unreadable, StringComparison.Ordinal);
        var extracted = Path.Combine(workspace.Folder, "examdocs.json");
        await File.WriteAllBytesAsync(extracted, record, TestContext.Current.CancellationToken);
        var issued = await workspace.IssueAsync(extracted);
        Assert.Contains("only that part of its visit", Assert.Single(issued.Inputs).Unreadable, StringComparison.Ordinal);
        Assert.Contains(
            "only that part of its visit",
            ImportVisits.Run([extracted], workspace.Register, Workspace.Today, KnownRules.BuiltIn).Inputs[0].Unreadable,
            StringComparison.Ordinal
        );
        Assert.False(File.Exists(workspace.Register));
    }

    [Fact]
    public async Task Printed_they_verify_and_a_correction_replaces_only_what_it_changes()
    {
        using var workspace = new Workspace();
        var record = Twice();
        async Task<IssueResult> IssueAsync() =>
            await IssueDocuments.RunAsync(
                workspace.Request(workspace.Write(record)) with
                {
                    Only = ["certificate"],
                },
                TestContext.Current.CancellationToken
            );
        var first = await IssueAsync();
        Assert.True(first.Documents.Count > 1);
        var verified = await VerifyDocuments.RunAsync(
            new VerifyRequest
            {
                Files = [.. first.Documents.Select(workspace.FileOf)],
                RegisterPath = workspace.Register,
                Browser = OpenBrowser.Instance,
                Now = NodaTime.Instant.FromUtc(2026, 5, 13, 9, 0),
            },
            TestContext.Current.CancellationToken
        );
        Assert.All(verified, v =>
            Assert.All(v.Statements.Where(s => s.Question is not "signature"), s => Assert.Equal(Answer.Holds, s.Answer))
        );
        Assert.Contains(
            "only that part of its visit",
            CheckRecord.Of(workspace.FileOf(first.Documents[0]), Workspace.Today).Unreadable,
            StringComparison.Ordinal
        );
        var id = first.Documents[^1].Document.Items[0];
        record.Item(id)["serial"] = "CORRECTED-1";
        var second = await IssueAsync();
        var replaced = Assert.Single(second.Documents, d => d.IssuedNow);
        Assert.Equal(id, replaced.Document.Items[0]);
        var basis = DocumentContents.Of(await File.ReadAllBytesAsync(workspace.FileOf(replaced), default)).Contents!.Basis;
        Assert.Equal((first.Documents[^1].Document.Number, $"serial of {id}"), (basis.Replaces[0].Number, basis.Replaces[0].Reason));
    }

    private static async Task<DocumentContents> WholeAsync(DocumentJob job, DocumentRenderer renderer)
    {
        var contents = await ContentsAsync(new EmbeddedData(renderer), job, renderer);
        Assert.Null(contents.Record.PartOf);
        return contents;
    }

    private static async Task<DocumentContents> ContentsAsync(EmbeddedData data, DocumentJob job, DocumentRenderer renderer)
    {
        var files = await data.OfAsync(job, DocumentJob.Draft(job.Type), await job.DraftAsync(renderer));
        return DocumentContents.Read(files[2].Content.ToArray(), files[0].Content.ToArray(), files[1].Content.ToArray()).Contents!;
    }

    private static IEnumerable<string> Said(IEnumerable<DeterminedItem> items) =>
        items.Select(i =>
            $"{i.Item.Id} {i.Outcome} {i.Until} {i.NextExaminationBy} {string.Join("; ", i.Reasons)} {string.Join("; ", i.CaseForService)} "
            + string.Join("; ", i.Findings.Select(f => $"{f.Code} {f.Message.Text}"))
        );

    private static string Sha256(byte[] bytes) => Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(bytes));

    private static CheckedInput CheckedTwice()
    {
        using var workspace = new Workspace();
        return CheckRecord.Of(workspace.Write(Twice()), Workspace.Today);
    }

    /// <summary>The example with every item once more, under ids and markings of its own.</summary>
    internal static JsonObject Twice()
    {
        var (record, other) = (Workspace.Example(), Workspace.Example());
        string[] names = ["id", "fittedTo", "formerly", "item", "removedPart", "fittedPart", "serial", "ownersMark", "document"];
        foreach (var list in new[] { "items", "examinations", "renewals", "remedies", "releases", "disposals" })
        {
            foreach (var row in other[list]?.AsArray().Select(r => r!.DeepClone().AsObject()) ?? [])
            {
                foreach (var name in names.Where(n => row[n] is not null))
                    row[name] = (string)row[name]! + "-B";
                record[list]!.AsArray().Add(row);
            }
        }
        return record;
    }
}
