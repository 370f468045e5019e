using System.Data.Common;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Opening;
using ExamDocs.Register.Storage;
using Npgsql;

namespace ExamDocs.Register.Work;

/// <summary>
/// The jobs that machines share, over a connection of its own. It shares out work, and that is all: that a document comes out once is seen
/// to by the register, where no two documents have one job key. Every time is that of the server's clock. It may be used from several
/// threads.
/// </summary>
public sealed partial class SharedWork : IDisposable
{
    /// <summary>How often a part is begun, at most, without a document coming out, before it counts as failed; our own choice.</summary>
    public const int MostAttempts = 5;

    private readonly Lock _one = new();
    private readonly PostgresRegister _database;
    private readonly RunHold _run;
    private readonly ServerChannel _channel;

    private SharedWork(PostgresRegister database) =>
        (_database, _run, _channel) = (database, database.Hold(), new((NpgsqlConnection)database.Connection, "examdocs_work"));

    private DbConnection Connection => _database.Connection;

    /// <summary>Whether a register can have one: one on a server can.</summary>
    public static bool CanBeAt(string place)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(place);
        return PostgresAddress.IsOne(place);
    }

    /// <summary>Makes the tables beside a register, where there are none; the owner of the database may.</summary>
    /// <param name="place">Address of a register that is there.</param>
    /// <exception cref="RegisterRefusedException">They are of another version, or this user may make none.</exception>
    public static void Make(string place)
    {
        using var register = PostgresOpening.OpenForWork(place);
        WorkTables.Make(register);
    }

    /// <param name="place">Address of a register on a server.</param>
    /// <exception cref="RegisterRefusedException">There is no such list, or this user may not use it.</exception>
    /// <exception cref="IOException">There is no such server.</exception>
    /// <exception cref="DbException">The server cannot be reached, or refuses.</exception>
    public static SharedWork Open(string place)
    {
        var register = WorkTables.Open(place);
        try
        {
            var work = new SharedWork(register);
            work._channel.Listen();
            return work;
        }
        catch
        {
            register.Dispose();
            throw;
        }
    }

    /// <summary>Puts a job on the list, and tells the workers that wait.</summary>
    /// <returns>Its number.</returns>
    public int Enqueue(JobToEnqueue job)
    {
        ArgumentNullException.ThrowIfNull(job);
        if (job.Files.Count > JobToEnqueue.MostFiles || job.Files.Sum(f => (long)f.Bytes.Length) > JobToEnqueue.MostBytes)
            throw new ArgumentException("A job of this size is not shared out.", nameof(job));
        lock (_one)
        {
            using var transaction = Connection.BeginTransaction();
            var number = (int)
                Connection.Number(
                    $"""
                    INSERT INTO {WorkTables.Schema}.job (title, visit_references, options, as_of, known_up_to)
                    VALUES ($1, $2, $3, $4, $5) RETURNING number
                    """,
                    job.Title,
                    job.References.ToArray(),
                    job.Options,
                    StoredDay.Of(job.AsOf),
                    job.KnownUpTo
                );
            foreach (var (position, file) in job.Files.Index())
                Connection.Execute(
                    $"INSERT INTO {WorkTables.Schema}.file VALUES ($1, $2, $3, $4, $5)",
                    number,
                    position,
                    file.Path,
                    file.Bytes,
                    Sha256Hex.Of(file.Bytes)
                );
            Connection.Execute($"INSERT INTO {WorkTables.Schema}.part (job, stage, slice, slices) VALUES ($1, 0, 0, 1)", number);
            Tell();
            transaction.Commit();
            return number;
        }
    }

    /// <summary>
    /// Waits until somebody tells of a change, or the time is over: what is told may be missed, so whoever waits looks again now and then.
    /// </summary>
    public Task WaitAsync(TimeSpan longest, CancellationToken cancellation) => _channel.WaitAsync(longest, cancellation);

    private void Tell() => _channel.Tell();

    public void Dispose()
    {
        _run.Dispose();
        _database.Dispose();
    }
}
