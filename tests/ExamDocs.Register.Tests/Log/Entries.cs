using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using NodaTime;

namespace ExamDocs.Register.Tests.Log;

/// <summary>A log of invented documents: each issued, some then withdrawn, replaced or void.</summary>
internal static class Entries
{
    public static readonly string Origin = Checkpoint.OriginOf(new Guid("00112233-4455-6677-8899-aabbccddeeff"));

    public static readonly LocalDate Day = new(2026, 5, 12);

    public static LoggedDocument Document(int sequence, char letter = 'R') =>
        new(new DocumentNumber(letter, 2026, sequence).ToString(), "report", ["HB-014", "HB-014-B"]);

    public static LogEntry At(int position) =>
        (position % 7) switch
        {
            3 => LogEntry.Void(position, Document(position + 1), "the page could not be printed", Day),
            5 => LogEntry.Withdrawn(position, Document(position), "issued for the wrong item", Day),
            6 => LogEntry.Replaced(position, Document(position - 1), Document(position + 2).Number, "an address was wrong", Day),
            _ => LogEntry.Issued(position, Document(position + 1), Sha256Hex.Of([(byte)position]), Day),
        };

    public static List<ReadOnlyMemory<byte>> Log(int count) =>
        [.. Enumerable.Range(0, count).Select(position => (ReadOnlyMemory<byte>)At(position).Bytes())];

    public static Checkpoint Checkpointed(IEnumerable<ReadOnlyMemory<byte>> log)
    {
        var hashes = log.Select(entry => MerkleTree.LeafHash(entry.Span)).ToList();
        return new(Origin, hashes.Count, MerkleTree.Root(hashes));
    }
}
