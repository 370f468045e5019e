using System.Data.Common;
using Microsoft.Data.Sqlite;

namespace ExamDocs.Register.Storage;

/// <summary>A register in a file, open.</summary>
internal sealed class SqliteRegister : RegisterDatabase
{
    private readonly RunFiles _runs;

    public SqliteRegister(SqliteConnection connection, string path)
        : base(connection) => (Place, _runs) = (path, new RunFiles(path));

    public override string Place { get; }

    public override RunHold Hold() => _runs.Hold();

    public override bool HasEnded(string run) => _runs.HasEnded(run);

    /// <summary>Takes away the files of runs that were killed.</summary>
    public void RemoveEndedRuns() => _runs.RemoveEnded();

    public override IEnumerable<string> Damage() =>
        Connection
            .Rows(row => row.GetString(0), "PRAGMA integrity_check")
            .Where(line => !string.Equals(line, "ok", StringComparison.Ordinal))
            .Concat(Connection.Rows(row => $"A row of {row.GetString(0)} refers to a row that is not there.", "PRAGMA foreign_key_check"));

    /// <summary>The write lock is taken at once: two that read first and write then could each wait for the other.</summary>
    public override DbTransaction BeginWriting() => ((SqliteConnection)Connection).BeginTransaction(deferred: false);

    public override DbTransaction BeginReading() => ((SqliteConnection)Connection).BeginTransaction(deferred: true);

    public override string AmongTexts(string parameter) => $"IN (SELECT value FROM json_each({parameter}))";

    public override string AmongNumbers(string parameter) => AmongTexts(parameter);

    public override string VisitOfEntry =>
        """
            CASE WHEN json_valid(CAST(entry AS TEXT)) THEN CASE json_extract(CAST(entry AS TEXT), '$.what')
            WHEN 'remembered' THEN json_extract(CAST(entry AS TEXT), '$.visit')
            WHEN 'ends' THEN json_extract(CAST(entry AS TEXT), '$.byVisit') END END
            """;

    public override string DocumentOfEntry =>
        "CASE WHEN json_valid(CAST(entry AS TEXT)) THEN json_extract(CAST(entry AS TEXT), '$.number') END";

    public override IReadOnlyList<(string Name, bool IsOurs)> Triggers()
    {
        var ours = Guards.All.ToDictionary(g => g.Name, Trigger, StringComparer.Ordinal);
        return Connection.Rows(
            row =>
                (
                    row.GetString(0),
                    ours.TryGetValue(row.GetString(0), out var text) && string.Equals(text, row.Text(1), StringComparison.Ordinal)
                ),
            "SELECT name, sql FROM sqlite_schema WHERE type = 'trigger' ORDER BY name"
        );
    }

    /// <summary>
    /// The statement that makes a guard. The file keeps it as it is written here, and a check compares the two letter for letter: another
    /// space would make every guard of every register a foreign one.
    /// </summary>
    public static string Trigger(Guard guard) =>
        $"CREATE TRIGGER {guard.Name} BEFORE {guard.Event} ON \"{guard.Table}\" WHEN {guard.When} BEGIN SELECT RAISE(ABORT, "
        + $"'{guard.Words}'); END";

    public override void GiveBackSpace()
    {
        try
        {
            using var command = Connection.CreateCommand();
            command.CommandText = "VACUUM";
            // Seconds to wait for runs at work; a busy register is left as large as it is.
            command.CommandTimeout = 5;
            command.ExecuteNonQuery();
        }
        catch (SqliteException)
        {
            // Somebody is at work on it, or the disk has no room for a second one meanwhile; the space is used again for what comes.
        }
    }

    public override void WithoutGuard(Guard guard, Action work)
    {
        Connection.Execute($"DROP TRIGGER IF EXISTS {guard.Name}");
        work();
        Connection.Execute(Trigger(guard));
    }

    public override IReadOnlyList<string> ForeignTables() =>
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
}
