using System.IO.Compression;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Tests.Issuing;

namespace ExamDocs.UseCases.Tests.Reading;

/// <summary>What an input is is told by what it holds; one that is not read says in one sentence why, and what to do.</summary>
public sealed class InputKindTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("examdocs-kinds");

    [Theory]
    [InlineData("visit.xlsm")]
    [InlineData("visit.json")]
    [InlineData("visit")]
    public void A_workbook_is_read_whatever_it_is_called(string name)
    {
        var path = At(name);
        File.Copy(Workspace.ExampleWorkbook, path);
        var read = ReadInput.From(path);
        Assert.Null(read.Unreadable);
        Assert.Equal(ReadInput.From(Workspace.ExampleJson).Record!.Items.Count, read.Record!.Items.Count);
    }

    [Theory]
    [InlineData("kit.xls", "older binary format")]
    [InlineData("kit.xlsx", "older binary format")]
    [InlineData("kit.json", "older binary format")]
    public void An_older_workbook_is_named_as_such(string name, string said)
    {
        File.WriteAllBytes(At(name), [0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1, .. new byte[600]]);
        Assert.Contains(said, ReadInput.From(At(name)).Unreadable, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("kit.ods", "mimetype content.xml", "OpenDocument")]
    [InlineData("kit.zip", "photos/1.jpg", "not a workbook")]
    [InlineData("kit.xlsb", "xl/workbook.bin", "binary workbook")]
    public void Another_archive_is_named_as_such(string name, string entries, string said)
    {
        using (var zip = ZipFile.Open(At(name), ZipArchiveMode.Create))
        {
            foreach (var entry in entries.Split(' '))
                zip.CreateEntry(entry);
        }
        Assert.Contains(said, ReadInput.From(At(name)).Unreadable, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("visit.json")]
    [InlineData("visit.xlsx")]
    [InlineData("Rope bridges.csv")]
    public void An_empty_file_is_said_to_be(string name)
    {
        File.WriteAllBytes(At(name), []);
        Assert.Equal("the file is empty", ReadInput.From(At(name)).Unreadable);
    }

    [Fact]
    public void A_pipe_is_not_waited_for()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "pipes of this kind are made by mkfifo");
        using (var made = System.Diagnostics.Process.Start("mkfifo", At("pipe.json")))
            made.WaitForExit();
        Assert.True(File.Exists(At("pipe.json")));
        Assert.Equal("the file is empty", ReadInput.From(At("pipe.json")).Unreadable);
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private string At(string name) => Path.Combine(_folder.FullName, name);
}
