using System.Text.Json.Nodes;

namespace ExamDocs.Cli.Tests;

/// <summary><c>examdocs blank</c>, <c>criteria</c> and <c>rules</c>: what one works from.</summary>
public sealed class ReferenceTests : IDisposable
{
    private readonly Examdocs _examdocs = new();

    [Fact]
    public async Task A_workbook_from_a_record_with_its_answers_checks_as_the_record_does()
    {
        var blank = await _examdocs.RunAsync(
            "blank",
            "--out",
            "cut.xlsx",
            "--from",
            Records.Cut().Write(_examdocs, "cut.json"),
            "--answers"
        );
        var check = await _examdocs.RunAsync("check", "cut.xlsx");

        Assert.Equal(new Run(0, _examdocs.At("cut.xlsx") + Environment.NewLine, ""), blank);
        Assert.Equal(0, check.ExitCode);
        Assert.Contains("0 fit, 0 fit-until, 0 undetermined, 1 withdraw", check.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_empty_workbook_is_readable_and_passes_nothing()
    {
        await _examdocs.RunAsync("blank", "--out", "empty.xlsx", "--category", "harness", "--category", "rope-bridge");
        var check = await _examdocs.RunAsync("check", "empty.xlsx");

        Assert.Equal(1, check.ExitCode);
        Assert.Contains("0 fit, 0 fit-until", check.Out, StringComparison.Ordinal);
        Assert.Contains("empty.xlsx, sheet Visit", check.Err, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Check_sheets_from_a_record_are_numbered_and_kept()
    {
        var visit = Records.Cut().Write(_examdocs, "cut.json");
        var first = await _examdocs.RunAsync("blank", "--out", "pile.pdf", "--from", visit);
        var again = await _examdocs.RunAsync("blank", "--out", "pile.pdf", "--from", visit, "--replace");

        Assert.Equal(0, first.ExitCode);
        Assert.EndsWith(_examdocs.At("pile.pdf") + Environment.NewLine, first.Out, StringComparison.Ordinal);
        Assert.StartsWith("S-", first.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("issued before", first.Out, StringComparison.Ordinal);
        Assert.Equal(first.Out.Split(' ')[0], again.Out.Split(' ')[0]);
        Assert.Contains("(issued before)", again.Out, StringComparison.Ordinal);
        // The pile alone is left; the register keeps the single sheets.
        Assert.Equal(["cut.json", "pile.pdf"], _examdocs.Files());
        await _examdocs.RunAsync("register", "export", "--out", "all");
        Assert.True(File.Exists(_examdocs.At(Path.Combine("all", "documents", $"{first.Out.Split(' ')[0]}.pdf"))));
    }

    [Fact]
    public async Task Sheets_for_a_first_visit_open_no_register_and_hold_as_many_pages_as_items()
    {
        var run = await _examdocs.RunAsync("blank", "--out", "first.pdf", "--items", "rope-bridge=2,connector=3", "--language", "de");

        Assert.Equal(new Run(0, _examdocs.At("first.pdf") + Environment.NewLine, ""), run);
        Assert.Equal(["first.pdf"], _examdocs.Files());
        Assert.Equal(
            2 + 5,
            ExamDocs.Documents.ReadingBack.PdfPages.Count(
                await File.ReadAllBytesAsync(_examdocs.At("first.pdf"), TestContext.Current.CancellationToken)
            )
        );
        Assert.Contains("first.pdf", (await _examdocs.RunAsync("blank", "--out", "first.pdf")).Err, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_misread_record_is_not_handed_on()
    {
        var record = Records.Small();
        Records.SetState(record, "saw-contact", "clera");

        var run = await _examdocs.RunAsync("blank", "--out", "b.xlsx", "--from", record.Write(_examdocs, "visit.json"), "--answers");

        Assert.Equal(2, run.ExitCode);
        Assert.Contains("visit.json#/examinations/0/observations/2/state", run.Err, StringComparison.Ordinal);
        Assert.False(File.Exists(_examdocs.At("b.xlsx")));
    }

    [Fact]
    public async Task Criteria_of_one_category_in_words_and_as_json()
    {
        var words = await _examdocs.RunAsync("criteria", "--category", "rope-bridge");
        var json = await _examdocs.RunAsync("criteria", "--category", "rope-bridge", "--json");

        Assert.Equal((0, 0), (words.ExitCode, json.ExitCode));
        Assert.Contains("saw-contact: ", words.Out, StringComparison.Ordinal);
        Assert.Contains("answers: clear, no-sign, not-examined, doubt, defect", words.Out, StringComparison.Ordinal);
        Assert.Contains("saw-contact", JsonNode.Parse(json.Out)!.ToJsonString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Rules_in_a_list_one_in_full_and_as_json()
    {
        var list = await _examdocs.RunAsync("rules");
        var one = await _examdocs.RunAsync("rules", "W1");
        var json = await _examdocs.RunAsync("rules", "--json");

        Assert.Equal((0, 0, 0), (list.ExitCode, one.ExitCode, json.ExitCode));
        Assert.All(["W10", "U0", "D3", "PAR005", "INT001"], code => Assert.Matches($@"(?m)^{code}\s", list.Out));
        Assert.Contains("Outcome: withdraw", one.Out, StringComparison.Ordinal);
        Assert.NotNull(JsonNode.Parse(json.Out));
    }

    public void Dispose() => _examdocs.Dispose();
}
