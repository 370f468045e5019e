using ExamDocs.Register.Log;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace ExamDocs.Register.Tests.Log;

/// <summary>Every proof holds, and none that was altered does: trees of up to 200 leaves, drawn.</summary>
public sealed class MerkleProofTests
{
    private const int Most = 200;

    [Property(MaxTest = 300)]
    public bool A_path_shows_its_leaf(PositiveInt leaves, NonNegativeInt which)
    {
        var at = Place.Of(leaves, which);
        return MerkleProof.ShowsInclusion(at.Leaf, at.Index, at.Size, at.Path, at.Root);
    }

    [Property(MaxTest = 300)]
    public void A_path_shows_nothing_else(PositiveInt leaves, NonNegativeInt which, NonNegativeInt bit)
    {
        var at = Place.Of(leaves, which);
        Assert.False(MerkleProof.ShowsInclusion(Flipped(at.Leaf, bit), at.Index, at.Size, at.Path, at.Root));
        Assert.False(MerkleProof.ShowsInclusion(at.Leaf, at.Index, at.Size, at.Path, Flipped(at.Root, bit)));
        Assert.All(Altered(at.Path, bit), path => Assert.False(MerkleProof.ShowsInclusion(at.Leaf, at.Index, at.Size, path, at.Root)));
        for (var index = -1; index <= at.Size; index++)
            Assert.Equal(index == at.Index, MerkleProof.ShowsInclusion(at.Leaf, index, at.Size, at.Path, at.Root));
    }

    [Property(MaxTest = 300)]
    public bool A_proof_shows_the_beginning(PositiveInt leaves, NonNegativeInt which)
    {
        var at = Growth.Of(leaves, which);
        return MerkleProof.ShowsConsistency(at.Earlier, at.Later, at.EarlierRoot, at.LaterRoot, at.Proof);
    }

    [Property(MaxTest = 300)]
    public void A_proof_shows_nothing_else(PositiveInt leaves, NonNegativeInt which, NonNegativeInt bit)
    {
        var at = Growth.Of(leaves, which);
        Assert.False(MerkleProof.ShowsConsistency(at.Earlier, at.Later, Flipped(at.EarlierRoot, bit), at.LaterRoot, at.Proof));
        Assert.False(MerkleProof.ShowsConsistency(at.Earlier, at.Later, at.EarlierRoot, Flipped(at.LaterRoot, bit), at.Proof));
        Assert.All(Altered(at.Proof, bit), proof =>
            Assert.False(MerkleProof.ShowsConsistency(at.Earlier, at.Later, at.EarlierRoot, at.LaterRoot, proof))
        );
        Assert.False(MerkleProof.ShowsConsistency(0, at.Later, at.EarlierRoot, at.LaterRoot, at.Proof));
        Assert.False(MerkleProof.ShowsConsistency(at.Later + 1, at.Later, at.EarlierRoot, at.LaterRoot, at.Proof));
    }

    [Property(MaxTest = 300)]
    public bool A_log_whose_beginning_was_altered_has_no_proof(PositiveInt leaves, NonNegativeInt which, NonNegativeInt bit)
    {
        var at = Growth.Of(leaves, which);
        var hashes = MerkleTreeTests.Hashes(MerkleTreeTests.Entries(at.Later));
        var altered = bit.Get % at.Earlier;
        hashes[altered] = Flipped(hashes[altered], bit);
        return !MerkleProof.ShowsConsistency(
            at.Earlier,
            at.Later,
            at.EarlierRoot,
            MerkleTree.Root(hashes),
            MerkleTree.ConsistencyProof(hashes, at.Earlier)
        );
    }

    [Fact]
    public void Malformed_hashes_show_nothing()
    {
        var at = Place.Of(PositiveInt.NewPositiveInt(7), NonNegativeInt.NewNonNegativeInt(3));
        Assert.False(MerkleProof.ShowsInclusion(at.Leaf[..31], at.Index, at.Size, at.Path, at.Root));
        Assert.False(MerkleProof.ShowsInclusion(at.Leaf, at.Index, at.Size, [null!, .. at.Path.Skip(1)], at.Root));
        Assert.False(MerkleProof.ShowsInclusion(at.Leaf, at.Index, at.Size, null!, at.Root));
        Assert.False(MerkleProof.ShowsInclusion(at.Leaf, at.Index, long.MaxValue, at.Path, at.Root));
        Assert.False(MerkleProof.ShowsConsistency(3, long.MaxValue, at.Leaf, at.Root, at.Path));
        Assert.False(MerkleProof.ShowsConsistency(3, 7, at.Leaf, at.Root, []));
    }

    /// <summary>Each hash with a bit flipped, left out, doubled; the first two the other way round; one more at either end.</summary>
    private static IEnumerable<IReadOnlyList<byte[]>> Altered(IReadOnlyList<byte[]> hashes, NonNegativeInt bit)
    {
        for (var index = 0; index < hashes.Count; index++)
        {
            yield return [.. hashes.Take(index), Flipped(hashes[index], bit), .. hashes.Skip(index + 1)];
            yield return [.. hashes.Take(index), .. hashes.Skip(index + 1)];
            yield return [.. hashes.Take(index + 1), .. hashes.Skip(index)];
        }
        if (hashes.Count > 1)
            yield return [hashes[1], hashes[0], .. hashes.Skip(2)];
        yield return [.. hashes, new byte[MerkleTree.HashLength]];
        yield return [new byte[MerkleTree.HashLength], .. hashes];
    }

    private static byte[] Flipped(byte[] hash, NonNegativeInt bit)
    {
        var flipped = hash.ToArray();
        flipped[bit.Get / 8 % hash.Length] ^= (byte)(1 << (bit.Get % 8));
        return flipped;
    }

    private sealed record Place(byte[] Leaf, int Index, int Size, IReadOnlyList<byte[]> Path, byte[] Root)
    {
        public static Place Of(PositiveInt leaves, NonNegativeInt which)
        {
            var size = Spread(leaves.Get);
            var hashes = MerkleTreeTests.Hashes(MerkleTreeTests.Entries(size));
            var index = Spread(which.Get) % size;
            return new(hashes[index], index, size, MerkleTree.InclusionPath(hashes, index), MerkleTree.Root(hashes));
        }
    }

    private sealed record Growth(int Earlier, int Later, byte[] EarlierRoot, byte[] LaterRoot, IReadOnlyList<byte[]> Proof)
    {
        public static Growth Of(PositiveInt leaves, NonNegativeInt which)
        {
            var later = Spread(leaves.Get);
            var hashes = MerkleTreeTests.Hashes(MerkleTreeTests.Entries(later));
            var earlier = (Spread(which.Get) % later) + 1;
            return new(
                earlier,
                later,
                MerkleTree.Root(hashes[..earlier]),
                MerkleTree.Root(hashes),
                MerkleTree.ConsistencyProof(hashes, earlier)
            );
        }
    }

    /// <summary>Numbers that are drawn are small at first; these go through 1 to <see cref="Most"/> evenly.</summary>
    private static int Spread(int drawn) => (int)(drawn * 7919L % Most) + 1;
}
