using System.Data.Common;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Rows;

/// <summary>The log as rows of the database. Entries and roots are only ever added, within the transaction of the change.</summary>
internal sealed class LogRows(DbConnection connection)
{
    private readonly LogNodes _nodes = new(connection);
    private readonly List<(int Level, long Place, byte[] Hash)> _full = [];
    private MerkleFrontier _frontier = new();

    /// <summary>Tells of entries whether they are in the log.</summary>
    public EntriesInLog InLog() => new(this, _nodes);

    /// <summary>Enters what happened, and the root of the log with it.</summary>
    /// <param name="entry">Makes the entry once its position is known.</param>
    public void Append(Func<long, LogEntry> entry)
    {
        CatchUp();
        var position = _frontier.Size;
        var bytes = entry(position).Bytes();
        connection.Execute("INSERT INTO log (position, entry) VALUES ($1, $2)", position, bytes);
        Add(bytes);
        KeepNodes();
        connection.Execute("INSERT INTO checkpoint (size, root) VALUES ($1, $2)", _frontier.Size, Convert.ToBase64String(_frontier.Root()));
        connection.Execute("UPDATE register SET log_size = $1", _frontier.Size);
    }

    /// <summary>
    /// The log is what its last root says, and as long as the register counted, as far as that can be told from the nodes that are kept
    /// and the entries after them.
    /// </summary>
    /// <exception cref="RegisterAlteredException">It is not.</exception>
    public void Require()
    {
        CatchUp();
        if (Counted() != _frontier.Size || (_frontier.Size > 0 && !IsStored(_frontier)))
            throw new RegisterAlteredException("its log", "The log does not have the root that was kept for it.");
    }

    /// <inheritdoc cref="DocumentRegister.Proofs"/>
    public (Checkpoint? Checkpoint, IReadOnlyList<InclusionProof> Proofs) Proofs(IReadOnlySet<string> numbers)
    {
        var checkpoint = Latest();
        var (proofs, root) = InclusionProofs.Of(Stream().Select(row => row.Entry), numbers);
        return checkpoint is null || checkpoint.Root.Span.SequenceEqual(root)
            ? (checkpoint, proofs)
            : throw new RegisterAlteredException("its log", "The log does not have the root that was kept for it.");
    }

    /// <summary>Null while nothing is entered.</summary>
    public Checkpoint? Latest() => Checkpoints("DESC LIMIT 1") is [var last] ? last : null;

    /// <summary>Every root that was remembered, by size, a few at a time.</summary>
    public IEnumerable<Checkpoint> StreamCheckpoints()
    {
        const string AtOnce = "ASC LIMIT 256";
        for (var lot = Checkpoints(AtOnce); lot.Count > 0; lot = Checkpoints(AtOnce, lot[^1].Size))
        {
            foreach (var checkpoint in lot)
                yield return checkpoint;
        }
    }

    private List<Checkpoint> Checkpoints(string order, long after = long.MinValue)
    {
        var origin = Origin();
        return connection.Rows(
            row => new Checkpoint(origin, row.GetInt64(0), Root(row.GetString(1))),
            $"SELECT size, root FROM checkpoint WHERE size > $1 ORDER BY size {order}",
            after
        );
    }

    /// <summary>Entries in their order.</summary>
    /// <param name="from">Position of the first.</param>
    /// <param name="to">Position before which they end.</param>
    public IReadOnlyList<byte[]> Between(long from, long to) =>
        connection.Rows(
            row => row.GetFieldValue<byte[]>(0),
            "SELECT entry FROM log WHERE position >= $1 AND position < $2 ORDER BY position",
            from,
            to
        );

    /// <summary>The entries at some positions, in their order; those that are not there are left out.</summary>
    public IReadOnlyList<(long Position, byte[] Entry)> At(IEnumerable<long> positions) =>
        connection.Rows(
            row => (row.GetInt64(0), row.GetFieldValue<byte[]>(1)),
            // They are reckoned here, never typed.
            $"SELECT position, entry FROM log WHERE position IN ({string.Join(", ", positions)}) ORDER BY position"
        );

    /// <summary>The nodes that are kept.</summary>
    public IReadOnlyDictionary<long, byte[]> Nodes() => _nodes.All();

    /// <summary>Keeps the nodes of the entries that were made before there was a place for them.</summary>
    public void MakeNodes()
    {
        _frontier = new();
        foreach (var (position, entry) in Stream(atOnce: 4_096))
        {
            Add(entry);
            if (position % 4_096 == 0)
                KeepNodes();
        }
        KeepNodes();
    }

    public IReadOnlyList<ReadOnlyMemory<byte>> Entries() =>
        connection.Rows(row => (ReadOnlyMemory<byte>)row.GetFieldValue<byte[]>(0), "SELECT entry FROM log ORDER BY position");

    /// <summary>Every entry with the position that it is stored under, a few at a time.</summary>
    public IEnumerable<(long Position, byte[] Entry)> Stream(long first = long.MinValue, int atOnce = 64)
    {
        for (var (from, page) = (first, Page(first)); page.Count > 0; page = Page(from))
        {
            foreach (var row in page)
                yield return row;
            from = page[^1].Position + 1;
        }
        List<(long Position, byte[] Entry)> Page(long from) =>
            connection.Rows(
                row => (row.GetInt64(0), row.GetFieldValue<byte[]>(1)),
                $"SELECT position, entry FROM log WHERE position >= $1 ORDER BY position LIMIT {atOnce}",
                from
            );
    }

    /// <summary>How many entries the register says that it has made.</summary>
    public long Counted() => connection.Number("SELECT log_size FROM register");

    // An id that was taken away or overwritten matches no register.
    private string Origin() =>
        Checkpoint.OriginOf(
            connection.Rows(row => row.Text(0), "SELECT id FROM register") is [var id] && Guid.TryParseExact(id, "N", out var known)
                ? known
                : Guid.Empty
        );

    // A root that somebody overwrote must not hold.
    public static byte[] Root(string base64)
    {
        var root = new byte[MerkleTree.HashLength];
        return Convert.TryFromBase64String(base64, root, out var length) && length == root.Length ? root : new byte[MerkleTree.HashLength];
    }

    /// <summary>Other runs may have entered something since; what this one entered may have been undone with its transaction.</summary>
    private void CatchUp()
    {
        if (_frontier.Size > 0 && !IsStored(_frontier))
        {
            _frontier = new();
            _full.Clear();
        }
        if (_frontier.Size == 0 && _nodes.Frontier() is var kept && IsStored(kept))
            _frontier = kept;
        foreach (var (_, entry) in Stream(_frontier.Size))
            Add(entry);
    }

    private void Add(byte[] entry) => _frontier.Append(MerkleTree.LeafHash(entry), (level, place, hash) =>
        {
            if (level >= LogNodes.Lowest)
                _full.Add((level, place, hash));
        });

    private void KeepNodes()
    {
        List<(int Level, long Place, byte[] Hash)> full = [.. _full];
        // What fails is undone with its transaction, and must not be kept by the next.
        _full.Clear();
        _nodes.Keep(full);
    }

    private bool IsStored(MerkleFrontier frontier) =>
        connection
            .Rows(row => row.GetString(0), "SELECT root FROM checkpoint WHERE size = $1", frontier.Size)
            .Contains(Convert.ToBase64String(frontier.Root()), StringComparer.Ordinal);
}
