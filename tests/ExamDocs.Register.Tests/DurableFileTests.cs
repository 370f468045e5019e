using ExamDocs.Register.Files;
using ExamDocs.Register.Model;

namespace ExamDocs.Register.Tests;

public sealed class DurableFileTests : Workplace
{
    private const string Name = "R-2026-000001.pdf";

    [Fact]
    public void A_file_that_turns_up_at_the_last_moment_is_not_overwritten()
    {
        Directory.CreateDirectory(Out);
        DurableFile.WriteTemporary(Out, Name, Pdf("a"));
        var path = Path.Combine(Out, Name);
        File.WriteAllText(path, "somebody else's");
        Assert.Throws<DocumentFileConflictException>(() => DurableFile.MoveIntoPlace(Out, Name));
        Assert.Equal("somebody else's", File.ReadAllText(path));
        Assert.Equal(path, Assert.Single(Directory.GetFiles(Out)));
    }

    [Fact]
    public void A_folder_of_that_name_is_left_alone()
    {
        Directory.CreateDirectory(Path.Combine(Out, Name));
        Assert.Throws<DocumentFileConflictException>(() => DurableFile.Publish(Out, Name, Pdf("a")));
    }

    [Fact]
    public void A_link_where_the_temporary_file_goes_is_replaced_not_followed()
    {
        Directory.CreateDirectory(Out);
        var elsewhere = Path.Combine(Root, "elsewhere");
        File.WriteAllText(elsewhere, "precious");
        File.CreateSymbolicLink(DurableFile.TemporaryPath(Out, Name), elsewhere);
        Assert.True(DurableFile.Publish(Out, Name, Pdf("a")));
        Assert.Equal("precious", File.ReadAllText(elsewhere));
        Assert.Equal(Pdf("a"), File.ReadAllBytes(Path.Combine(Out, Name)));
        Assert.Null(new FileInfo(Path.Combine(Out, Name)).LinkTarget);
    }

    [Fact]
    public void A_folder_that_is_not_there_cannot_be_flushed() =>
        Assert.Throws<IOException>(() => FolderSync.Flush(Path.Combine(Root, "nowhere")));
}
