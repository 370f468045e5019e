using ExamDocs.Register.Model;
using NodaTime;

namespace ExamDocs.Register.Log;

/// <summary>One thing that happened in a register, as the log keeps it for good.</summary>
public sealed class LogEntry
{
    public const string IssuedWord = "issued";
    public const string VoidWord = "void";
    public const string ListedWord = "listed";
    public const string WithdrawnWord = "withdrawn";
    public const string ReplacedWord = "replaced";
    public const string EndedWord = "ended";
    public const string LineEndedWord = "line-ended";
    public const string RememberedWord = "remembered";
    public const string EndsWord = "ends";
    public const string KnownWord = "known";
    public const string RegisterWord = "register";
    public const string KeptAtWord = "kept-at";
    public const string ClearedWord = "cleared";

    /// <summary>The greatest number that JSON can carry exactly, 2^53 - 1.</summary>
    private const long GreatestPosition = 9_007_199_254_740_991;

    private LogEntry(long position, string what, LocalDate day)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(position);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(position, GreatestPosition);
        if (day.Year is < 1900 or > 9999)
            throw new ArgumentOutOfRangeException(nameof(day), day, "A year from 1900 to 9999 is needed.");
        (Position, What, Day) = (position, what, day);
    }

    /// <summary>Place in the log, from 0.</summary>
    public long Position { get; }

    /// <summary>One of the words above.</summary>
    public string What { get; }

    /// <summary>The day on which it happened.</summary>
    public LocalDate Day { get; }

    /// <summary>The document that it happened to; null where it happened to none.</summary>
    public LoggedDocument? Document { get; private init; }

    /// <summary>Of the file issued, lower-case hexadecimal; null unless issued.</summary>
    public string? Sha256 { get; private init; }

    /// <summary>SHA-256 of what else the register lists of the document; null where a version before kept none.</summary>
    public string? Row { get; private init; }

    /// <summary>Why; null where nothing is given up or ended.</summary>
    public string? Reason { get; private init; }

    /// <summary>Number of the document that takes its place; null unless replaced.</summary>
    public string? By { get; private init; }

    /// <summary>The item whose line ended; null unless one did.</summary>
    public string? Item { get; private init; }

    /// <summary>The visit that ended a document, a line or several; else null.</summary>
    public int? ByVisit { get; private init; }

    /// <summary>What a visit ended; empty unless it ended something.</summary>
    public IReadOnlyList<LineEnd> Ends { get; private init; } = [];

    /// <summary>The visit that was remembered, or is known under another register's number; else null.</summary>
    public LoggedVisit? Visit { get; private init; }

    /// <summary>Identity of the register that this one is; null unless the entry is about that.</summary>
    public string? Register { get; private init; }

    /// <summary>Where documents are kept from now on, or are kept no more; else null.</summary>
    public string? Place { get; private init; }

    /// <summary>The document came out.</summary>
    /// <param name="sha256">Of its file: 64 lower-case hexadecimal digits.</param>
    /// <param name="row">SHA-256 of what else is listed of it; null where none is kept.</param>
    /// <exception cref="ArgumentException">A value is not as described.</exception>
    public static LogEntry Issued(long position, LoggedDocument document, string sha256, LocalDate day, string? row = null) =>
        new(position, IssuedWord, day)
        {
            Document = EntryValue.Given(document),
            Sha256 = EntryValue.Hash(sha256),
            Row = row is null ? null : EntryValue.Hash(row),
        };

    /// <summary>The number was taken and no document came out.</summary>
    /// <exception cref="ArgumentException">A value is not as described.</exception>
    public static LogEntry Void(long position, LoggedDocument document, string reason, LocalDate day, string? row = null) =>
        new(position, VoidWord, day)
        {
            Document = EntryValue.Given(document),
            Reason = EntryValue.Stated(reason),
            Row = row is null ? null : EntryValue.Hash(row),
        };

    /// <summary>What is listed of a document that came out before that was kept.</summary>
    /// <exception cref="ArgumentException">A value is not as described.</exception>
    public static LogEntry Listed(long position, LoggedDocument document, string row, LocalDate day) =>
        new(position, ListedWord, day) { Document = EntryValue.Given(document), Row = EntryValue.Hash(row) };

    /// <summary>The document no longer holds, and none takes its place.</summary>
    /// <exception cref="ArgumentException">A value is not as described.</exception>
    public static LogEntry Withdrawn(long position, LoggedDocument document, string reason, LocalDate day) =>
        new(position, WithdrawnWord, day) { Document = EntryValue.Given(document), Reason = EntryValue.Stated(reason) };

    /// <summary>Another document takes its place.</summary>
    /// <param name="by">Number of the other one.</param>
    /// <exception cref="ArgumentException">A value is not as described.</exception>
    public static LogEntry Replaced(long position, LoggedDocument document, string by, string reason, LocalDate day) =>
        DocumentNumber.TryParse(by, out _)
            ? new(position, ReplacedWord, day)
            {
                Document = EntryValue.Given(document),
                By = by,
                Reason = EntryValue.Stated(reason),
            }
            : throw new ArgumentException("A document number is needed.", nameof(by));

    /// <summary>What a later visit found ended it.</summary>
    /// <exception cref="ArgumentException">A value is not as described.</exception>
    public static LogEntry Ended(long position, LoggedDocument document, int byVisit, string reason, LocalDate day) =>
        new(position, EndedWord, day)
        {
            Document = EntryValue.Given(document),
            ByVisit = EntryValue.Numbered(byVisit),
            Reason = EntryValue.Stated(reason),
        };

    /// <summary>What a later visit found ended what it says of one item.</summary>
    /// <exception cref="ArgumentException">A value is not as described.</exception>
    public static LogEntry LineEnded(long position, LoggedDocument document, string item, int byVisit, string reason, LocalDate day) =>
        new(position, LineEndedWord, day)
        {
            Document = EntryValue.Given(document),
            Item = CanonicalText.Sound(item, nameof(item)),
            ByVisit = EntryValue.Numbered(byVisit),
            Reason = EntryValue.Stated(reason),
        };

    /// <summary>A visit was remembered.</summary>
    public static LogEntry Remembered(long position, LoggedVisit visit, LocalDate day) =>
        new(position, RememberedWord, day) { Visit = visit };

    /// <summary>What a visit found ended what earlier ones said of items.</summary>
    /// <exception cref="ArgumentException">A value is not as described.</exception>
    public static LogEntry EndsOf(long position, int byVisit, IReadOnlyList<LineEnd> ends, LocalDate day) =>
        new(position, EndsWord, day)
        {
            ByVisit = EntryValue.Numbered(byVisit),
            Ends = [.. ends.Select(e => e with { Item = CanonicalText.Sound(e.Item, nameof(ends)), Why = EntryValue.Stated(e.Why) })],
        };

    /// <summary>A visit is the one that another register has under a number of its own.</summary>
    public static LogEntry Known(long position, LoggedVisit visit, LocalDate day) => new(position, KnownWord, day) { Visit = visit };

    /// <summary>Which register this is.</summary>
    /// <param name="register">Its identity.</param>
    /// <param name="since">The day from which on it has been kept.</param>
    public static LogEntry Of(long position, string register, LocalDate since) =>
        new(position, RegisterWord, since) { Register = register };

    /// <summary>The bytes of documents are kept at a place from now on.</summary>
    /// <exception cref="ArgumentException">A value is not as described.</exception>
    public static LogEntry KeptAt(long position, string place, LocalDate day) =>
        new(position, KeptAtWord, day) { Place = EntryValue.Stated(place) };

    /// <summary>The bytes of no document are kept at a place any more.</summary>
    /// <exception cref="ArgumentException">A value is not as described.</exception>
    public static LogEntry Cleared(long position, string place, LocalDate day) =>
        new(position, ClearedWord, day) { Place = EntryValue.Stated(place) };

    /// <summary>Reads what <see cref="Bytes"/> wrote, and nothing else.</summary>
    /// <exception cref="FormatException">It is not the exact encoding of an entry.</exception>
    public static LogEntry Parse(ReadOnlyMemory<byte> bytes) =>
        LogEntryJson.Read(bytes) ?? throw new FormatException("It is not the exact encoding of a log entry.");

    /// <summary>The one encoding of this entry: JSON by RFC 8785, UTF-8 (docs/register-log.md).</summary>
    public byte[] Bytes() => LogEntryJson.Write(this);

    /// <summary>Its leaf in the tree.</summary>
    public byte[] LeafHash() => MerkleTree.LeafHash(Bytes());
}
