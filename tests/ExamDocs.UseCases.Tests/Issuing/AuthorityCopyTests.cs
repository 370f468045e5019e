using System.Text.Json;
using ExamDocs.UseCases.Commands;

namespace ExamDocs.UseCases.Tests.Issuing;

public sealed class AuthorityCopyTests
{
    [Fact]
    public async Task Where_a_risk_is_imminent_a_copy_is_issued_after_its_report_under_a_number_of_its_own()
    {
        using var workspace = new Workspace();
        var input = workspace.Write(Workspace.Example().Only("CON-01", "CON-07"));
        var result = await workspace.IssueAsync(input);
        var reports = result.Documents.Where(d => d.Document.Kind == "report").ToList();

        Assert.Equal(["R-2026-000001", "R-2026-000002"], reports.Select(r => r.Document.Number), StringComparer.Ordinal);
        Assert.Equal([null, "R-2026-000001"], reports.Select(r => r.CopyOf), StringComparer.Ordinal);
        Assert.Equal(reports[0].Document.Items, reports[1].Document.Items, StringComparer.Ordinal);
        Assert.Equal(reports[0].Document.OutcomesJson, reports[1].Document.OutcomesJson);
        var text = Pdf.Squeeze(Pdf.Text(workspace.FileOf(reports[1])));
        Assert.Contains(Pdf.Squeeze("Copy of report R-2026-000001, for the enforcing authority"), text, StringComparison.Ordinal);
        Assert.Contains(reports[0].Document.Sha256, text, StringComparison.Ordinal);
        using var list = JsonDocument.Parse(
            await File.ReadAllBytesAsync(Path.Combine(workspace.Out, "documents.json"), TestContext.Current.CancellationToken)
        );
        Assert.Equal(
            "R-2026-000001",
            list.RootElement.GetProperty("documents")
                .EnumerateArray()
                .Single(d => d.TryGetProperty("copyOf", out _))
                .GetProperty("copyOf")
                .GetString()
        );
    }

    [Fact]
    public async Task A_second_run_finds_report_and_copy_and_takes_no_new_number()
    {
        using var workspace = new Workspace();
        var input = workspace.Write(Workspace.Example().Only("CON-07"));
        var first = await workspace.IssueAsync(input);
        var second = await IssueDocuments.RunAsync(
            workspace.Request(input) with
            {
                Today = Workspace.Today.PlusDays(3),
            },
            TestContext.Current.CancellationToken
        );

        Assert.Equal(
            first.Documents.Select(d => d.Document.Number),
            second.Documents.Select(d => d.Document.Number),
            StringComparer.Ordinal
        );
        Assert.All(second.Documents, d => Assert.False(d.IssuedNow));
        Assert.Equal(first.Documents.Select(d => d.CopyOf), second.Documents.Select(d => d.CopyOf), StringComparer.Ordinal);
    }

    [Fact]
    public async Task There_is_no_copy_where_the_report_is_not_issued_and_the_notice_is_all_the_same()
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("CON-07");
        record["visit"]!.AsObject().Remove("enforcingAuthority");
        var result = await workspace.IssueAsync(workspace.Write(record));

        Assert.DoesNotContain(result.Documents, d => d.Document.Kind == "report");
        Assert.Contains(result.Documents, d => d.Document.Kind == "notice");
    }

    [Fact]
    public async Task A_report_held_back_in_print_has_no_copy()
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("CON-07");
        record.Item("CON-07")["model"] = "Bow \U00030EDE";
        var result = await workspace.IssueAsync(workspace.Write(record));

        Assert.Contains("PRN001", result.Refused.Single().Codes, StringComparer.Ordinal);
        Assert.DoesNotContain(result.Documents, d => d.Document.Kind == "report");
        Assert.NotEmpty(result.Documents);
    }

    [Fact]
    public async Task Only_the_report_with_the_risk_is_copied()
    {
        using var workspace = new Workspace();
        var input = workspace.Write(Workspace.Example().Only("CON-01", "CON-02", "CON-07"));
        var result = await IssueDocuments.RunAsync(
            workspace.Request(input) with
            {
                PerItem = true,
                Only = ["report"],
            },
            TestContext.Current.CancellationToken
        );

        Assert.Equal(4, result.Documents.Count);
        Assert.Equal(["CON-07"], Assert.Single(result.Documents, d => d.CopyOf is not null).Document.Items, StringComparer.Ordinal);
    }

    [Fact]
    public async Task A_law_that_names_no_such_duty_calls_for_no_copy()
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("CON-07");
        record["visit"]!["regime"] = "eu-en365";
        var result = await IssueDocuments.RunAsync(
            workspace.Request(workspace.Write(record)) with
            {
                Only = ["report"],
            },
            TestContext.Current.CancellationToken
        );

        Assert.Null(Assert.Single(result.Documents).CopyOf);
    }

    /// <summary>The examination's own law takes nothing from the visit's.</summary>
    [Theory]
    [InlineData("eu-en365")]
    [InlineData("de")]
    [InlineData("fr")]
    public async Task The_duty_of_the_visits_law_stays_where_the_examination_names_another(string own)
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("CON-07");
        record.ExaminationOf("CON-07")["regime"] = own;
        var result = await IssueDocuments.RunAsync(
            workspace.Request(workspace.Write(record)) with
            {
                Only = ["report"],
            },
            TestContext.Current.CancellationToken
        );

        Assert.Equal(["R-2026-000001"], result.Documents.Select(d => d.CopyOf).OfType<string>());
    }
}
