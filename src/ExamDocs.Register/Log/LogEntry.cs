using NodaTime;

namespace ExamDocs.Register.Log;

/// <summary>One thing that happened to a document, as it stands in the log for good.</summary>
public sealed class LogEntry
{
    public const string IssuedWord = "issued";
    public const string VoidWord = "void";
    public const string WithdrawnWord = "withdrawn";
    public const string ReplacedWord = "replaced";

    /// <summary>The greatest whole number that every JSON reader keeps exactly, 2^53 - 1.</summary>
    private const long GreatestPosition = 9_007_199_254_740_991;

    private LogEntry(long position, string what, LoggedDocument document, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentOutOfRangeException.ThrowIfNegative(position);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(position, GreatestPosition);
        if (day.Year is < 1900 or > 9999)
            throw new ArgumentOutOfRangeException(nameof(day), day, "A year from 1900 to 9999 is needed.");
        (Position, What, Document, Day) = (position, what, document, day);
    }

    /// <summary>Place in the log, from 0.</summary>
    public long Position { get; }

    /// <summary><c>issued</c>, <c>void</c>, <c>withdrawn</c> or <c>replaced</c>.</summary>
    public string What { get; }

    /// <summary>The document that it happened to.</summary>
    public LoggedDocument Document { get; }

    /// <summary>The day on which it happened.</summary>
    public LocalDate Day { get; }

    /// <summary>Of the file issued, lower-case hexadecimal; null unless issued.</summary>
    public string? Sha256 { get; private init; }

    /// <summary>Why; null where issued.</summary>
    public string? Reason { get; private init; }

    /// <summary>Number of the document that takes its place; null unless replaced.</summary>
    public string? By { get; private init; }

    /// <summary>The document came out.</summary>
    /// <param name="sha256">Of its file: 64 lower-case hexadecimal digits.</param>
    /// <exception cref="ArgumentException">A value is not as described.</exception>
    public static LogEntry Issued(long position, LoggedDocument document, string sha256, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(sha256);
        if (sha256.Length != 64 || !sha256.All(char.IsAsciiHexDigit) || sha256.Any(char.IsAsciiLetterUpper))
            throw new ArgumentException("64 lower-case hexadecimal digits are needed.", nameof(sha256));
        return new(position, IssuedWord, document, day) { Sha256 = sha256 };
    }

    /// <summary>The number was taken and no document came out.</summary>
    /// <exception cref="ArgumentException">A value is not as described.</exception>
    public static LogEntry Void(long position, LoggedDocument document, string reason, LocalDate day) =>
        new(position, VoidWord, document, day) { Reason = Stated(reason) };

    /// <summary>The document holds no longer, and none takes its place.</summary>
    /// <exception cref="ArgumentException">A value is not as described.</exception>
    public static LogEntry Withdrawn(long position, LoggedDocument document, string reason, LocalDate day) =>
        new(position, WithdrawnWord, document, day) { Reason = Stated(reason) };

    /// <summary>Another document takes its place.</summary>
    /// <param name="by">Number of the other one.</param>
    /// <exception cref="ArgumentException">A value is not as described.</exception>
    public static LogEntry Replaced(long position, LoggedDocument document, string by, string reason, LocalDate day) =>
        DocumentNumber.TryParse(by, out _)
            ? new(position, ReplacedWord, document, day) { By = by, Reason = Stated(reason) }
            : throw new ArgumentException("A document number is needed.", nameof(by));

    /// <summary>Reads what <see cref="Bytes"/> wrote, and nothing else.</summary>
    /// <exception cref="FormatException">It is not the exact encoding of an entry.</exception>
    public static LogEntry Parse(ReadOnlyMemory<byte> bytes) =>
        LogEntryJson.Read(bytes) ?? throw new FormatException("It is not the exact encoding of a log entry.");

    /// <summary>The one encoding of this entry: JSON by RFC 8785, UTF-8 (docs/register-log.md).</summary>
    public byte[] Bytes() => LogEntryJson.Write(this);

    /// <summary>Its leaf in the tree.</summary>
    public byte[] LeafHash() => MerkleTree.LeafHash(Bytes());

    private static string Stated(string reason)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(reason);
        return CanonicalText.Sound(reason, nameof(reason));
    }
}
