using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Work;

/// <content>Taking parts, keeping them, and giving them back.</content>
public sealed partial class SharedWork
{
    /// <summary>
    /// The next part that may be begun, taken for this worker: of the oldest job first. A stage begins once those before it are done;
    /// a job is decided after the jobs of the same visits that were asked for before it.
    /// </summary>
    /// <param name="version">Version of this program: another one's jobs are left to it, since it may word things otherwise.</param>
    /// <param name="lease">How long the claim holds without being renewed.</param>
    /// <param name="job">Only a part of this job; null for any.</param>
    /// <returns>Null where nothing can be begun now.</returns>
    public ClaimedPart? Claim(string version, TimeSpan lease, int? job = null)
    {
        lock (_one)
        {
            _channel.Forget();
            ReleaseLost();
            return Connection
                .Rows(
                    row => new ClaimedPart(new(row.GetInt32(0), row.GetInt32(1), row.GetInt32(2), row.GetInt32(3)), row.GetInt32(4)),
                    $"""
                    UPDATE {WorkTables.Schema}.part SET state = 'running', run = $1, attempts = attempts + 1,
                    lease_until = clock_timestamp() + make_interval(secs => $2)
                    WHERE (job, stage, slice) = (
                      SELECT p.job, p.stage, p.slice FROM {WorkTables.Schema}.part p JOIN {WorkTables.Schema}.job j ON j.number = p.job
                      WHERE {MayBegin("$3")} AND p.not_before <= clock_timestamp() AND (p.job = $4 OR $4 = 0)
                      ORDER BY p.job, p.stage, p.slice LIMIT 1 FOR UPDATE OF p SKIP LOCKED
                    )
                    RETURNING job, stage, slice, slices, attempts
                    """,
                    _run.Run,
                    lease.TotalSeconds,
                    version,
                    job ?? 0
                )
                .FirstOrDefault();
        }
    }

    /// <param name="version">Name of the value that has the version of this program.</param>
    private static string MayBegin(string version) =>
        $"""
            p.state = 'waiting' AND j.state IN ('waiting', 'decided') AND (j.version IS NULL OR j.version = {version})
            AND NOT EXISTS (SELECT FROM {WorkTables.Schema}.part q WHERE q.job = p.job AND q.stage < p.stage AND q.state <> 'done')
            AND (p.stage > 0 OR NOT EXISTS (
              SELECT FROM {WorkTables.Schema}.job e WHERE e.number < j.number AND e.state = 'waiting'
              AND e.visit_references && j.visit_references
              AND NOT EXISTS (SELECT FROM {WorkTables.Schema}.part f WHERE f.job = e.number AND f.state = 'failed')
            ))
            """;

    /// <summary>
    /// Parts whose worker let its lease end, or is gone: the lock of its session tells at once that it was killed, the lease that its
    /// machine hangs. They may be begun again, but not for ever.
    /// </summary>
    private void ReleaseLost()
    {
        var gone = Connection
            .Rows(
                row => row.GetString(0),
                $"SELECT DISTINCT run FROM {WorkTables.Schema}.part WHERE state = 'running' AND run <> $1",
                _run.Run
            )
            .Where(_database.HasEnded)
            .ToArray();
        Connection.Execute(
            $"""
            UPDATE {WorkTables.Schema}.part SET state = CASE WHEN attempts >= $1 THEN 'failed' ELSE 'waiting' END,
            run = NULL, lease_until = NULL, said = CASE WHEN attempts >= $1 THEN $2 ELSE said END
            WHERE state = 'running' AND (lease_until < clock_timestamp() OR run = ANY($3))
            """,
            MostAttempts,
            FormattableString.Invariant($"it was begun {MostAttempts} times, and each time its worker was gone before a document came out"),
            gone
        );
    }

    /// <summary>Prolongs the claim on a part.</summary>
    /// <returns>False where it is lost: another worker may have the part.</returns>
    public bool Renew(ClaimedPart claimed, TimeSpan lease)
    {
        lock (_one)
        {
            return Change(claimed, "lease_until = clock_timestamp() + make_interval(secs => $5)", lease.TotalSeconds);
        }
    }

    /// <summary>A document of the part came out: the attempts before this one were not in vain, and no longer count.</summary>
    public void Advance(ClaimedPart claimed)
    {
        lock (_one)
        {
            Change(claimed, "attempts = 1");
        }
    }

    /// <summary>
    /// Gives a part back. Where its machine failed too often it counts as failed, and is not begun again until somebody asks for it.
    /// </summary>
    /// <param name="claimed">The part.</param>
    /// <param name="said">Why, in a sentence.</param>
    /// <param name="wait">How long nobody begins it again.</param>
    /// <param name="counts">Whether this attempt counts.</param>
    public void PutBack(ClaimedPart claimed, string said, TimeSpan wait, bool counts)
    {
        lock (_one)
        {
            Change(
                claimed,
                """
                state = CASE WHEN attempts - $5 >= $6 THEN 'failed' ELSE 'waiting' END, attempts = attempts - $5, run = NULL,
                lease_until = NULL, not_before = clock_timestamp() + make_interval(secs => $7), said = $8
                """,
                counts ? 0 : 1,
                MostAttempts,
                wait.TotalSeconds,
                Short(said)
            );
            Tell();
        }
    }

    /// <summary>A part that would fail again however often it is tried.</summary>
    public void Fail(ClaimedPart claimed, string said)
    {
        lock (_one)
        {
            Change(claimed, "state = 'failed', run = NULL, lease_until = NULL, said = $5", Short(said));
        }
    }

    private bool Change(ClaimedPart claimed, string change, params object?[] values) =>
        Connection.Execute(
            $"""
            UPDATE {WorkTables.Schema}.part SET {change} WHERE job = $1 AND stage = $2 AND slice = $3 AND run = $4 AND state = 'running'
            """,
            [claimed.Part.Job, claimed.Part.Stage, claimed.Part.Slice, _run.Run, .. values]
        ) == 1;

    /// <summary>What is said has to fit: the documents and the register say the rest.</summary>
    private static string Short(string said) => said.Length <= 20_000 ? said : said[..20_000] + "\n…";
}
