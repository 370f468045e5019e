using ExamDocs.UseCases.Outputs;

namespace ExamDocs.UseCases.Tests.Outputs;

/// <summary>What a folder is like is found out without leaving anything in it.</summary>
public sealed class OutputFolderTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("examdocs-folder-").FullName;

    [Fact]
    public void Whether_it_ignores_the_case_of_letters_is_tried_out()
    {
        var file = Path.Combine(_folder, "name");
        File.WriteAllText(file, "");
        var ignores = File.Exists(Path.Combine(_folder, "NAME"));
        Assert.Equal(ignores, OutputFolder.IgnoresCase(_folder));
        Assert.Equal(ignores, SameFile.WouldBe(Path.Combine(_folder, "a.json"), Path.Combine(_folder, "A.json")));
        Assert.Equal([file], Directory.GetFileSystemEntries(_folder));
    }

    [Fact]
    public void One_that_can_be_written_to_or_made_is_left_as_it_is()
    {
        Assert.Null(OutputFolder.Objection(_folder, "out"));
        Assert.Null(OutputFolder.Objection(Path.Combine(_folder, "new", "below"), "out/new/below"));
        Assert.Empty(Directory.GetFileSystemEntries(_folder));
    }

    /// <summary>A run that was killed while it looked.</summary>
    [Fact]
    public void What_a_killed_run_left_of_its_look_goes_with_the_next()
    {
        File.WriteAllText(Path.Combine(_folder, ".examdocs.2147483646-abcdefgh.part"), "");
        File.WriteAllText(Path.Combine(_folder, ".examdocs.notes.part"), "the user's own");
        Assert.Null(OutputFolder.Objection(_folder, "out"));
        Assert.Equal([Path.Combine(_folder, ".examdocs.notes.part")], Directory.GetFileSystemEntries(_folder));
    }

    [Fact]
    public void One_without_the_right_to_write_is_named_as_typed()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows() || Environment.IsPrivilegedProcess, "Whoever may everything may write here too.");
        File.SetUnixFileMode(_folder, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        Assert.Equal(
            "the folder out cannot be written to: name another folder, or give yourself the right to write there",
            OutputFolder.Objection(_folder, "out")
        );
        Assert.Equal(
            "the folder out/new is not there and cannot be made: name another folder",
            OutputFolder.Objection(Path.Combine(_folder, "new"), "out/new")
        );
        File.SetUnixFileMode(_folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
