using ExamDocs.Core.Records;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Verifying;

namespace ExamDocs.UseCases.Tests.Issuing;

public sealed class OnRequestTests
{
    [Fact]
    public async Task Records_check_sheets_and_evidence_are_issued_only_where_their_kind_is_asked_for()
    {
        using var workspace = new Workspace();
        var input = workspace.Write(Workspace.Example().Only("CON-01", "CON-07"));
        var all = await workspace.IssueAsync(input);
        Assert.DoesNotContain(all.Documents, d => d.Document.Kind is "record" or "check-sheet" or "evidence");
        foreach (var (kind, letter) in new[] { ("record", 'E'), ("check-sheet", 'S') })
        {
            var result = await IssueDocuments.RunAsync(
                workspace.Request(input) with
                {
                    Only = [kind],
                },
                TestContext.Current.CancellationToken
            );
            Assert.All(result.Documents, d => Assert.Equal((kind, letter), (d.Document.Kind, d.Document.Number[0])));
            Assert.Equal(["CON-01", "CON-07"], result.Documents.Select(d => Assert.Single(d.Document.Items)), StringComparer.Ordinal);
        }
        var evidence = Assert.Single(
            (
                await IssueDocuments.RunAsync(workspace.Request(input) with { Only = ["evidence"] }, TestContext.Current.CancellationToken)
            ).Documents
        );
        Assert.Equal('F', evidence.Document.Number[0]);
        Assert.Equal(["CON-01", "CON-07"], evidence.Document.Items);
        Assert.Contains("case for service", Pdf.Text(workspace.FileOf(evidence)), StringComparison.Ordinal);
        // The report was issued before it, stays as it is, and is not issued once more.
        var again = await workspace.IssueAsync(input);
        Assert.All(again.Documents, d => Assert.False(d.IssuedNow));
        Assert.Contains(
            "on request from the issuer",
            Pdf.Text(workspace.FileOf(again.Documents.First(d => d.Document.Kind == "report"))),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task A_report_names_the_evidence_file_that_was_issued_before_it()
    {
        using var workspace = new Workspace();
        var input = workspace.Write(Workspace.Example().Only("CON-01", "CON-07", "PUL-02"));
        var evidence = Assert.Single(
            (
                await IssueDocuments.RunAsync(workspace.Request(input) with { Only = ["evidence"] }, TestContext.Current.CancellationToken)
            ).Documents
        );
        // Undetermined items, which no report may have, are in it.
        Assert.Equal(["CON-01", "CON-07", "PUL-02"], evidence.Document.Items);
        var reports = (
            await IssueDocuments.RunAsync(workspace.Request(input) with { Only = ["report"] }, TestContext.Current.CancellationToken)
        ).Documents;
        Assert.All(reports, r =>
            Assert.Contains(
                $"evidence file: {evidence.Document.Number}.",
                Pdf.Text(workspace.FileOf(r)).ReplaceLineEndings(" "),
                StringComparison.Ordinal
            )
        );
        var verified = await VerifyDocuments.RunAsync(
            new VerifyRequest
            {
                Browser = OpenBrowser.Instance,
                Files = [.. reports.Append(evidence).Select(workspace.FileOf)],
                RegisterPath = workspace.Register,
                Now = NodaTime.Instant.FromUtc(2026, 5, 13, 9, 0),
            },
            TestContext.Current.CancellationToken
        );
        Assert.All(verified, v => Assert.Equal(Verdict.Valid, v.Verdict));
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
                Only = ["record"],
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
                Only = ["check-sheet"],
            },
            TestContext.Current.CancellationToken
        );

        var stray = result.Documents.Single(d => d.Document.Items.SequenceEqual(["CON-0Z"], StringComparer.Ordinal));
        Assert.Contains("Withdrawn: do not use", Pdf.Text(workspace.FileOf(stray)), StringComparison.Ordinal);
    }
}
