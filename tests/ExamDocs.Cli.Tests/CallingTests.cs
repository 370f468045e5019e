namespace ExamDocs.Cli.Tests;

/// <summary>How the program is called, and what it says where it is called wrongly.</summary>
public sealed class CallingTests : IDisposable
{
    private readonly Examdocs _examdocs = new();

    [Theory]
    [InlineData("check", "INPUT", "--json", "--annotate", "--replace")]
    [InlineData("verify", "FILE", "--json", "--replace")]
    [InlineData(
        "issue",
        "INPUT",
        "--out",
        "--per-item",
        "--names",
        "{employer}",
        "--for",
        "authority",
        "--only",
        "certificate",
        "quarantine-label",
        "due-label",
        "--read-from",
        "--sign-factor"
    )]
    [InlineData(
        "label",
        "NUMBER",
        "--out",
        "--replace",
        "--stock",
        "--only",
        "--start",
        "--offset",
        "--crop-marks",
        "--black",
        "--read-from",
        "--sign-factor",
        "a4-2",
        "a4-24",
        "tag-86x54",
        "roll-76x38"
    )]
    [InlineData("blank", "--out", "--form", "--replace", "--category", "--items", "--from", "--answers")]
    [InlineData("criteria", "--category", "--json")]
    [InlineData("rules", "CODE", "--json")]
    public async Task Help_names_every_option(string command, params string[] named)
    {
        var run = await _examdocs.RunAsync(command, "--help");

        Assert.Equal(0, run.ExitCode);
        Assert.Empty(run.Err);
        Assert.All(named.Concat(["--register", "--language", "--quiet"]), option =>
            Assert.Contains(option, run.Out, StringComparison.Ordinal)
        );
        Assert.Empty(_examdocs.Files());
    }

    [Fact]
    public async Task Help_of_the_program_names_every_command()
    {
        using Examdocs examdocs = new(apart: true);
        var run = await examdocs.RunAsync("--help");

        Assert.Equal(0, run.ExitCode);
        Assert.All(["check", "issue", "label", "blank", "criteria", "rules"], c =>
            Assert.Contains($"  {c}", run.Out, StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task The_program_hands_on_its_exit_code_and_both_streams()
    {
        using Examdocs examdocs = new(apart: true);

        var refused = await examdocs.RunAsync("rules", "PAR999");
        var told = await examdocs.RunAsync("rules", "PAR026");

        Assert.Equal((2, ""), (refused.ExitCode, refused.Out));
        Assert.Contains("PAR999", refused.Err, StringComparison.Ordinal);
        Assert.Equal((0, ""), (told.ExitCode, told.Err));
        Assert.Contains("PAR026", told.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "Required command")]
    [InlineData("chekc visit.json", "There is no command 'chekc'. Did you mean 'check'?")]
    [InlineData("chek visit.json --json f.json", "There is no command 'chek'. Did you mean 'check'?")]
    [InlineData("register imprt visit.json", "There is no command 'imprt'. Did you mean 'import'?")]
    [InlineData("register nonsense", "There is no command 'nonsense'.")]
    [InlineData("check visit.json --anotate f.xlsx", "There is no option '--anotate'. Did you mean '--annotate'?")]
    [InlineData("check visit.json --langauge=de", "There is no option '--langauge'. Did you mean '--language'?")]
    [InlineData("label visit.json --ofset 1,2 --out l.pdf", "There is no option '--ofset'. Did you mean '--offset'?")]
    [InlineData("register backup --replac --out c.db", "There is no option '--replac'. Did you mean '--replace'?")]
    [InlineData("check", "INPUT")]
    [InlineData("check visit.json --jsn f.json", "There is no option '--jsn'.")]
    [InlineData("check visit.json --language nl", "'nl'")]
    [InlineData("issue visit.json", "--out")]
    [InlineData("issue visit.json --out o --only diploma", "'diploma'")]
    [InlineData("issue visit.json --out o --names {owner}", "there is no {owner}; known are {number}, {kind}, {employer}")]
    [InlineData("issue visit.json --out o --names a/{number}", "it makes names of files, not folders")]
    [InlineData("issue visit.json --out o --for boss", "'boss'")]
    [InlineData("issue visit.json --out o --for owner --only report", "leave --only out")]
    [InlineData("issue visit.json --out o --force", "There is no option '--force'.")]
    [InlineData("label visit.json", "--out")]
    [InlineData("label --out l.pdf", "a record or the number of a label, or --by-hand N")]
    [InlineData("label visit.json --by-hand 2 --out l.pdf", "without any record or number")]
    [InlineData("label --by-hand 501 --out l.pdf", "from 1 to 500")]
    [InlineData("label --by-hand 2 --stock small-38x21 --out l.pdf", "tags to fill in by hand are 100 x 150 mm")]
    [InlineData("label visit.json --out l.pdf --stock a5", "'a5'")]
    [InlineData("label visit.json --out l.pdf --start 3", "places 1 to 2")]
    [InlineData("label visit.json --out l.pdf --start 0", "places 1 to 2")]
    [InlineData("label visit.json --out l.pdf --stock a4-4 --start 5", "places 1 to 4")]
    [InlineData("label visit.json --out l.pdf --offset 1,5,2", "two numbers of millimetres")]
    [InlineData("label visit.json --out l.pdf --stock a4-24 --crop-marks", "no margins of 4 mm for crop marks")]
    [InlineData("label visit.json --out l.pdf --stock a4-24 --only quarantine-label", "stock a4-24 is for due-label")]
    [InlineData("label visit.json --out l.pdf --stock none.json", "none.json: there is no such file")]
    [InlineData("label visit.json --out l.pdf --stock visit.json", "visit.json: labelWidthMm is missing")]
    [InlineData("label visit.json --out l.pdf --only report", "'report'")]
    [InlineData("label visit.json --out l.pdf --read-from far", "take a number")]
    [InlineData("label visit.json --out l.pdf --sign-factor 10", "a sign of 158 mm")]
    [InlineData("issue visit.json --out o --read-from 9", "does not fit on a label of 100 x 150 mm")]
    [InlineData("label Q-2026-000099 --out l.pdf", "Q-2026-000099 is no label")]
    [InlineData("blank", "--out")]
    [InlineData("blank --out b.xlsx --category rope-brige", "'rope-brige'")]
    [InlineData("blank --out b.xlsx --from none.json", "there is no such file")]
    [InlineData("blank --out b.pdf --items rope-bridge", "'rope-bridge' is no category with a number; write it like rope-bridge=3")]
    [InlineData("blank --out b.pdf --items rope-bridge=0", "'rope-bridge=0' is no category with a number")]
    [InlineData("blank --out b.pdf --items rope-brige=1", "there is no category 'rope-brige'")]
    [InlineData("blank --out b.pdf --items connector=300,harness=201", "more than 500 items")]
    [InlineData("blank --out b.pdf --items connector=1 --from visit.json", "--items is for a first visit")]
    [InlineData("blank --out b.xlsx --items connector=1", "--items counts check sheets")]
    [InlineData("blank --out b.pdf --known", "--known fills in a workbook")]
    [InlineData("blank --out b.pdf --sign visit.json", "empty forms")]
    [InlineData("blank --out b.pdf --from visit.json --answers", "ticks none")]
    [InlineData("blank --out b.pdf --from none.json", "there is no such file")]
    [InlineData("blank --form b.html --out b.xlsx", "or a form with --form")]
    [InlineData("blank --form b.txt", "name it with .html at the end")]
    [InlineData("blank --form b.html --from visit.json --answers", "nothing is answered beforehand")]
    [InlineData("blank --form b.html --from none.json", "there is no such file")]
    [InlineData("criteria --category rope-brige", "Did you mean 'rope-bridge'?")]
    [InlineData("rules PAR999", "PAR999")]
    [InlineData("rules --jason", "There is no option '--jason'.")]
    public async Task A_wrong_call_is_refused_by_name(string line, string named)
    {
        Records.Small().Write(_examdocs, "visit.json");

        var run = await _examdocs.RunAsync(line.Split(' ', StringSplitOptions.RemoveEmptyEntries));

        Assert.Equal(2, run.ExitCode);
        Assert.Empty(run.Out);
        Assert.Contains(named, run.Err, StringComparison.Ordinal);
        if (named.StartsWith("There is no", StringComparison.Ordinal))
            Assert.Equal(2, run.Err.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
        Assert.DoesNotContain("   at ", run.Err, StringComparison.Ordinal);
        Assert.DoesNotContain(_examdocs.Files(), f =>
            f.EndsWith(".pdf", StringComparison.Ordinal) || f.EndsWith(".xlsx", StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData("--json is empty: name a file.", "check", "visit.json", "--json", "")]
    [InlineData("--out is empty: name a file.", "blank", "--out", "")]
    [InlineData("--form is empty: name a file.", "blank", "--form", "")]
    [InlineData("--out is empty: name a folder.", "issue", "visit.json", "--out", "")]
    public async Task A_name_that_is_empty_is_said_to_be(string said, params string[] arguments)
    {
        Records.Small().Write(_examdocs, "visit.json");
        var run = await _examdocs.RunAsync(arguments);
        Assert.Equal((2, ""), (run.ExitCode, run.Out));
        Assert.StartsWith(said, run.Err, StringComparison.Ordinal);
        Assert.Equal(["visit.json"], _examdocs.Files());
    }

    public void Dispose() => _examdocs.Dispose();
}
