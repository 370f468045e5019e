using System.Globalization;
using System.Text.Json.Nodes;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Documents.Rendering;
using ExamDocs.Templates.Label;
using ExamDocs.Templates.Report;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;

namespace ExamDocs.UseCases.Tests.Issuing;

/// <summary>A visit of more items than one report takes gets several, and each can be made once more from its data.</summary>
public sealed class ReportPartsTests
{
    [Fact]
    public async Task A_thousand_items_are_in_one_report_and_one_more_makes_two_of_nearly_one_size()
    {
        await using var renderer = new DocumentRenderer();
        var one = Assert.Single(Reports(Visit(1000)));
        Assert.Equal(1000, one.Items.Count);
        Assert.DoesNotContain("of this visit.", await one.DraftAsync(renderer), StringComparison.Ordinal);
        var visit = Visit(1001);
        var two = Reports(visit);
        Assert.Equal(visit.Items.Select(i => i.Item.Id), two.SelectMany(j => j.Items).Select(i => i.Item.Id));
        Assert.Equal([501, 500], two.Select(j => j.Items.Count));
        Assert.Contains("Report 1 of 2 of this visit.", await two[0].DraftAsync(renderer), StringComparison.Ordinal);
        Assert.Contains("Report 2 of 2 of this visit.", await two[1].DraftAsync(renderer), StringComparison.Ordinal);
        Assert.All(Reports(visit, perItem: true), j => Assert.Single(j.Items));
        await AssertMadeAgainAsync(two[0], visit, renderer);
        await AssertMadeAgainAsync(two[1], visit, renderer);
        var without = two[1].Without!(LeftOutItems.None with { Items = [two[1].Items[3]] })!;
        Assert.Equal(499, without.Items.Count);
        await AssertMadeAgainAsync(without, visit, renderer);
    }

    /// <summary>One without an answer is in none of them; a reader of any must not take it for fit.</summary>
    [Fact]
    public async Task Each_part_names_what_may_not_be_reported()
    {
        await using var renderer = new DocumentRenderer();
        var visit = Visit(1002, record => record.ExaminationOf("CON-10003")["observations"]!.AsArray().Clear());
        Assert.Equal(Outcome.Undetermined, visit.Items.Single(i => i.Item.Id == "CON-10003").Outcome);
        var reports = Reports(visit);
        Assert.Equal(2, reports.Count);
        Assert.All(reports, r => Assert.DoesNotContain(r.Items, i => i.Item.Id == "CON-10003"));
        foreach (var report in reports)
        {
            var page = await report.DraftAsync(renderer);
            Assert.Contains("CON-10003", page, StringComparison.Ordinal);
            Assert.Contains("not in this report: do not use", page, StringComparison.Ordinal);
        }
    }

    private static async Task AssertMadeAgainAsync(DocumentJob job, DeterminedVisit visit, DocumentRenderer renderer)
    {
        var basis = job.Basis(DocumentJob.Draft(job.Type));
        var again = RecomposedDocument.Jobs(basis, visit, _ => null, RecomposedDocument.LeftOut(basis, visit));
        var pages = new List<string>();
        foreach (var one in again)
            pages.Add(await one.DraftAsync(renderer));
        Assert.Contains(await job.DraftAsync(renderer), pages);
    }

    private static IReadOnlyList<DocumentJob> Reports(DeterminedVisit visit, bool perItem = false) =>
        [.. ComposeDocuments.Of(visit, perItem, ReadingDistance.Default).Jobs.Where(j => j.Type.Kind == "report")];

    private static DeterminedVisit Visit(int items, Action<JsonObject>? edit = null)
    {
        var record = Workspace.Example().Only("CON-01");
        var (item, examination) = (record.Item("CON-01"), record.ExaminationOf("CON-01"));
        for (var n = 1; n < items; n++)
        {
            var id = string.Create(CultureInfo.InvariantCulture, $"CON-1{n:D4}");
            var (other, looked) = (item.DeepClone(), examination.DeepClone());
            (other["id"], other["serial"], looked["item"]) = (id, "S" + id, id);
            record["items"]!.AsArray().Add(other);
            record["examinations"]!.AsArray().Add(looked);
        }
        edit?.Invoke(record);
        using var workspace = new Workspace();
        return CheckRecord.Of(workspace.Write(record), Workspace.Today).Visit!;
    }
}
