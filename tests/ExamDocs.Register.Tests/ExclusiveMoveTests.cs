using ExamDocs.Register.Files;

namespace ExamDocs.Register.Tests;

/// <summary>A name that is taken is never given away, whatever has it and however the move is made.</summary>
public sealed class ExclusiveMoveTests : Workplace
{
    public static TheoryData<string> Ways => ["by a link", "by claiming the name"];

    [Theory]
    [MemberData(nameof(Ways))]
    public void A_free_name_is_taken(string way)
    {
        Assert.True(Move(way, Source("new"), At("target")));
        Assert.Equal("new", File.ReadAllText(At("target")));
        Assert.False(File.Exists(At("source")));
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void A_name_that_is_taken_stays_as_it_is(string way)
    {
        File.WriteAllText(At("file"), "old");
        Directory.CreateDirectory(At("folder"));
        File.CreateSymbolicLink(At("link"), At("file"));
        File.CreateSymbolicLink(At("dangling"), At("nowhere"));
        foreach (var name in new[] { "file", "folder", "link", "dangling" })
        {
            Assert.True(ExclusiveMove.IsTaken(At(name)));
            Assert.False(Move(way, Source("new"), At(name)), name);
            Assert.Equal("new", File.ReadAllText(At("source")));
        }
        Assert.Equal("old", File.ReadAllText(At("file")));
        Assert.False(File.Exists(At("nowhere")));
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void What_cannot_be_moved_leaves_no_empty_file_behind(string way)
    {
        Assert.ThrowsAny<IOException>(() => Move(way, At("no source"), At("target")));
        Assert.False(File.Exists(At("target")));
    }

    private static bool Move(string way, string source, string target) =>
        way is "by a link" ? ExclusiveMove.Try(source, target) : ExclusiveMove.TryByClaiming(source, target);

    private string Source(string text)
    {
        File.WriteAllText(At("source"), text);
        return At("source");
    }

    private string At(string name) => Path.Combine(Root, name);
}
