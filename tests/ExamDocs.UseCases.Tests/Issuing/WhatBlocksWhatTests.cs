using ExamDocs.Core.Records;

namespace ExamDocs.UseCases.Tests.Issuing;

public sealed class WhatBlocksWhatTests
{
    [Fact]
    public async Task A_danger_is_told_though_every_address_is_missing()
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("CON-07");
        foreach (var party in new[] { "employer", "premises", "hiredFrom", "enforcingAuthority" })
            record["visit"]!.AsObject().Remove(party);
        foreach (var person in record.Rows("people"))
        {
            person.Remove("address");
            person.Remove("employer");
        }
        var result = await workspace.IssueAsync(workspace.Write(record));

        Assert.Equal(
            ["notice", "quarantine-label"],
            result.Documents.Select(d => d.Document.Kind).Order(StringComparer.Ordinal),
            StringComparer.Ordinal
        );
        var notice = Pdf.Text(workspace.FileOf(result.Documents.Single(d => d.Document.Kind == "notice")));
        Assert.Contains("CON-07", notice, StringComparison.Ordinal);
        Assert.Contains("not recorded", notice, StringComparison.Ordinal);
        var label = Pdf.Text(workspace.FileOf(result.Documents.Single(d => d.Document.Kind == "quarantine-label")));
        Assert.Contains("DO NOT USE", label, StringComparison.Ordinal);
        Assert.Contains("PAR001", result.Refused.Single().Codes, StringComparer.Ordinal);
    }

    [Theory]
    [InlineData("saw-contact", "clera")]
    [InlineData("cover-cut", "")]
    [InlineData("diameter", "OK")]
    public async Task A_misspelt_answer_gives_a_hold_label_and_no_report(string criterion, string typed)
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("BRG-01");
        record.ExaminationOf("BRG-01").Observation(criterion)["state"] = typed;
        var result = await workspace.IssueAsync(workspace.Write(record));

        Assert.Equal(Outcome.Undetermined, result.Inputs[0].Visit!.Items.Single().Outcome);
        Assert.Equal("quarantine-label", Assert.Single(result.Documents).Document.Kind);
        Assert.Contains("NOT DETERMINED", Pdf.Text(workspace.FileOf(result.Documents[0])), StringComparison.Ordinal);
        Assert.Equal("BRG-01", Assert.Single(result.Refused).Item);
    }

    [Fact]
    public async Task A_kinder_conclusion_withdraws_and_is_not_reported()
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("CON-01");
        var answer = record.ExaminationOf("CON-01").Rows("observations").First();
        (answer["state"], answer["note"]) = ("doubt", "the gate may stick");
        record.ExaminationOf("CON-01")["conclusion"] = "fit";
        var result = await workspace.IssueAsync(workspace.Write(record));

        Assert.Equal(
            ["notice", "quarantine-label"],
            result.Documents.Select(d => d.Document.Kind).Order(StringComparer.Ordinal),
            StringComparer.Ordinal
        );
        Assert.Equal(["CON001", "W2", "U3"], Assert.Single(result.Refused).Codes, StringComparer.Ordinal);
    }

    [Fact]
    public async Task One_bad_row_holds_back_no_other()
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("CON-01", "CON-02");
        record.Item("CON-01")["manufactured"] = "spring";
        var result = await workspace.IssueAsync(workspace.Write(record));

        Assert.Contains(result.Documents, d =>
            d.Document.Kind == "report" && d.Document.Items.SequenceEqual(["CON-02"], StringComparer.Ordinal)
        );
        Assert.Contains(result.Documents, d =>
            d.Document.Kind == "quarantine-label" && d.Document.Items.SequenceEqual(["CON-01"], StringComparer.Ordinal)
        );
    }

    [Theory]
    [InlineData("CON-0Z")]
    [InlineData(null)]
    public async Task A_danger_under_an_unknown_id_is_told_under_the_id_as_typed(string? typed)
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("CON-01", "CON-07");
        record.ExaminationOf("CON-07")["item"] = typed;
        var result = await workspace.IssueAsync(workspace.Write(record));

        var told = result.Documents.Where(d => d.Document.Items.SequenceEqual([typed ?? ""], StringComparer.Ordinal)).ToList();
        Assert.Equal(
            ["notice", "quarantine-label"],
            told.Select(d => d.Document.Kind).Order(StringComparer.Ordinal),
            StringComparer.Ordinal
        );
        Assert.All(told, d => Assert.Contains("DO NOT USE", Pdf.Text(workspace.FileOf(d)), StringComparison.OrdinalIgnoreCase));
        Assert.Equal(Outcome.Undetermined, result.Inputs[0].Visit!.Items.Single(i => i.Item.Id == "CON-07").Outcome);
        Assert.Equal(["CON-01", "CON-07"], result.Inputs[0].Visit!.Items.Select(i => i.Item.Id!), StringComparer.Ordinal);
    }

    [Theory]
    [InlineData("BRG-03", "doubt")]
    [InlineData("HAR-02", "doubt")]
    public async Task No_certificate_where_item_or_part_is_not_fit(string doubted, string state)
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("HAR-02", "BRG-02", "BRG-03");
        var answer = record.ExaminationOf(doubted).Rows("observations").First();
        (answer["state"], answer["note"]) = (state, "not sure");
        record.ExaminationOf(doubted)["conclusion"] = "withdraw";
        var result = await workspace.IssueAsync(workspace.Write(record));

        Assert.DoesNotContain(result.Documents, d => d.Document.Kind == "certificate");
        Assert.Contains(result.Refused, r => r.Item == "HAR-02");
    }

    [Fact]
    public async Task A_renewal_after_the_examination_is_not_certified()
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("HAR-02", "BRG-02", "BRG-03");
        record.Rows("renewals").Single()["doneOn"] = "2026-05-12";
        var result = await workspace.IssueAsync(workspace.Write(record));

        Assert.DoesNotContain(result.Documents, d => d.Document.Kind == "certificate");
        Assert.Contains("REN002", result.Refused.Single(r => r.Item == "HAR-02").Codes, StringComparer.Ordinal);
    }

    [Fact]
    public async Task The_certificate_is_there_where_nothing_stands_against_it()
    {
        using var workspace = new Workspace();
        var result = await workspace.IssueAsync(workspace.Write(Workspace.Example().Only("HAR-02", "BRG-02", "BRG-03")));

        var certificate = Assert.Single(result.Documents, d => d.Document.Kind == "certificate");
        var text = Pdf.Text(workspace.FileOf(certificate));
        Assert.Contains("BRG-03", text, StringComparison.Ordinal);
        Assert.Contains("not the maker", text, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Nothing_is_issued_where_an_input_is_unreadable()
    {
        using var workspace = new Workspace();
        var broken = Path.Combine(workspace.Folder, "broken.json");
        await File.WriteAllTextAsync(broken, "{", TestContext.Current.CancellationToken);
        var result = await workspace.IssueAsync(workspace.Write(Workspace.Example().Only("CON-01")), broken);

        Assert.Empty(result.Documents);
        Assert.NotNull(result.Inputs[1].Unreadable);
        Assert.False(Directory.Exists(workspace.Out));
        Assert.False(File.Exists(workspace.Register));
    }
}
