using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Work;

/// <content>What a worker does with pages.</content>
public sealed partial class SharedPages
{
    /// <summary>The next page to be printed, taken for this worker.</summary>
    /// <param name="version">Version of this program.</param>
    /// <param name="lease">How long others leave it to this worker.</param>
    /// <returns>Null where none waits.</returns>
    public ClaimedPage? Claim(string version, TimeSpan lease)
    {
        lock (_one)
        {
            _channel.Forget();
            ReleaseLost();
            return _database
                .Connection.Rows(
                    row => new ClaimedPage(row.GetFieldValue<Guid>(0), row.GetFieldValue<byte[]>(1)),
                    $"""
                    UPDATE {Table} SET state = 'running', worker = $1, attempts = attempts + 1,
                    lease_until = clock_timestamp() + make_interval(secs => $2)
                    WHERE id = (
                      SELECT id FROM {Table} WHERE state = 'waiting' AND version = $3 ORDER BY place LIMIT 1 FOR UPDATE SKIP LOCKED
                    )
                    RETURNING id, html
                    """,
                    _run.Run,
                    lease.TotalSeconds,
                    version
                )
                .FirstOrDefault();
        }
    }

    /// <summary>Gives the print of a page to whoever asked for it; a claim that was lost, or a page taken back, is passed over.</summary>
    public void Answer(ClaimedPage page, byte[] pdf)
    {
        ArgumentNullException.ThrowIfNull(page);
        Change(page, "state = 'printed', pdf = $3", pdf);
    }

    /// <summary>The page cannot be printed, and whoever asked for it is told.</summary>
    public void Refuse(ClaimedPage page, string why)
    {
        ArgumentNullException.ThrowIfNull(page);
        Change(page, "state = 'failed', said = $3", why);
    }

    /// <summary>This machine cannot print it now; another may.</summary>
    public void PutBack(ClaimedPage page, string why)
    {
        ArgumentNullException.ThrowIfNull(page);
        Change(page, $"state = CASE WHEN attempts >= {MostAttempts} THEN 'failed' ELSE 'waiting' END, worker = NULL, said = $3", why);
    }

    private void Change(ClaimedPage page, string change, object value)
    {
        lock (_one)
        {
            _database.Connection.Execute(
                $"UPDATE {Table} SET {change} WHERE id = $1 AND worker = $2 AND state = 'running'",
                page.Id,
                _run.Run,
                value
            );
            _channel.Tell();
        }
    }

    /// <summary>
    /// Pages of a worker that is gone, or that let its lease end, may be begun again; pages of an asker that is gone are nobody's.
    /// </summary>
    private void ReleaseLost()
    {
        var gone = _database
            .Connection.Rows(
                row => row.GetString(0),
                $"SELECT worker FROM {Table} WHERE state = 'running' AND worker <> $1 UNION SELECT asker FROM {Table} WHERE asker <> $1",
                _run.Run
            )
            .Where(_database.HasEnded)
            .ToArray();
        if (gone.Length > 0)
            _database.Connection.Execute($"DELETE FROM {Table} WHERE asker = ANY($1)", [gone]);
        _database.Connection.Execute(
            $"""
            UPDATE {Table} SET state = CASE WHEN attempts >= {MostAttempts} THEN 'failed' ELSE 'waiting' END, worker = NULL,
            said = 'it was begun {MostAttempts} times, and each time its worker was gone before it was printed'
            WHERE state = 'running' AND (lease_until < clock_timestamp() OR worker = ANY($1))
            """,
            [gone]
        );
    }
}
