using System.Text;
using ExamDocs.Register.Log;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Checking;

/// <summary>
/// Goes through the log of a register. Entries that an earlier check vouches for count for the root and are not read, except the few that
/// later ones are about, and are counted.
/// </summary>
internal sealed class CheckedLog(LogRows log, RegisterCheckRequest request, LoggedEntries entries)
{
    private readonly List<object?[]> _places = [];
    private readonly List<string> _faults = [];

    private long Vouched => request.Since?.Size ?? 0;

    /// <summary>Where documents were kept, as the rows of it should be.</summary>
    public IReadOnlyList<object?[]> Places => _places;

    /// <summary>The entry that says which register it is; null where there is none.</summary>
    public LogEntry? Own { get; private set; }

    /// <summary>Its length and root as it was gone through.</summary>
    public MerkleFrontier Log { get; private set; } = new();

    /// <summary>How many documents came out or became void.</summary>
    public long Documents { get; private set; }

    /// <summary>How many visits were remembered.</summary>
    public long Visits { get; private set; }

    /// <summary>The visits remembered in entries that were read.</summary>
    public VisitNumbers Remembered { get; } = new();

    public IEnumerable<string> Faults()
    {
        var position = -1L;
        var nodes = new NodesCheck(log.Nodes());
        IReadOnlyList<Checkpoint> exported = request.Since is { } since ? [.. request.Kept, since] : request.Kept;
        (var said, Log) = LogCheck.Run(
            log.Stream()
                .Select(row =>
                {
                    position = row.Position;
                    return (ReadOnlyMemory<byte>)row.Entry;
                }),
            log.StreamCheckpoints(),
            exported,
            (row, bytes, entry) =>
            {
                Count(bytes.Span);
                if (entry is null)
                {
                    entry = row < Vouched && IsOfRegister(bytes.Span) ? LogEntryJson.Read(bytes) : null;
                }
                else
                {
                    if (entry.Position != position)
                        _faults.Add(FormattableString.Invariant($"Log entry {entry.Position} is stored under {position}."));
                    Add(row, entry, bytes);
                }
                if (entry is not null)
                    OfRegister(entry);
            },
            Vouched,
            nodes.Add
        );
        if (Vouched > 0 && entries.LacksBeginnings)
            AddEarlier();
        return [.. said, .. nodes.Faults(), .. _faults];
    }

    private void Add(long row, LogEntry entry, ReadOnlyMemory<byte> bytes)
    {
        entries.Add(row, entry, bytes);
        if (entry is { What: LogEntry.RememberedWord, Visit.Number: var visit })
            Remembered.Add(visit);
    }

    private void OfRegister(LogEntry entry)
    {
        if (entry.What is LogEntry.RegisterWord)
            Own = entry;
        if (entry.Place is { } place)
            _places.Add([entry.Position, entry.What, place, StoredDay.Of(entry.Day)]);
    }

    /// <summary>What was entered earlier of documents and visits that something happened to since.</summary>
    private void AddEarlier()
    {
        var row = 0L;
        foreach (var (_, bytes) in log.Stream().Take((int)Math.Min(Vouched, int.MaxValue)))
        {
            if (AboutOf(bytes) is { } about && entries.Has(about) && LogEntryJson.Read(bytes) is { } entry)
                entries.Add(row, entry, bytes);
            row++;
        }
    }

    /// <summary>The same as <see cref="LoggedEntries.About"/> without reading the entry: members are in the order of their names.</summary>
    private static string? AboutOf(ReadOnlySpan<byte> entry) =>
        After(entry, ",\"number\":\""u8, (byte)'"') is { } number ? number
        : Ends(entry, LogEntry.RememberedWord) || Ends(entry, LogEntry.KnownWord)
            ? After(entry[Math.Max(entry.LastIndexOf(",\"visit\":"u8), 0)..], ",\"visit\":"u8, (byte)',') is { } visit
                    ? LoggedEntries.Visit(visit)
                : null
        : Ends(entry, LogEntry.EndsWord)
            ? After(entry, "{\"byVisit\":"u8, (byte)',') is { } by ? LoggedEntries.Visit(by)
                : null
        : null;

    private static string? After(ReadOnlySpan<byte> entry, ReadOnlySpan<byte> start, byte end) =>
        entry.IndexOf(start) is >= 0 and var at && entry[(at + start.Length)..] is var rest && rest.IndexOf(end) is > 0 and var length
            ? Encoding.UTF8.GetString(rest[..length])
            : null;

    private void Count(ReadOnlySpan<byte> entry)
    {
        Documents += Ends(entry, LogEntry.IssuedWord) || Ends(entry, LogEntry.VoidWord) ? 1 : 0;
        Visits += Ends(entry, LogEntry.RememberedWord) ? 1 : 0;
    }

    private static bool IsOfRegister(ReadOnlySpan<byte> entry) =>
        Ends(entry, LogEntry.RegisterWord) || Ends(entry, LogEntry.KeptAtWord) || Ends(entry, LogEntry.ClearedWord);

    /// <summary>Whether an entry says that this happened; what happened is its last member.</summary>
    private static bool Ends(ReadOnlySpan<byte> entry, string what)
    {
        Span<byte> end = stackalloc byte[what.Length + 11];
        "\"what\":\""u8.CopyTo(end);
        Encoding.ASCII.GetBytes(what, end[8..]);
        "\"}"u8.CopyTo(end[(8 + what.Length)..]);
        return entry.EndsWith(end[..(what.Length + 10)]);
    }
}
