using ExamDocs.Core.Records;
using ExamDocs.UseCases.Commands;

namespace ExamDocs.UseCases.Tests.Issuing;

public sealed class OnRequestTests
{
    [Fact]
    public async Task Records_and_check_sheets_are_issued_only_where_their_kind_is_asked_for()
    {
        using var workspace = new Workspace();
        var input = workspace.Write(Workspace.Example().Only("CON-01", "CON-07"));
        var all = await workspace.IssueAsync(input);
        Assert.DoesNotContain(all.Documents, d => d.Document.Kind is "record" or "check-sheet");
        foreach (var (kind, letter) in new[] { ("record", 'E'), ("check-sheet", 'S') })
        {
            var result = await IssueDocuments.RunAsync(
                workspace.Request(input) with
                {
                    Only = kind,
                },
                TestContext.Current.CancellationToken
            );
            Assert.All(result.Documents, d => Assert.Equal((kind, letter), (d.Document.Kind, d.Document.Number[0])));
            Assert.Equal(["CON-01", "CON-07"], result.Documents.Select(d => Assert.Single(d.Document.Items)), StringComparer.Ordinal);
        }
    }

    [Fact]
    public async Task A_record_is_printed_though_its_item_is_undetermined_and_says_so()
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("CON-01");
        record.Item("CON-01")["manufactured"] = "spring";
        var result = await IssueDocuments.RunAsync(
            workspace.Request(workspace.Write(record)) with
            {
                Only = "record",
            },
            TestContext.Current.CancellationToken
        );

        Assert.Equal(Outcome.Undetermined, result.Inputs[0].Visit!.Items.Single().Outcome);
        var text = Pdf.Text(workspace.FileOf(Assert.Single(result.Documents)));
        Assert.Contains("Not determined: do not use", text, StringComparison.Ordinal);
        Assert.Contains("The record of this item has errors", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_danger_under_an_unknown_id_has_a_sheet_of_its_own()
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("CON-01", "CON-07");
        record.ExaminationOf("CON-07")["item"] = "CON-0Z";
        var result = await IssueDocuments.RunAsync(
            workspace.Request(workspace.Write(record)) with
            {
                Only = "check-sheet",
            },
            TestContext.Current.CancellationToken
        );

        var stray = result.Documents.Single(d => d.Document.Items.SequenceEqual(["CON-0Z"], StringComparer.Ordinal));
        Assert.Contains("Withdrawn: do not use", Pdf.Text(workspace.FileOf(stray)), StringComparison.Ordinal);
    }
}
