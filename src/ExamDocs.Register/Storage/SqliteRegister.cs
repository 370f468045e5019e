using System.Data.Common;
using Microsoft.Data.Sqlite;
using NodaTime;

namespace ExamDocs.Register.Storage;

/// <summary>
/// A register in a file: made where there is none, brought up to date where it is older, refused where it is none or from the future.
/// </summary>
internal sealed class SqliteRegister : RegisterDatabase
{
    /// <summary>Marks the file as a register of ours, "ExDo" in ASCII.</summary>
    internal const int ApplicationId = 0x4578446F;

    private const int NotADatabase = 26;

    /// <summary>A statement does not fit the tables.</summary>
    private const int OrdinaryError = 1;

    /// <summary>Seconds to wait for another run to finish writing.</summary>
    private const int Patience = 120;

    private readonly string _path;
    private readonly RunFiles _runs;

    private SqliteRegister(SqliteConnection connection, string path)
        : base(connection) => (_path, _runs) = (path, new RunFiles(path));

    public override string Place => _path;

    /// <exception cref="RegisterRefusedException">No register of ours, or one of a later version.</exception>
    /// <exception cref="IOException">The file cannot be reached.</exception>
    public static SqliteRegister Open(string path, LocalDate today)
    {
        if (!Directory.Exists(Path.GetDirectoryName(path)))
            throw new DirectoryNotFoundException($"There is no folder {Path.GetDirectoryName(path)} for the register.");
        return Opened(path, SqliteOpenMode.ReadWriteCreate, register =>
        {
            register.Prepare(today);
            register._runs.RemoveEnded();
            return register;
        });
    }

    /// <summary>
    /// Opens a register that is there and changes nothing in it; what a killed run left half written is undone, as by anybody who opens it.
    /// </summary>
    /// <inheritdoc cref="Open"/>
    public static SqliteRegister OpenToRead(string path, LocalDate today) => Opened(path, SqliteOpenMode.ReadWrite, register =>
        {
            if (register.IsEmpty())
                throw new RegisterRefusedException($"{path} is not a register.");
            register.Recognise();
            if (register.Connection.Number("PRAGMA user_version") < Layout.Version)
                return register.CopyInMemory(today);
            register.Connection.Execute("PRAGMA query_only = ON");
            return register;
        });

    private SqliteRegister CopyInMemory(LocalDate today)
    {
        var copy = new SqliteConnection("Data Source=:memory:;Foreign Keys=True");
        copy.Open();
        ((SqliteConnection)Connection).BackupDatabase(copy);
        Connection.Dispose();
        var register = new SqliteRegister(copy, _path);
        register.Update(today);
        return register;
    }

    private static SqliteRegister Opened(string path, SqliteOpenMode mode, Func<SqliteRegister, SqliteRegister> prepare)
    {
        var settings = new SqliteConnectionStringBuilder
        {
            DataSource = path,
            Mode = mode,
            Pooling = false,
            ForeignKeys = true,
            DefaultTimeout = Patience,
        };
        var connection = new SqliteConnection(settings.ToString());
        try
        {
            connection.Open();
            return prepare(new SqliteRegister(connection, path));
        }
        catch (SqliteException broken) when (broken.SqliteErrorCode == NotADatabase)
        {
            connection.Dispose();
            throw new RegisterRefusedException($"{path} is not a register.", broken);
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    public override RunHold Hold() => _runs.Hold();

    public override bool HasEnded(string run) => _runs.HasEnded(run);

    public override IEnumerable<string> Damage() =>
        Connection
            .Rows(row => row.GetString(0), "PRAGMA integrity_check")
            .Where(line => !string.Equals(line, "ok", StringComparison.Ordinal))
            .Concat(Connection.Rows(row => $"A row of {row.GetString(0)} refers to nothing.", "PRAGMA foreign_key_check"));

    /// <summary>The write lock is taken at once: two that read first and write then could each wait for the other.</summary>
    public override DbTransaction BeginWriting() => ((SqliteConnection)Connection).BeginTransaction(deferred: false);

    public override DbTransaction BeginReading() => ((SqliteConnection)Connection).BeginTransaction(deferred: true);

    public override string Values(string parameter) => $"(SELECT value FROM json_each({parameter}))";

    public override string Numbers(string parameter) => Values(parameter);

    public override string VisitOfEntry =>
        """
            CASE WHEN json_valid(CAST(entry AS TEXT)) THEN CASE json_extract(CAST(entry AS TEXT), '$.what')
            WHEN 'remembered' THEN json_extract(CAST(entry AS TEXT), '$.visit') WHEN 'ends' THEN json_extract(CAST(entry AS TEXT), '$.byVisit') END END
            """;

    private void Prepare(LocalDate today)
    {
        if (!IsEmpty())
            Recognise();
        Connection.Execute("PRAGMA journal_mode = DELETE");
        // EXTRA also flushes the folder once the rollback journal is gone, without which a loss of power may undo a commit.
        Connection.Execute("PRAGMA synchronous = EXTRA");
        if (Connection.Number("PRAGMA user_version") < Layout.Version)
            Update(today);
        Index();
    }

    /// <summary>Another run may be making them: they are looked for again under the lock.</summary>
    private void Index()
    {
        if (Missing().Count == 0)
            return;
        using var transaction = BeginWriting();
        foreach (var index in Missing())
            Connection.Execute(Written(index));
        transaction.Commit();

        List<string> Missing()
        {
            var there = Connection.Rows(row => row.GetString(0), "SELECT name FROM sqlite_schema WHERE type = 'index'");
            return [.. Layout.Indexes(VisitOfEntry).Where(i => !there.Contains(i.Name, StringComparer.Ordinal)).Select(i => i.Statement)];
        }
    }

    private bool IsEmpty() =>
        Connection.Number("SELECT count(*) FROM sqlite_schema") == 0
        && Connection.Number("PRAGMA application_id") == 0
        && Connection.Number("PRAGMA user_version") == 0;

    private void Recognise()
    {
        if (Connection.Number("PRAGMA application_id") != ApplicationId)
            throw new RegisterRefusedException($"{_path} is a database, but not a register.");
        if (Connection.Number("PRAGMA user_version") is var version && version > Layout.Version)
            throw RegisterRefusedException.FromTheFuture(_path, version);
    }

    /// <summary>Another run may have done it in the meantime: what is there is looked at again under the lock.</summary>
    private void Update(LocalDate today)
    {
        try
        {
            Step(today);
        }
        catch (SqliteException odd) when (odd.SqliteErrorCode == OrdinaryError)
        {
            throw new RegisterRefusedException(
                $"{_path} says that it is of an earlier version, and its tables are not: it was damaged or altered. Restore a backup.",
                odd
            );
        }
    }

    private void Step(LocalDate today)
    {
        using var transaction = BeginWriting();
        var version = Connection.Number("PRAGMA user_version");
        if (version >= Layout.Version)
            return;
        if (version < 1)
            Connection.Execute(Written(Layout.First));
        // A guard would keep the steps themselves from their work.
        foreach (var guard in Connection.Rows(row => row.GetString(0), "SELECT name FROM sqlite_schema WHERE type = 'trigger'"))
            Connection.Execute($"DROP TRIGGER \"{guard}\"");
        if (version < 2)
        {
            Connection.Execute(Written(Layout.Second));
            Migration.ToSecond(Connection, today);
        }
        Connection.Execute(Written(Layout.Third));
        Migration.ToThird(this, today);
        foreach (var guard in Guards.All)
            Connection.Execute(Written(guard));
        Connection.Execute(FormattableString.Invariant($"PRAGMA application_id = {ApplicationId}"));
        Connection.Execute(FormattableString.Invariant($"PRAGMA user_version = {Layout.Version}"));
        transaction.Commit();
    }

    public override IReadOnlyList<(string Name, bool IsOurs)> Triggers()
    {
        var ours = Guards.All.ToDictionary(g => g.Name, Written, StringComparer.Ordinal);
        return Connection.Rows(
            row =>
                (
                    row.GetString(0),
                    ours.TryGetValue(row.GetString(0), out var text) && string.Equals(text, row.Text(1), StringComparison.Ordinal)
                ),
            "SELECT name, sql FROM sqlite_schema WHERE type = 'trigger' ORDER BY name"
        );
    }

    public override IReadOnlyList<string> Strange() =>
        [
            .. Connection
                .Rows(
                    row => (Type: row.GetString(0), Name: row.GetString(1)),
                    "SELECT type, name FROM sqlite_schema WHERE type IN ('table', 'view') ORDER BY name"
                )
                .Where(o =>
                    o.Type is "view"
                    || !(Layout.Tables.Contains(o.Name, StringComparer.Ordinal) || o.Name.StartsWith("sqlite_", StringComparison.Ordinal))
                )
                .Select(o => o.Name),
        ];

    private static string Written(Guard guard) =>
        $"CREATE TRIGGER {guard.Name} BEFORE {guard.Event} ON \"{guard.Table}\" WHEN {guard.When} BEGIN SELECT RAISE(ABORT, "
        + $"'{guard.Words}'); END";

    private static string Written(string layout) =>
        layout
            .Replace("{strict}", " STRICT", StringComparison.Ordinal)
            .Replace("{blob}", "BLOB", StringComparison.Ordinal)
            .Replace("{equal}", "", StringComparison.Ordinal);
}
