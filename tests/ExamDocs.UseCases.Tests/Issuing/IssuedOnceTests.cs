using ExamDocs.UseCases.Commands;

namespace ExamDocs.UseCases.Tests.Issuing;

public sealed class IssuedOnceTests
{
    [Fact]
    public async Task The_same_record_again_issues_nothing_new_and_puts_back_what_is_missing()
    {
        using var workspace = new Workspace();
        var input = workspace.Write(Workspace.Example().Only("CON-07"));
        var first = await workspace.IssueAsync(input);
        var lost = workspace.FileOf(first.Documents[0]);
        var bytes = await File.ReadAllBytesAsync(lost, TestContext.Current.CancellationToken);
        File.Delete(lost);

        var second = await IssueDocuments.RunAsync(
            workspace.Request(input) with
            {
                Today = Workspace.Today.PlusDays(3),
            },
            TestContext.Current.CancellationToken
        );

        Assert.All(first.Documents, d => Assert.True(d.IssuedNow));
        Assert.All(second.Documents, d => Assert.False(d.IssuedNow));
        Assert.Equal(
            first.Documents.Select(d => d.Document.Number),
            second.Documents.Select(d => d.Document.Number),
            StringComparer.Ordinal
        );
        Assert.Equal(bytes, await File.ReadAllBytesAsync(lost, TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_corrected_record_takes_new_numbers_only_for_what_it_changes()
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("CON-07", "COR-03");
        var first = await workspace.IssueAsync(workspace.Write(record));
        record.Item("COR-03")["description"] = "Hitch cord 10 mm, sewn eyes, 85 cm";
        var second = await workspace.IssueAsync(workspace.Write(record));

        var again = second.Documents.Where(d => d.IssuedNow).SelectMany(d => d.Document.Items).Distinct(StringComparer.Ordinal);
        Assert.Contains("COR-03", again, StringComparer.Ordinal);
        Assert.All(second.Documents.Where(d => d.Document.Items.SequenceEqual(["CON-07"], StringComparer.Ordinal)), d =>
            Assert.False(d.IssuedNow)
        );
        // What was replaced lies apart, and nothing is lost.
        Assert.All(first.Documents, d =>
            Assert.True(File.Exists(workspace.FileOf(d)) != File.Exists(Path.Combine(workspace.Out, "replaced", d.Document.FileName)))
        );
        Assert.All(second.Documents, d => Assert.True(File.Exists(workspace.FileOf(d))));
    }

    [Fact]
    public async Task Json_and_workbook_of_one_visit_are_one_record()
    {
        using var workspace = new Workspace();
        var json = await IssueDocuments.RunAsync(
            workspace.Request(Workspace.ExampleJson) with
            {
                Only = ["quarantine-label"],
            },
            TestContext.Current.CancellationToken
        );
        var workbook = await IssueDocuments.RunAsync(
            workspace.Request(Workspace.ExampleWorkbook) with
            {
                Only = ["quarantine-label"],
            },
            TestContext.Current.CancellationToken
        );

        Assert.NotEmpty(json.Documents);
        Assert.All(workbook.Documents, d => Assert.False(d.IssuedNow));
        Assert.Equal(
            json.Documents.Select(d => d.Document.Number).Order(StringComparer.Ordinal),
            workbook.Documents.Select(d => d.Document.Number).Order(StringComparer.Ordinal),
            StringComparer.Ordinal
        );
    }
}
