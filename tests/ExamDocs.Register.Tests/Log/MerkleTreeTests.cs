using ExamDocs.Register.Log;

namespace ExamDocs.Register.Tests.Log;

/// <summary>
/// Against the leaves and roots in the tests of github.com/google/certificate-transparency (merkletree), and against the
/// RFC's own definitions.
/// </summary>
public sealed class MerkleTreeTests
{
    private static readonly byte[][] Leaves =
    [
        .. new[] { "", "00", "10", "2021", "3031", "40414243", "5051525354555657", "606162636465666768696a6b6c6d6e6f" }.Select(
            Convert.FromHexString
        ),
    ];

    [Theory]
    [InlineData(0, "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855")]
    [InlineData(1, "6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d")]
    [InlineData(2, "fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125")]
    [InlineData(3, "aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77")]
    [InlineData(4, "d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7")]
    [InlineData(5, "4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4")]
    [InlineData(6, "76e67dadbcdf1e10e1b74ddc608abd2f98dfb16fbce75277b5232a127f2087ef")]
    [InlineData(7, "ddb89be403809e325750d3d263cd78929c2942b7942a34b77e122c9594a74c8c")]
    [InlineData(8, "5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328")]
    public void The_published_roots_come_out(int size, string root)
    {
        var hashes = Hashes(Leaves[..size]);
        Assert.Equal(root, Convert.ToHexStringLower(MerkleTree.Root(hashes)));
        var frontier = new MerkleFrontier();
        foreach (var hash in hashes)
            frontier.Append(hash);
        Assert.Equal(root, Convert.ToHexStringLower(frontier.Root()));
        Assert.Equal(size, frontier.Size);
    }

    [Fact]
    public void Every_root_path_and_proof_up_to_forty_leaves_is_that_of_the_definitions()
    {
        for (var size = 1; size <= 40; size++)
        {
            var entries = Entries(size);
            var hashes = Hashes(entries);
            Assert.Equal(SlowTree.Mth(entries), MerkleTree.Root(hashes));
            for (var index = 0; index < size; index++)
            {
                Assert.Equal(SlowTree.Path(index, entries), MerkleTree.InclusionPath(hashes, index));
                Assert.Equal(SlowTree.Proof(index + 1, entries), MerkleTree.ConsistencyProof(hashes, index + 1));
            }
        }
    }

    [Fact]
    public void The_frontier_has_the_root_of_every_size_on_the_way()
    {
        var frontier = new MerkleFrontier();
        for (var size = 0; size < 300; size++)
        {
            Assert.Equal(MerkleTree.Root(Hashes(Entries(size))), frontier.Root());
            frontier.Append(MerkleTree.LeafHash(Entries(size + 1)[^1]));
        }
    }

    [Fact]
    public void A_leaf_does_not_pass_for_a_node()
    {
        var hashes = Hashes(Leaves[..2]);
        var both = hashes[0].Concat(hashes[1]).ToArray();
        Assert.NotEqual(MerkleTree.Root(hashes), MerkleTree.LeafHash(both));
    }

    [Theory]
    [InlineData(3, -1)]
    [InlineData(3, 3)]
    [InlineData(0, 0)]
    public void There_is_no_path_to_a_leaf_that_is_not_there(int size, int index) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => MerkleTree.InclusionPath(Hashes(Entries(size)), index));

    [Theory]
    [InlineData(3, 0)]
    [InlineData(3, 4)]
    public void There_is_no_proof_of_an_empty_or_greater_tree(int size, int earlier) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => MerkleTree.ConsistencyProof(Hashes(Entries(size)), earlier));

    internal static byte[][] Hashes(byte[][] entries) => [.. entries.Select(entry => MerkleTree.LeafHash(entry))];

    /// <summary>Entries all different, of different lengths.</summary>
    internal static byte[][] Entries(int count) =>
        [.. Enumerable.Range(0, count).Select(i => Enumerable.Repeat((byte)i, (i / 3) + 1).Append((byte)(i >> 8)).ToArray())];
}
