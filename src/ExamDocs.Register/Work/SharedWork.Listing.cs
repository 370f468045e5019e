using System.Data.Common;
using ExamDocs.Register.Storage;
using NodaTime;

namespace ExamDocs.Register.Work;

/// <content>What waits, runs and failed; and what somebody asks to be done about it.</content>
public sealed partial class SharedWork
{
    /// <summary>A job is failed where a part of it is and no other can be begun.</summary>
    private static readonly string Columns = $"""
        SELECT j.number, j.title, j.asked_by, j.asked_at, j.state, j.version,
          count(*) FILTER (WHERE p.state = 'running'), count(*) FILTER (WHERE p.state = 'failed'),
          coalesce(sum(cardinality(p.documents)), 0)::integer, coalesce(sum(p.issued_before), 0)::integer,
          count(*) FILTER (WHERE p.state = 'done' AND p.stage > 0)::integer, count(*) FILTER (WHERE p.stage > 0)::integer,
          j.said, coalesce(string_agg(nullif(p.said, ''), E'\n' ORDER BY p.stage, p.slice), '')
        FROM {WorkTables.Schema}.job j JOIN {WorkTables.Schema}.part p ON p.job = j.number
        """;

    /// <summary>Jobs in the order asked for: those that are not done or refused, and the latest of the others.</summary>
    /// <param name="ended">How many of those that are done, refused or taken back.</param>
    public IReadOnlyList<ListedJob> List(int ended)
    {
        lock (_one)
        {
            return Connection.Rows(
                Listed,
                $"""
                {Columns} WHERE j.state IN ('waiting', 'decided') OR j.number IN (SELECT number FROM {WorkTables.Schema}.job
                WHERE state NOT IN ('waiting', 'decided') ORDER BY number DESC LIMIT $1) GROUP BY j.number ORDER BY j.number
                """,
                ended
            );
        }
    }

    /// <summary>One job; null where there is none of that number.</summary>
    public ListedJob? Listed(int number)
    {
        lock (_one)
        {
            return Connection.Rows(Listed, $"{Columns} WHERE j.number = $1 GROUP BY j.number", number).FirstOrDefault();
        }
    }

    /// <summary>
    /// Whether a worker of this version has nothing to wait for: every job is at an end, has failed, or belongs to another version, and
    /// nobody waits for a page.
    /// </summary>
    public bool IsIdle(string version)
    {
        lock (_one)
        {
            return Connection.Number(
                    $"""
                    SELECT (SELECT count(*) FROM {WorkTables.Schema}.page WHERE version = $1 AND state IN ('waiting', 'running'))
                    + count(*) FROM {WorkTables.Schema}.part p JOIN {WorkTables.Schema}.job j ON j.number = p.job
                    WHERE j.state IN ('waiting', 'decided') AND (j.version IS NULL OR j.version = $1)
                    AND (p.state = 'running' OR ({MayBegin("$1")}))
                    """,
                    version
                ) == 0;
        }
    }

    /// <summary>
    /// Begins a job that failed, or that another version of the program had begun, anew: it is decided again, and what is issued of it is
    /// found again.
    /// </summary>
    /// <returns>False where it is not of a kind to be begun again.</returns>
    public bool Retry(int number)
    {
        lock (_one)
        {
            using var transaction = Connection.BeginTransaction();
            if (
                Connection.Execute(
                    $"""
                    UPDATE {WorkTables.Schema}.job SET state = 'waiting', version = NULL, said = '' WHERE number = $1
                    AND state IN ('waiting', 'decided')
                    AND NOT EXISTS (SELECT FROM {WorkTables.Schema}.part WHERE job = $1 AND state = 'running')
                    """,
                    number
                ) == 0
            )
                return false;
            Connection.Execute($"DELETE FROM {WorkTables.Schema}.part WHERE job = $1 AND stage > 0", number);
            Connection.Execute(
                $"""
                UPDATE {WorkTables.Schema}.part SET state = 'waiting', attempts = 0, not_before = '-infinity', said = '' WHERE job = $1
                """,
                number
            );
            Tell();
            transaction.Commit();
            return true;
        }
    }

    /// <summary>Takes a job back that is not at an end. A part in hand is finished; what is issued stays issued.</summary>
    /// <returns>False where there is none, or it is at an end.</returns>
    public bool Cancel(int number)
    {
        lock (_one)
        {
            using var transaction = Connection.BeginTransaction();
            if (
                Connection.Execute(
                    $"UPDATE {WorkTables.Schema}.job SET state = 'cancelled' WHERE number = $1 AND state IN ('waiting', 'decided')",
                    number
                ) == 0
            )
                return false;
            Connection.Execute($"DELETE FROM {WorkTables.Schema}.file WHERE job = $1", number);
            transaction.Commit();
            return true;
        }
    }

    private static ListedJob Listed(DbDataReader row)
    {
        var (running, failed) = (row.GetInt64(6), row.GetInt64(7));
        var state = row.GetString(4) switch
        {
            "done" => JobState.Done,
            "refused" => JobState.Refused,
            "cancelled" => JobState.Cancelled,
            _ when running > 0 => JobState.Running,
            _ when failed > 0 => JobState.Failed,
            _ => JobState.Waiting,
        };
        return new(row.GetInt32(0), row.GetString(1), row.GetString(2), Instant.FromDateTimeUtc(row.GetDateTime(3)), state)
        {
            Version = row.Text(5),
            Documents = row.GetInt32(8),
            IssuedBefore = row.GetInt32(9),
            PartsDone = row.GetInt32(10),
            Parts = row.GetInt32(11),
            Said = $"{row.GetString(12)}\n{row.GetString(13)}".Split('\n', StringSplitOptions.RemoveEmptyEntries),
        };
    }
}
