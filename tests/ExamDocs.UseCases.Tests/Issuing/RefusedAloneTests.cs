using System.Text.Json.Nodes;
using ExamDocs.Register;
using ExamDocs.Templates;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Verifying;
using NodaTime;

namespace ExamDocs.UseCases.Tests.Issuing;

/// <summary>
/// An item that cannot be printed whole is refused alone; the others of its schedule are printed, and every danger is told.
/// </summary>
public sealed class RefusedAloneTests(ExampleIssued example)
{
    /// <summary>A letter that no font has.</summary>
    private const string NoGlyph = "\U00030EDE";

    [Theory]
    [InlineData("description")]
    [InlineData("note")]
    [InlineData("tests")]
    public async Task An_item_with_a_letter_that_no_font_has_is_refused_alone(string where)
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("CON-01", "CON-03", "CON-07");
        var id = Spoil(record, "CON-01", where);
        var result = await workspace.IssueAsync(workspace.Write(record));

        Assert.Null(result.Failure);
        Assert.Contains(result.Refused, r => r.Item == id && r.Codes.SequenceEqual(["PRN001"]));
        var report = Assert.Single(result.Documents, d => d.Document.Kind == "report" && d.CopyOf is null);
        Assert.Equal(["CON-03", "CON-07"], report.Document.Items);
        Assert.DoesNotContain(result.Documents, d => d.Document.Kind == "due-label" && d.Document.Items.Contains(id));
        Assert.Contains(result.Documents, d => d.Document.Kind == "due-label" && d.Document.Items.Contains("CON-03"));
        Assert.Contains(result.Unprintable, u =>
            u.Contains($"report of {id}: ", StringComparison.Ordinal) && u.Contains("it is refused alone", StringComparison.Ordinal)
        );
        await AssertVerifiesAsync(workspace, result);
    }

    [Fact]
    public async Task A_withdrawn_item_that_is_refused_alone_keeps_its_label_and_its_notice()
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("CON-01", "CON-07");
        Spoil(record, "CON-07", "description");
        var result = await workspace.IssueAsync(workspace.Write(record));

        Assert.Contains(result.Documents, d => d.Document.Kind == "quarantine-label" && d.Document.Items.Contains("CON-07"));
        Assert.Contains(result.Documents, d => d.Document.Kind == "notice" && d.Document.Items.Contains("CON-07"));
        Assert.Equal(["CON-01"], Assert.Single(result.Documents, d => d.Document.Kind == "report").Document.Items);
        Assert.Contains(
            "CON-07",
            Pdf.Text(workspace.FileOf(Assert.Single(result.Documents, d => d.Document.Kind == "report"))),
            StringComparison.Ordinal
        );
        await AssertVerifiesAsync(workspace, result);
    }

    /// <summary>
    /// Such an id is an error by itself, so that the item is not reported; a schedule says so of it by its place in the record.
    /// </summary>
    [Theory]
    [InlineData("id")]
    [InlineData("serial")]
    public async Task An_item_not_reported_whose_id_no_font_can_print_holds_no_other_back(string where)
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("CON-01", "CON-03", "CON-07");
        var id = Spoil(record, "CON-01", where);
        var result = await workspace.IssueAsync(workspace.Write(record));
        var report = Assert.Single(result.Documents, d => d.Document.Kind == "report" && d.CopyOf is null);
        Assert.Equal(["CON-03", "CON-07"], report.Document.Items);
        Assert.Contains(result.Refused, r => r.Item == id);
        if (where == "id")
            Assert.Contains("#1", Pdf.Text(workspace.FileOf(report)), StringComparison.Ordinal);
        await AssertVerifiesAsync(workspace, result);
    }

    [Fact]
    public async Task What_belongs_to_no_item_holds_all_back()
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("CON-01", "CON-03", "CON-07");
        record["visit"]!["employer"]!["name"] = "Yard " + NoGlyph;
        var result = await workspace.IssueAsync(workspace.Write(record));
        Assert.DoesNotContain(result.Documents, d => d.Document.Kind == "report");
        Assert.Contains(result.Documents, d => d.Document.Kind == "quarantine-label");
    }

    /// <summary>A cut within one item's block; the number of the failed print is void and is not given again.</summary>
    [Fact]
    public async Task An_item_whose_part_is_cut_is_refused_alone_and_the_number_is_void()
    {
        using var workspace = new Workspace();
        Directory.CreateDirectory(workspace.Out);
        using var register = DocumentRegister.Open(workspace.Register);
        await using var prints = new PrintRun(register, new Corrections(register, reason: null), workspace.Out, Workspace.Today);
        var asked = ComposeDocuments
            .Of(example.Visit, perItem: false, Templates.Label.ReadingDistance.Default)
            .Jobs.Where(j => j.Type == DocumentTypes.Report && j.Items.Count > 3)
            .MinBy(j => j.Items.Count)!;
        var spoilt = asked.Items[2].Item.Id!;
        Assert.Null(await prints.RunAsync([Cut(asked, spoilt)], TestContext.Current.CancellationToken));

        Assert.True(prints.Refused.Count == 1, string.Join('\n', prints.Unprintable));
        Assert.Equal(spoilt, Assert.Single(prints.Refused).Item);
        Assert.Equal(["PRN002"], prints.Refused[0].Codes);
        var report = Assert.Single(prints.Documents, d => d.CopyOf is null && d.Document.Kind == "report");
        Assert.DoesNotContain(spoilt, report.Document.Items);
        Assert.Equal(asked.Items.Count - 1, report.Document.Items.Count);
        var voided = Assert.Single(register.Voided());
        Assert.NotEqual(voided.Number, report.Document.Number);
        Assert.Contains($"report of {spoilt}: ", Assert.Single(prints.Unprintable), StringComparison.Ordinal);
        Assert.Matches(" cut off on page | is not printed whole", prints.Unprintable[0]);
    }

    /// <summary>The job with a text in one item's block or line cut, also where it is made without others.</summary>
    private static DocumentJob Cut(DocumentJob job, string item) =>
        job with
        {
            Compose = async (renderer, identity) => Cut(await job.Compose(renderer, identity), item),
            Without = less => job.Without!(less) is { } rest ? Cut(rest, item) : null,
        };

    private static string Cut(string html, string item)
    {
        string[] before = [$"<h3>{item}</h3><p", $"class=\"id\">{item}</th>"];
        var at = before.Select(b => html.LastIndexOf(b, StringComparison.Ordinal) is var found and >= 0 ? found + b.Length : -1).ToList();
        if (at[0] >= 0)
            return html.Insert(at[0], " style='width:2mm;overflow:hidden;white-space:nowrap'");
        // Named on the first page as not reported: then there is nothing to cut.
        return at[1] >= 0 && html.LastIndexOf("tbody class=\"group\"", at[1], StringComparison.Ordinal) >= 0
            ? html.Insert(
                html.IndexOf("<td>", at[1], StringComparison.Ordinal) + "<td>".Length,
                "<div style='width:2mm;overflow:hidden;white-space:nowrap'>"
            )
            : html;
    }

    private static string Spoil(JsonObject record, string id, string where)
    {
        if (where == "tests")
        {
            record.ExaminationOf(id)["tests"] = new JsonArray(new JsonObject { ["description"] = "Hung", ["result"] = "Held " + NoGlyph });
            return id;
        }
        if (where == "note")
        {
            record.ExaminationOf(id).Rows("observations").First()["note"] = "Mark " + NoGlyph;
            record.ExaminationOf(id).Rows("observations").First()["state"] = "noted";
            return id;
        }
        var renamed = where == "id" ? id + NoGlyph : id;
        foreach (var examination in record.Rows("examinations").Where(e => (string?)e["item"] == id))
            examination["item"] = renamed;
        record.Item(id)[where] = where == "id" ? renamed : "Kit " + NoGlyph;
        return renamed;
    }

    private static async Task AssertVerifiesAsync(Workspace workspace, IssueResult result)
    {
        var verified = await VerifyDocuments.RunAsync(
            new VerifyRequest
            {
                Browser = OpenBrowser.Instance,
                Files = [.. result.Documents.Where(d => d.Document.Kind == "report").Select(workspace.FileOf)],
                RegisterPath = workspace.Register,
                Now = Instant.FromUtc(2026, 5, 13, 9, 0),
            },
            TestContext.Current.CancellationToken
        );
        Assert.Equal(
            "",
            string.Join('\n', verified.SelectMany(v => v.Statements.Where(s => s.Answer is Answer.Fails).Select(s => s.Text)))
        );
        Assert.All(verified, v => Assert.Equal(Verdict.Valid, v.Verdict));
    }
}
