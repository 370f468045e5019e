using ExamDocs.Register.Log;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register;

/// <summary>Whether a register is sound in itself.</summary>
internal static class RegisterCheck
{
    /// <summary>One sentence for each thing that is wrong; empty where nothing is.</summary>
    public static IReadOnlyList<string> Run(RegisterDatabase database, DocumentRows rows, LogRows log, IReadOnlyList<Checkpoint> kept) =>
    [
        .. database.Damage(), .. Gaps(database), .. Contents(rows), .. Visits(database), .. Logged(rows, log, kept),
    ];

    private static List<string> Gaps(RegisterDatabase database) =>
        database.Connection.Rows(
            row => FormattableString.Invariant(
                $"Sequence {row.GetString(0)}-{row.GetInt32(1)} has a gap: the last number is {row.GetInt32(2)}, {row.GetInt64(3)} are listed."),
            """
            SELECT counter.letter, counter.year, counter.last, count(document.number)
            FROM counter LEFT JOIN document ON document.letter = counter.letter AND document.year = counter.year
            GROUP BY counter.letter, counter.year, counter.last
            HAVING count(document.number) <> counter.last OR max(document.sequence) <> counter.last
            """);

    private static IEnumerable<string> Contents(DocumentRows rows)
    {
        foreach (var document in rows.In(DocumentState.Issued))
        {
            if (Altered(() => rows.Content(document.Number, document.Sha256!)) is { } problem)
                yield return problem;
        }
    }

    private static IEnumerable<string> Visits(RegisterDatabase database) =>
        database.Connection.Rows(
            row => (Visit: row.GetInt32(0), Sha256: row.GetString(1), Record: row.GetFieldValue<byte[]>(2)), "SELECT visit, sha256, record FROM visit ORDER BY visit")
        .Where(v => !string.Equals(DurableFile.Hash(v.Record), v.Sha256, StringComparison.Ordinal))
        .Select(v => FormattableString.Invariant($"The record of visit {v.Visit} is not the one that was stored."));

    private static string? Altered(Func<byte[]> content)
    {
        try
        {
            _ = content();
            return null;
        }
        catch (InvalidDataException altered)
        {
            return altered.Message;
        }
    }

    private static IEnumerable<string> Logged(DocumentRows rows, LogRows log, IReadOnlyList<Checkpoint> kept)
    {
        var (entries, checkpoints) = (log.Entries(), log.Checkpoints());
        IEnumerable<string> faults = kept.Count == 0 ? LogCheck.Run(entries, checkpoints) : kept.SelectMany(c => LogCheck.Run(entries, checkpoints, c)).Distinct(StringComparer.Ordinal);
        if (log.Counted() is var counted && counted != entries.Count)
            faults = faults.Append(FormattableString.Invariant($"The log should have {counted} entries and has {entries.Count}."));
        return faults.Concat(LogAgainstDocuments.Faults(rows, entries));
    }
}
