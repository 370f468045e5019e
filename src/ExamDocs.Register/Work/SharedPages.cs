using ExamDocs.Register.Opening;
using ExamDocs.Register.Storage;
using Npgsql;

namespace ExamDocs.Register.Work;

/// <summary>A page that a worker has taken to print it.</summary>
/// <param name="Id">Which it is.</param>
/// <param name="Html">The page.</param>
public sealed record ClaimedPage(Guid Id, byte[] Html);

/// <summary>What came of a page.</summary>
/// <param name="Id">Which it is.</param>
/// <param name="Pdf">The print; null where there is none.</param>
/// <param name="Why">Why there is none.</param>
public sealed record AnsweredPage(Guid Id, byte[]? Pdf, string? Why);

/// <summary>
/// Pages that one machine asks the others to print, over a connection of its own. They have no number and are no documents: whoever asks
/// numbers, reads back and signs them. Every time is that of the server's clock. It may be used from several threads, one of which
/// may wait while nothing else is asked of it.
/// </summary>
public sealed partial class SharedPages : IDisposable
{
    /// <summary>Most bytes of a page, inclusive; our own limit.</summary>
    public const int MostBytes = 64 * 1024 * 1024;

    /// <summary>How often a page is begun, at most, before nobody tries it again; our own choice.</summary>
    public const int MostAttempts = 3;

    private const string Table = $"{WorkTables.Schema}.page";

    private readonly Lock _one = new();
    private readonly PostgresRegister _database;
    private readonly RunHold _run;
    private readonly ServerChannel _channel;

    private SharedPages(PostgresRegister database) =>
        (_database, _run, _channel) = (database, database.Hold(), new((NpgsqlConnection)database.Connection, "examdocs_page"));

    /// <summary>Tells this connection's pages from those of others; its session holds a lock of that name.</summary>
    public string Asker => _run.Run;

    /// <summary>The register, without what a password would be in.</summary>
    public string Place => _database.Place;

    /// <inheritdoc cref="SharedWork.Open"/>
    public static SharedPages Open(string place)
    {
        var register = WorkTables.Open(place);
        try
        {
            var pages = new SharedPages(register);
            pages._channel.Listen();
            return pages;
        }
        catch
        {
            register.Dispose();
            throw;
        }
    }

    /// <summary>Asks for a page to be printed.</summary>
    /// <param name="id">A new one.</param>
    /// <param name="html">The page, UTF-8.</param>
    /// <param name="version">Version of this program: another one's workers leave it alone.</param>
    public void Ask(Guid id, byte[] html, string version)
    {
        lock (_one)
        {
            _database.Connection.Execute(
                $"INSERT INTO {Table} (id, asker, version, html) VALUES ($1, $2, $3, $4)",
                id,
                Asker,
                version,
                html
            );
            _channel.Tell();
        }
    }

    /// <summary>Takes back a page that nobody waits for any longer.</summary>
    public void TakeBack(Guid id)
    {
        lock (_one)
        {
            _database.Connection.Execute($"DELETE FROM {Table} WHERE id = $1", id);
        }
    }

    /// <summary>What came of an asker's pages; each is told once.</summary>
    /// <param name="asker">The <see cref="Asker"/> that asked for them.</param>
    public IReadOnlyList<AnsweredPage> Answers(string asker)
    {
        lock (_one)
        {
            _channel.Forget();
            return _database.Connection.Rows(
                row => new AnsweredPage(
                    row.GetFieldValue<Guid>(0),
                    row.IsDBNull(1) ? null : row.GetFieldValue<byte[]>(1),
                    row.IsDBNull(2) ? null : row.GetString(2)
                ),
                $"DELETE FROM {Table} WHERE asker = $1 AND state IN ('printed', 'failed') RETURNING id, pdf, said",
                asker
            );
        }
    }

    /// <summary>Waits until somebody tells of a page, or the time is over.</summary>
    public Task WaitAsync(TimeSpan longest, CancellationToken cancellation) => _channel.WaitAsync(longest, cancellation);

    public void Dispose()
    {
        _run.Dispose();
        _database.Dispose();
    }
}
