namespace ExamDocs.Cli.Tests;

/// <summary><c>examdocs check</c>: exit codes, streams, and that it leaves nothing behind.</summary>
public sealed class CheckTests : IDisposable
{
    private readonly Examdocs _examdocs = new();

    [Fact]
    public async Task A_good_record_is_0()
    {
        var run = await _examdocs.RunAsync("check", Records.Small().Write(_examdocs, "visit.json"));

        Assert.Equal(0, run.ExitCode);
        Assert.Contains("1 fit, 0 fit-until, 0 undetermined, 0 withdraw", run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("error", run.Err, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_clean_withdrawal_is_a_result_and_no_failure()
    {
        var run = await _examdocs.RunAsync("check", Records.Cut().Write(_examdocs, "visit.json"));

        Assert.Equal(0, run.ExitCode);
        Assert.Contains("WITHDRAW", run.Out, StringComparison.Ordinal);
        Assert.Contains("W1", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_error_is_1_on_standard_error_and_the_rest_is_done()
    {
        var record = Records.Small();
        record["visit"]!["premises"]!["address"] = "";

        var run = await _examdocs.RunAsync("check", record.Write(_examdocs, "visit.json"));

        Assert.Equal(1, run.ExitCode);
        Assert.Matches(@"(?m)^visit\.json\n    error at #/visit/premises/address: .+\.\n      .+ \[PAR002\]$", run.Err);
        Assert.Contains("UNDETERMINED", run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("error", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Quiet_says_errors_and_nothing_else()
    {
        var good = await _examdocs.RunAsync("check", Records.ExampleJson, "--quiet");
        var record = Records.Small();
        record["visit"]!["reference"] = "";
        record["items"]![0]!["manufactured"] = "";
        var bad = await _examdocs.RunAsync("check", record.Write(_examdocs, "bad.json"), "--quiet");

        Assert.Equal(new Run(0, "", ""), good);
        Assert.Equal(1, bad.ExitCode);
        Assert.Empty(bad.Out);
        Assert.StartsWith("    error at #/visit/reference: ", Assert.Single(bad.Findings()), StringComparison.Ordinal);
        Assert.Equal(3, bad.Err.TrimEnd().Split('\n').Length);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("1")]
    public async Task A_pipe_gets_no_escape_sequences_and_an_item_one_line(string? noColour)
    {
        using Examdocs examdocs = new(apart: true);
        if (noColour is not null)
            examdocs.With("NO_COLOR", noColour);
        var record = Records.Cut();
        var id = new string('C', 80);
        record["items"]![0]!["id"] = id;
        record["examinations"]![0]!["item"] = id;

        var run = await examdocs.RunAsync("check", record.Write(examdocs, "visit.json"));

        Assert.DoesNotContain('\u001b', run.Out + run.Err);
        Assert.Single(run.Out.Split('\n'), line =>
            line.Contains(id, StringComparison.Ordinal) && line.Contains("WITHDRAW", StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task It_makes_no_register_and_says_where_the_one_named_is_missing()
    {
        var visit = Records.Cut().Write(_examdocs, "visit.json");
        _examdocs.With("EXAMDOCS_REGISTER", _examdocs.At("environment.db"));

        var named = await _examdocs.RunAsync("check", visit);
        var asked = await _examdocs.RunAsync("check", visit, "--register", "none.db");
        _examdocs.Without("EXAMDOCS_REGISTER");
        var unasked = await _examdocs.RunAsync("check", visit);

        Assert.Equal((2, 2, 0), (named.ExitCode, asked.ExitCode, unasked.ExitCode));
        Assert.Contains("environment.db, which EXAMDOCS_REGISTER names", named.Err, StringComparison.Ordinal);
        Assert.Contains("no register at none.db, which --register names", asked.Err, StringComparison.Ordinal);
        Assert.Contains("No register was asked for earlier records", unasked.Err, StringComparison.Ordinal);
        Assert.Equal(["visit.json"], _examdocs.Files());
        Assert.False(File.Exists(_examdocs.DefaultRegister));
    }

    [Fact]
    public async Task One_unreadable_input_is_2_and_the_other_is_still_checked()
    {
        File.WriteAllText(_examdocs.At("torn.json"), "{ \"format\": ");

        var run = await _examdocs.RunAsync("check", "torn.json", Records.Cut().Write(_examdocs, "visit.json"), "none.xlsx", ".");

        Assert.Equal(2, run.ExitCode);
        Assert.Contains("torn.json: unreadable: ", run.Err, StringComparison.Ordinal);
        Assert.Contains("none.xlsx: unreadable: there is no such file", run.Err, StringComparison.Ordinal);
        Assert.Contains(".: unreadable: there is no workbook (.xlsx) and no .csv file in the folder", run.Err, StringComparison.Ordinal);
        Assert.Contains("1 withdraw", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_findings_file_that_cannot_be_written_is_2_in_one_sentence()
    {
        File.WriteAllText(_examdocs.At("file"), "");

        var run = await _examdocs.RunAsync("check", Records.Small().Write(_examdocs, "visit.json"), "--json", "file/findings.json");

        Assert.Equal((2, ""), (run.ExitCode, run.Out));
        Assert.Equal("file is a file, and a folder is needed there: name another folder", run.Err.Trim());
    }

    public void Dispose() => _examdocs.Dispose();
}
