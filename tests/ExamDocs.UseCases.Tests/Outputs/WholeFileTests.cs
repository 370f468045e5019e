using ExamDocs.UseCases.Outputs;

namespace ExamDocs.UseCases.Tests.Outputs;

/// <summary>A file is there whole, in a folder that is made for it, on the disk in memory as on any other.</summary>
public sealed class WholeFileTests
{
    public static TheoryData<string> Disks => [Path.GetTempPath(), .. Directory.Exists("/dev/shm") ? ["/dev/shm"] : (string[])[]];

    [Theory]
    [MemberData(nameof(Disks))]
    public void It_takes_the_place_of_the_one_before_only_where_asked_and_leaves_nothing_else(string disk)
    {
        var folder = Path.Combine(disk, Path.GetRandomFileName());
        try
        {
            var file = Path.Combine(folder, "within", "list.json");
            Assert.True(WholeFile.Write(file, "the first, which is longer"u8.ToArray(), replace: false));
            Assert.False(WholeFile.Write(file, "the second"u8.ToArray(), replace: false));
            Assert.Equal("the first, which is longer", File.ReadAllText(file));
            Assert.True(WholeFile.Write(file, "the second"u8.ToArray(), replace: true));

            Assert.Equal("the second", File.ReadAllText(file));
            Assert.Equal([file], Directory.GetFiles(folder, "*", SearchOption.AllDirectories));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>The look and the move are one step: of many that write one name at once, one does, and nothing is overwritten.</summary>
    [Fact]
    public void Of_many_at_once_one_gets_the_name()
    {
        var folder = Directory.CreateTempSubdirectory("examdocs-whole-").FullName;
        try
        {
            for (var round = 0; round < 50; round++)
            {
                var file = Path.Combine(folder, FormattableString.Invariant($"{round}.json"));
                var got = new bool[4];
                Parallel.For(0, got.Length, n => got[n] = WholeFile.Write(file, new[] { (byte)n }, replace: false));
                Assert.Equal([(byte)Array.IndexOf(got, value: true)], File.ReadAllBytes(file));
                Assert.Single(got, g => g);
            }
            Assert.Equal(50, Directory.GetFiles(folder).Length);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
