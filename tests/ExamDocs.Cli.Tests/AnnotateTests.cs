using System.IO.Compression;

namespace ExamDocs.Cli.Tests;

/// <summary><c>examdocs check --annotate</c>: exit codes, and what it leaves behind.</summary>
public sealed class AnnotateTests : IDisposable
{
    private readonly Examdocs _examdocs = new();

    [Fact]
    public async Task It_writes_the_copy_names_it_and_keeps_the_exit_code_of_the_check()
    {
        File.Copy(Records.ExampleWorkbook, _examdocs.At("visit.xlsx"));
        var cell = WorkbookCell.Retype(_examdocs.At("visit.xlsx"), "Rope bridges", "BRG-01", "saw-contact", "clera");
        var bytes = await File.ReadAllBytesAsync(_examdocs.At("visit.xlsx"), TestContext.Current.CancellationToken);

        var run = await _examdocs.RunAsync("check", "visit.xlsx", "--annotate", "copy.xlsx");

        Assert.Equal(1, run.ExitCode);
        Assert.EndsWith("copy.xlsx", run.Out.TrimEnd(), StringComparison.Ordinal);
        Assert.Equal(["copy.xlsx", "visit.xlsx"], _examdocs.Files());
        Assert.Equal(bytes, await File.ReadAllBytesAsync(_examdocs.At("visit.xlsx"), TestContext.Current.CancellationToken));
        using var zip = ZipFile.OpenRead(_examdocs.At("copy.xlsx"));
        using var list = new StreamReader(zip.Entries.Single(e => e.Name.StartsWith("findings", StringComparison.Ordinal)).Open());
        Assert.Contains(cell, await list.ReadToEndAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        var again = await _examdocs.RunAsync("check", "copy.xlsx");
        Assert.Equal(run.Err, again.Err.Replace("copy.xlsx", "visit.xlsx", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("one workbook at a time", "visit.xlsx", "other.xlsx", "--annotate", "copy.xlsx")]
    [InlineData("only a workbook", "visit.json", "--annotate", "copy.xlsx")]
    [InlineData("only a workbook", ".", "--annotate", "copy.xlsx")]
    [InlineData("an input of this run", "visit.xlsx", "--annotate", "./visit.xlsx")]
    [InlineData("there is no such file", "none.xlsx", "--annotate", "copy.xlsx")]
    public async Task What_cannot_be_annotated_is_2_in_one_sentence(string sentence, params string[] arguments)
    {
        File.Copy(Records.ExampleWorkbook, _examdocs.At("visit.xlsx"));

        var run = await _examdocs.RunAsync(["check", .. arguments]);

        Assert.Equal(2, run.ExitCode);
        Assert.Contains(sentence, Assert.Single(run.Err.TrimEnd().Split('\n')), StringComparison.Ordinal);
        Assert.Equal(["visit.xlsx"], _examdocs.Files());
    }

    [Fact]
    public async Task A_copy_that_cannot_be_written_is_2_in_one_sentence()
    {
        File.Copy(Records.ExampleWorkbook, _examdocs.At("visit.xlsx"));
        await File.WriteAllTextAsync(_examdocs.At("file"), "", TestContext.Current.CancellationToken);

        var run = await _examdocs.RunAsync("check", "visit.xlsx", "--quiet", "--annotate", "file/copy.xlsx");

        Assert.Equal(2, run.ExitCode);
        Assert.Equal("file is a file, and a folder is needed there: name another folder", run.Err.Trim());
    }

    public void Dispose() => _examdocs.Dispose();
}
