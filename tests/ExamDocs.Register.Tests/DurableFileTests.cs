using ExamDocs.Register.Files;
using ExamDocs.Register.Log;
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
    public void A_file_is_moved_into_a_subfolder_byte_for_byte()
    {
        DurableFile.Publish(Directory.CreateDirectory(Out).FullName, Name, Pdf("a"));
        var hash = Sha256Hex.Of(Pdf("a"));
        Assert.True(DurableFile.MoveInto(Out, "apart", Name, hash));
        Assert.False(DurableFile.MoveInto(Out, "apart", Name, hash));
        Assert.Equal(Pdf("a"), File.ReadAllBytes(Path.Combine(Out, "apart", Name)));
        Assert.Empty(Directory.GetFiles(Out));
    }

    /// <summary>A run that was killed between the two halves of the move left it in both.</summary>
    [Fact]
    public void A_move_that_was_cut_short_is_finished()
    {
        Directory.CreateDirectory(Path.Combine(Out, "apart"));
        File.WriteAllBytes(Path.Combine(Out, Name), Pdf("a"));
        File.WriteAllBytes(Path.Combine(Out, "apart", Name), Pdf("a"));
        Assert.True(DurableFile.MoveInto(Out, "apart", Name, Sha256Hex.Of(Pdf("a"))));
        Assert.Equal([Path.Combine(Out, "apart", Name)], Directory.GetFiles(Out, "*", SearchOption.AllDirectories));
    }

    [Fact]
    public void What_is_something_else_is_neither_moved_nor_overwritten()
    {
        Directory.CreateDirectory(Path.Combine(Out, "apart"));
        File.WriteAllText(Path.Combine(Out, Name), "edited since");
        Assert.False(DurableFile.MoveInto(Out, "apart", Name, Sha256Hex.Of(Pdf("a"))));
        File.WriteAllBytes(Path.Combine(Out, Name), Pdf("a"));
        File.WriteAllText(Path.Combine(Out, "apart", Name), "somebody else's");
        Assert.Throws<DocumentFileConflictException>(() => DurableFile.MoveInto(Out, "apart", Name, Sha256Hex.Of(Pdf("a"))));
        Assert.Equal(Pdf("a"), File.ReadAllBytes(Path.Combine(Out, Name)));
        Assert.Equal("somebody else's", File.ReadAllText(Path.Combine(Out, "apart", Name)));
    }

    [Fact]
    public void A_folder_that_is_not_there_cannot_be_flushed() =>
        Assert.Throws<IOException>(() => FolderSync.Flush(Path.Combine(Root, "nowhere")));
}
