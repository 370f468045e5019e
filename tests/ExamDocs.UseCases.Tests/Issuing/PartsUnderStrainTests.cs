using System.Text;
using System.Text.Json.Nodes;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Documents.Rendering;
using ExamDocs.Intake;
using ExamDocs.Intake.Drafting;
using ExamDocs.Intake.Json;
using ExamDocs.Templates;
using ExamDocs.Templates.Label;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using SkiaSharp;

namespace ExamDocs.UseCases.Tests.Issuing;

/// <summary>Parts of a visit where something about them is out of the ordinary.</summary>
public sealed class PartsUnderStrainTests
{
    [Theory]
    [InlineData("\"partOf\": null, ")]
    [InlineData("\"PARTOF\": {}, ")]
    [InlineData("\"\\u0070artOf\": 1, ")]
    [InlineData("\"partOf\": {\"items\": 200, \"sha256\": \"0\"}, ")]
    public void A_part_is_refused_as_a_record_however_it_says_so(string member)
    {
        var record = Encoding.UTF8.GetBytes($$"""{ {{member}}"format": "examdocs/1", "items": [{"id": "A"}] }""");
        Assert.Null(JsonRecordReader.Read(record, "").Record);
        Assert.Null(EmbeddedRecord.Read(record, "").Record);
        Assert.Null(RecordDraft.Read(record).Draft);
    }

    [Fact]
    public void Of_what_visit_it_is_a_part_may_be_said_once_only()
    {
        const string Part = """ "partOf": {"items": 200, "sha256": "0"} """;
        Assert.NotNull(EmbeddedRecord.ReadWithin(Encoding.UTF8.GetBytes($$"""{ {{Part}}, "format": "examdocs/1" }"""), "").Record);
        Assert.Null(EmbeddedRecord.ReadWithin(Encoding.UTF8.GetBytes($$"""{ {{Part}}, {{Part}}, "format": "examdocs/1" }"""), "").Record);
    }

    [Fact]
    public async Task A_notice_with_a_photo_holds_a_part()
    {
        using var workspace = new Workspace();
        var record = Large();
        record.ExaminationOf("CON-07").Observation("cracks")["photo"] = "crack.png";
        using (var bitmap = new SKBitmap(40, 30))
        using (var png = bitmap.Encode(SKEncodedImageFormat.Png, 100))
            await File.WriteAllBytesAsync(
                Path.Combine(workspace.Folder, "crack.png"),
                png.ToArray(),
                TestContext.Current.CancellationToken
            );
        var visit = Checked(record, workspace);
        static PhotoPrint? Photos(Observation o) => o.Photo is null ? null : new PhotoPrint(new byte[] { 1, 2, 3 }, 40, 30);
        var notice = Job(visit, "notice", "CON-07", Photos);
        await using var renderer = new DocumentRenderer();
        Assert.Contains("data:image/jpeg", await notice.DraftAsync(renderer), StringComparison.Ordinal);
        Assert.NotNull((await ContentsAsync(notice, renderer)).Record.PartOf);
    }

    /// <summary>One fleet's mark on every item would have the rules applied to nearly the whole visit for each document.</summary>
    [Fact]
    public async Task A_part_of_more_items_than_a_small_visit_has_is_not_tried()
    {
        using var workspace = new Workspace();
        var record = Large();
        foreach (var item in record.Rows("items").Skip(5))
            item["ownersMark"] = "fleet 1";
        var visit = Checked(record, workspace);
        await using var renderer = new DocumentRenderer();
        var sheet = Job(visit, "check-sheet", (string)record.Rows("items").Last()["id"]!);
        Assert.Null((await ContentsAsync(sheet, renderer)).Record.PartOf);
    }

    [Fact]
    public async Task What_comes_into_reach_by_a_correction_is_not_said_to_have_been_added()
    {
        using var workspace = new Workspace();
        var record = Large();
        var before = Checked(record, workspace);
        record.Item("CON-02-B")["serial"] = (string)record.Item("CON-01")["serial"]!;
        record.Item("CON-03-B")["description"] = "something else";
        var after = Checked(record, workspace);
        await using var renderer = new DocumentRenderer();
        var contents = await ContentsAsync(Job(before, "check-sheet", "CON-01"), renderer);
        Assert.NotNull(contents.Record.PartOf);
        Assert.DoesNotContain(contents.Record.Record!.Items, i => i.Id == "CON-02-B");
        var job = Job(after, "check-sheet", "CON-01");
        Assert.Equal("serial of CON-02-B", Reason(RecordDifference.Between(before.Recorded, after.Recorded)));
        // What is not known is not said.
        Assert.Null(Reason(null));

        string? Reason(IReadOnlyList<RecordChange>? ofVisit) =>
            CorrectionReason.Of(new EarlierDocument(null!, contents, []), job, false, () => ofVisit);
    }

    [Fact]
    public void A_report_of_more_items_than_one_takes_now_can_still_be_made_again_from_its_data()
    {
        var record = Workspace.Example().Only("CON-01");
        var (item, examination) = (record.Item("CON-01"), record.ExaminationOf("CON-01"));
        for (var n = 0; n < ComposeReports.MostItems; n++)
        {
            var (other, looked) = (item.DeepClone(), examination.DeepClone());
            (other["id"], other["serial"], looked["item"]) = ($"CON-{n + 1000}", $"S{n + 1000}", $"CON-{n + 1000}");
            record["items"]!.AsArray().Add(other);
            record["examinations"]!.AsArray().Add(looked);
        }
        using var workspace = new Workspace();
        var visit = Checked(record, workspace);
        var report = ComposeDocuments.Of(visit, false, ReadingDistance.Default).Jobs.First(j => j.Type == DocumentTypes.Report);
        var basis = report.Basis(DocumentJob.Draft(report.Type)) with { Items = [.. visit.Items.Select(i => i.Item.Id!)] };
        var again = RecomposedDocument.Jobs(basis, visit, _ => null, RecomposedDocument.LeftOut(basis, visit));
        Assert.Equal(basis.Items, Assert.Single(again).Items.Select(i => i.Item.Id));
    }

    [Fact]
    public async Task A_copy_for_the_authority_in_another_language_holds_a_part()
    {
        using var workspace = new Workspace();
        var visit = Checked(Large(), workspace);
        var reports = ComposeDocuments.Of(visit, true, ReadingDistance.Default).Jobs.Where(j => j.Copy is not null);
        var copy = reports.First().Copy!(new CopiedReport("R-2026-000001", new string('a', 64))) with { Language = Language.German };
        await using var renderer = new DocumentRenderer();
        var contents = await ContentsAsync(copy, renderer);
        Assert.NotNull(contents.Record.PartOf);
        var again = Assert.Single(RecomposedDocument.Jobs(contents, contents.Determined(KnownRules.BuiltIn)!));
        Assert.Equal(await copy.DraftAsync(renderer), await again.DraftAsync(renderer));
    }

    private static async Task<DocumentContents> ContentsAsync(DocumentJob job, DocumentRenderer renderer)
    {
        var files = await new EmbeddedData(renderer).OfAsync(job, DocumentJob.Draft(job.Type), await job.DraftAsync(renderer));
        return DocumentContents.Read(files[2].Content.ToArray(), files[0].Content.ToArray(), files[1].Content.ToArray()).Contents!;
    }

    private static DocumentJob Job(DeterminedVisit visit, string kind, string item, Func<Observation, PhotoPrint?>? photos = null) =>
        ComposeDocuments
            .Of(visit, false, ReadingDistance.Default, photos)
            .Jobs.First(j => j.Type.Kind == kind && j.Items.Count == 1 && j.Items[0].Item.Id == item);

    private static DeterminedVisit Checked(JsonObject record, Workspace workspace) =>
        CheckRecord.Of(workspace.Write(record), Workspace.Today).Visit!;

    private static JsonObject Large() => EmbeddedPartTests.Twice();
}
