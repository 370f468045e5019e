using ExamDocs.UseCases.Issuing;

namespace ExamDocs.UseCases.Tests.Issuing;

/// <summary>A file is there whole, in a folder that is made for it, on the disk in memory as on any other.</summary>
public sealed class WholeFileTests
{
    public static TheoryData<string> Disks => [Path.GetTempPath(), .. Directory.Exists("/dev/shm") ? ["/dev/shm"] : (string[])[]];

    [Theory]
    [MemberData(nameof(Disks))]
    public void It_takes_the_place_of_the_one_before_and_leaves_nothing_else(string disk)
    {
        var folder = Path.Combine(disk, Path.GetRandomFileName());
        try
        {
            var file = Path.Combine(folder, "within", "list.json");
            WholeFile.Write(file, "the first, which is longer"u8);
            WholeFile.Write(file, "the second"u8);

            Assert.Equal("the second", File.ReadAllText(file));
            Assert.Equal([file], Directory.GetFiles(folder, "*", SearchOption.AllDirectories));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
