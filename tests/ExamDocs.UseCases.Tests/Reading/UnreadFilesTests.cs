using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Tests.Issuing;

namespace ExamDocs.UseCases.Tests.Reading;

/// <summary>Of a folder only its files of separated values are read; nothing else in it is passed over without a word.</summary>
public sealed class UnreadFilesTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("examdocs-unread");

    public UnreadFilesTests() => File.WriteAllText(At("Rope bridges.csv"), "id;description\nB-1;bridge\n");

    [Theory]
    [InlineData("harnesses.xlsx", "PK\u0003\u0004")]
    [InlineData("old.xls", "x")]
    [InlineData("kit.ods", "x")]
    [InlineData("visit.json", "{}")]
    [InlineData("yard/Harnesses.csv", "id;description\nH-1;harness\n")]
    [InlineData("yard/deep/visit.JSON", "{}")]
    [InlineData("R-2026-000001.pdf", "%PDF-1.7")]
    [InlineData("harnesses", "PK\u0003\u0004")]
    [InlineData("photo.jpg", "%PDF-1.7")]
    public void A_file_that_may_hold_a_record_is_an_error_that_names_it(string name, string content)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(At(name))!);
        File.WriteAllText(At(name), content);

        var read = ReadInput.From(_folder.FullName);

        var finding = Assert.Single(read.Findings, f => f.Severity is Severity.Error && f.Code is "INT072");
        Assert.Contains(name, finding.Message.Text, StringComparison.Ordinal);
        Assert.Equal($"{_folder.FullName}/{name}", read.Sources.Locate(finding.Path));
    }

    /// <summary>The whole workbook beside the files: what it alone knows must not be missing without an error on every item.</summary>
    [Fact]
    public void No_item_comes_out_fit_beside_a_workbook_that_is_not_read()
    {
        File.Copy(Workspace.ExampleWorkbook, At("visit.xlsx"));
        var read = CheckRecord.Of(_folder.FullName, new(2026, 5, 12));
        Assert.All(read.Visit!.Items, i => Assert.Contains(i.Reasons, r => r.Code is "U3"));
    }

    [Theory]
    [InlineData("photos/1.jpg", "\u00FF\u00D8")]
    [InlineData("readme.txt", "nothing")]
    [InlineData(".~lock.Rope bridges.csv#", ",elm,")]
    [InlineData(".DS_Store", "x")]
    public void Others_are_named_in_a_note(string name, string content)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(At(name))!);
        File.WriteAllText(At(name), content);

        var read = ReadInput.From(_folder.FullName);

        Assert.DoesNotContain(read.Findings, f => f.Code is "INT072");
        Assert.Contains(name, Assert.Single(read.Findings, f => f.Code is "INT073").Message.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Links_and_pipes_are_named_and_neither_followed_nor_waited_for()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "pipes of this kind are made by mkfifo");
        File.CreateSymbolicLink(At("linked"), "/dev/zero");
        Directory.CreateSymbolicLink(At("round"), _folder.FullName);
        using (var made = System.Diagnostics.Process.Start("mkfifo", At("pipe")))
            made.WaitForExit();

        var read = ReadInput.From(_folder.FullName);

        Assert.Equal(2, read.Findings.Count(f => f.Code is "INT072"));
        Assert.Contains("pipe", Assert.Single(read.Findings, f => f.Code is "INT073").Message.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_of_sheets_alone_says_nothing_of_the_kind() =>
        Assert.DoesNotContain(ReadInput.From(_folder.FullName).Findings, f => f.Code is "INT072" or "INT073");

    public void Dispose() => _folder.Delete(recursive: true);

    private string At(string name) => Path.Combine(_folder.FullName, name);
}
