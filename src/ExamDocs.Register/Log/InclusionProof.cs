namespace ExamDocs.Register.Log;

/// <summary>Shows that an entry is in a log: whoever hashes the entry up along the path must come to the root of the checkpoint.</summary>
/// <param name="Number">Of the document that the entry is about.</param>
/// <param name="Position">Place of the entry in the log, from 0.</param>
/// <param name="Entry">The entry as it is stored.</param>
/// <param name="Path">As <see cref="MerkleTree.InclusionPath"/> gives it, the hash nearest to the entry first.</param>
public sealed record InclusionProof(string Number, long Position, ReadOnlyMemory<byte> Entry, IReadOnlyList<byte[]> Path);

/// <summary>Proofs for many entries of one log.</summary>
internal static class InclusionProofs
{
    /// <param name="entries">The whole log in its order; it is gone through once.</param>
    /// <param name="numbers">The documents whose coming out is to be shown.</param>
    /// <returns>One for each document whose coming out is in the log, by position; and the root of all entries.</returns>
    public static (IReadOnlyList<InclusionProof> Proofs, byte[] Root) Of(IEnumerable<byte[]> entries, IReadOnlySet<string> numbers)
    {
        var (leaves, found) = (new List<byte[]>(), new List<(string Number, int Position, byte[] Entry)>());
        foreach (var bytes in entries)
        {
            if (LogEntry.Parse(bytes) is { What: LogEntry.IssuedWord, Document.Number: var number } && numbers.Contains(number))
                found.Add((number, leaves.Count, bytes));
            leaves.Add(MerkleTree.LeafHash(bytes));
        }
        var levels = new MerkleLevels(leaves);
        return ([.. found.Select(f => new InclusionProof(f.Number, f.Position, f.Entry, levels.Path(f.Position)))], levels.Root);
    }
}
