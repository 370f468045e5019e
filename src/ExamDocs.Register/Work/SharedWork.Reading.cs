using ExamDocs.Register.Log;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Work;

/// <content>What is known of a job.</content>
public sealed partial class SharedWork
{
    /// <summary>A job; null where there is none of that number.</summary>
    public Job? Find(int number)
    {
        lock (_one)
        {
            return Connection
                .Rows(
                    row => new Job(
                        number,
                        row.GetString(0),
                        row.Day(1)!.Value,
                        row.GetInt32(2),
                        row.IsDBNull(3) ? null : new DecidedJob(row.GetFieldValue<int[]>(3), row.GetFieldValue<int[]>(4), row.GetInt32(5))
                    ),
                    $"SELECT options, as_of, known_up_to, visits, visit_order, seen FROM {WorkTables.Schema}.job WHERE number = $1",
                    number
                )
                .FirstOrDefault();
        }
    }

    /// <summary>The files of a job.</summary>
    /// <exception cref="InvalidDataException">There are more than a job may have, or one is not as it was stored.</exception>
    public IReadOnlyList<JobFile> Files(int job)
    {
        lock (_one)
        {
            var size = Connection.Number(
                $"SELECT coalesce(sum(octet_length(bytes)::bigint), 0)::bigint FROM {WorkTables.Schema}.file WHERE job = $1",
                job
            );
            if (size > JobToEnqueue.MostBytes)
                throw new InvalidDataException("the files of the job are larger than a job may have");
            return Connection.Rows(
                row =>
                {
                    var file = new JobFile(row.GetString(0), row.GetFieldValue<byte[]>(1));
                    return string.Equals(Sha256Hex.Of(file.Bytes), row.GetString(2), StringComparison.Ordinal)
                        ? file
                        : throw new InvalidDataException($"the file {file.Path} of the job is no longer as it was given");
                },
                $"SELECT path, bytes, sha256 FROM {WorkTables.Schema}.file WHERE job = $1 ORDER BY position LIMIT $2",
                job,
                JobToEnqueue.MostFiles
            );
        }
    }

    /// <summary>Of these visits of the register, those that jobs asked for earlier than this one stored.</summary>
    public IReadOnlyList<int> StoredByEarlierJobs(int job, IReadOnlyList<int> visits)
    {
        lock (_one)
        {
            return Connection.Rows(
                row => row.GetInt32(0),
                $"""
                SELECT DISTINCT v FROM {WorkTables.Schema}.job, unnest(visits) AS v WHERE number < $1 AND v = ANY($2)
                """,
                job,
                visits.ToArray()
            );
        }
    }

    /// <summary>What parts of the job before a stage held back, as each gave it.</summary>
    public IReadOnlyList<string> RefusedBefore(int job, int stage)
    {
        lock (_one)
        {
            return Connection.Rows(
                row => row.GetString(0),
                $"SELECT refused FROM {WorkTables.Schema}.part WHERE job = $1 AND stage < $2 AND refused <> '[]'",
                job,
                stage
            );
        }
    }

    /// <summary>Numbers of the documents that the parts of a job gave so far.</summary>
    public IReadOnlyList<string> DocumentsOf(int job)
    {
        lock (_one)
        {
            return Connection.Rows(
                row => row.GetString(0),
                $"SELECT unnest(documents) FROM {WorkTables.Schema}.part WHERE job = $1 ORDER BY 1",
                job
            );
        }
    }
}
