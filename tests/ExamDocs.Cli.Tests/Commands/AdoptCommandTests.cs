using System.IO.Compression;
using System.Text;

namespace ExamDocs.Cli.Tests.Commands;

/// <summary>The command as it is typed: what it writes, what it says, and that it never waits where nobody can answer.</summary>
public sealed class AdoptCommandTests
{
    private const string List = "Asset;Type;Serial No;Status\nK-1;Karabiner;S1;Pass\nK-2;Helm;S2;Fail\nK-3;Throw bag;S3;Pass\n";

    [Fact]
    public async Task It_writes_a_workbook_that_check_reads_and_says_what_is_out_of_use_and_what_is_unknown()
    {
        using var program = new Examdocs();
        await WriteAsync(program, "kit.csv", List);
        var adopted = await program.RunAsync("adopt", "kit.csv", "--out", "kit.xlsx", "--as-of", "2026-04-01");
        Assert.Equal(0, adopted.ExitCode);
        Assert.StartsWith("3 items: 1 Throw bag, 1 connector, 1 helmet", adopted.Out, StringComparison.Ordinal);
        Assert.Contains("comes in withdrawn until it is released: Status 'Fail': K-2", adopted.Err, StringComparison.Ordinal);
        Assert.Contains("2026-04-01 was taken: K-2", adopted.Err, StringComparison.Ordinal);
        Assert.Contains("the kind of kit is not known: 'Throw bag': kit row 4", adopted.Err, StringComparison.Ordinal);
        Assert.Contains("not items: kit: row 1 (the headings)", adopted.Err, StringComparison.Ordinal);

        var check = await program.RunAsync("check", "kit.xlsx");
        Assert.Equal(1, check.ExitCode);
        Assert.Contains("0 fit, 0 fit-until, 2 undetermined, 1 withdraw", check.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_that_is_there_is_never_written_over()
    {
        using var program = new Examdocs();
        await WriteAsync(program, "kit.csv", List);
        foreach (var there in new[] { "kit.csv", "other.xlsx" })
        {
            if (there is "other.xlsx")
                await WriteAsync(program, there, "mine");
            var before = await File.ReadAllTextAsync(program.At(there), TestContext.Current.CancellationToken);
            var run = await program.RunAsync("adopt", "kit.csv", "--out", there);
            Assert.Equal(2, run.ExitCode);
            Assert.Contains(there is "kit.csv" ? "is an input of this run" : "is there already", run.Err, StringComparison.Ordinal);
            Assert.Equal(before, await File.ReadAllTextAsync(program.At(there), TestContext.Current.CancellationToken));
        }
    }

    [Fact]
    public async Task Where_nobody_can_answer_it_writes_a_map_and_ends_with_1_and_the_map_settled_it_is_done()
    {
        using var program = new Examdocs(apart: true);
        await WriteAsync(program, "kit.csv", "Asset;Type;Bought\nK-1;Helm;03/04/2024\n");
        var bare = await program.RunAsync("adopt", "kit.csv", "--out", "kit.xlsx");
        Assert.Equal(1, bare.ExitCode);
        Assert.Contains("03/04/2024 can be read in two ways", bare.Err, StringComparison.Ordinal);
        Assert.Contains("--map FILE", bare.Err, StringComparison.Ordinal);
        var first = await program.RunAsync("adopt", "kit.csv", "--out", "kit.xlsx", "--map", "map.json");
        Assert.Equal(1, first.ExitCode);
        Assert.Equal(["kit.csv", "map.json"], program.Files());
        var map = await File.ReadAllTextAsync(program.At("map.json"), TestContext.Current.CancellationToken);
        await WriteAsync(program, "map.json", map.Replace("\"dates\": null", "\"dates\": \"day-month-year\"", StringComparison.Ordinal));
        var second = await program.RunAsync("adopt", "kit.csv", "--out", "kit.xlsx", "--map", "map.json");
        Assert.Equal(0, second.ExitCode);
        Assert.Contains("kit.xlsx", program.Files());
    }

    [Theory]
    [InlineData("", "the file is empty")]
    [InlineData("Asset;Type\n", "no row of it is about an item of kit")]
    [InlineData("Asset;\"Type\nK-1;Helm\n", "every quote is closed")]
    public async Task A_list_that_cannot_be_taken_is_refused_with_a_sentence(string list, string expected)
    {
        using var program = new Examdocs();
        await WriteAsync(program, "kit.csv", list);
        var run = await program.RunAsync("adopt", "kit.csv", "--out", "kit.xlsx");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(expected, run.Err, StringComparison.Ordinal);
        Assert.Equal(["kit.csv"], program.Files());
    }

    [Fact]
    public async Task What_looks_like_a_formula_stays_a_text_and_steers_no_terminal()
    {
        using var program = new Examdocs();
        await WriteAsync(
            program,
            "kit.csv",
            "Asset;Type;Status;Location\n=1+1;Helm;Pass;\"=HYPERLINK(\"\"http://x\"\")\"\n@K;+Helm;\u001b[2Jscrapped;-2+3|cmd\n"
        );
        var run = await program.RunAsync("adopt", "kit.csv", "--out", "kit.xlsx", "--map", "map.json");
        Assert.DoesNotContain('\u001b', run.Out + run.Err);
        Assert.Equal(0, run.ExitCode);
        using var archive = ZipFile.OpenRead(program.At("kit.xlsx"));
        foreach (var entry in archive.Entries.Where(e => e.FullName.StartsWith("xl/worksheets/", StringComparison.Ordinal)))
        {
            using var reader = new StreamReader(entry.Open());
            var xml = await reader.ReadToEndAsync(TestContext.Current.CancellationToken);
            Assert.DoesNotMatch("<(x:)?(f|hyperlink)[ >/]", xml);
        }
    }

    private static Task WriteAsync(Examdocs program, string name, string text) =>
        File.WriteAllTextAsync(
            program.At(name),
            text,
            new UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
            TestContext.Current.CancellationToken
        );
}
