using ExamDocs.Register.Log;

namespace ExamDocs.Register.Tests.Log;

/// <summary>The same root and paths as the definitions give, which the tests of <see cref="MerkleTree"/> hold.</summary>
public sealed class MerkleLevelsTests
{
    [Fact]
    public void Every_root_and_path_up_to_seventy_leaves_is_that_of_the_tree()
    {
        for (var size = 0; size <= 70; size++)
        {
            var leaves = Enumerable.Range(0, size).Select(n => MerkleTree.LeafHash([(byte)n])).ToList();
            var levels = new MerkleLevels(leaves);
            Assert.Equal(MerkleTree.Root(leaves), levels.Root);
            for (var at = 0; at < size; at++)
                Assert.Equal(MerkleTree.InclusionPath(leaves, at), levels.Path(at));
        }
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(3)]
    public void There_is_no_path_to_what_is_not_there(int at) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new MerkleLevels([.. new byte[3].Select(b => MerkleTree.LeafHash([b]))]).Path(at));
}
