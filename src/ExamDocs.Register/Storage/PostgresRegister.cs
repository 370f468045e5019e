using System.Data.Common;
using System.Globalization;
using System.Security.Cryptography;
using ExamDocs.Register.Model;
using Npgsql;

namespace ExamDocs.Register.Storage;

/// <summary>A register on a PostgreSQL server, in a schema of its own, for a firm with many examiners.</summary>
internal sealed class PostgresRegister : RegisterDatabase
{
    public const string Schema = "examdocs";

    /// <param name="connection">An open one.</param>
    /// <param name="place">Where it is, without any password.</param>
    public PostgresRegister(NpgsqlConnection connection, string place)
        : base(connection) => Place = place;

    public override string Place { get; }

    /// <summary>A lock of the session: where it is not given up, the server releases it once it sees that the connection is gone.</summary>
    public override RunHold Hold()
    {
        var key = BitConverter.ToInt64(RandomNumberGenerator.GetBytes(sizeof(long)));
        Connection.Number("SELECT 1 FROM pg_advisory_lock($1)", key);
        return new RunHold(Named(key.ToString(CultureInfo.InvariantCulture), Environment.MachineName), () => GiveUp(key));
    }

    /// <summary>The next run must not have to wait until the server sees that this one is gone.</summary>
    private void GiveUp(long key)
    {
        try
        {
            Unlock(key);
        }
        catch (Exception failure) when (failure is DbException or IOException)
        {
            // A lost connection holds nothing for long.
        }
    }

    private void Unlock(long key) => Connection.Number("SELECT CASE WHEN pg_advisory_unlock($1) THEN 1 ELSE 0 END", key);

    public override bool HasEnded(string run)
    {
        // A run on a file has no number; it cannot be running here.
        if (!long.TryParse(Parts(run).Key, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var key))
            return true;
        if (Connection.Number("SELECT CASE WHEN pg_try_advisory_lock($1) THEN 1 ELSE 0 END", key) == 0)
            return false;
        Unlock(key);
        return true;
    }

    public override bool WasElsewhere(string run) =>
        !string.Equals(Parts(run).Machine, Environment.MachineName, StringComparison.OrdinalIgnoreCase);

    /// <summary>It keeps the machine of the run that took the number, in case this run is interrupted too.</summary>
    public override string Settling(string run, string? left) => left is null ? run : Named(Parts(run).Key, Parts(left).Machine);

    /// <summary>The server guards its own pages and references; a register has nothing to add.</summary>
    public override IEnumerable<string> Damage() => [];

    public override IReadOnlyList<(string Name, bool IsOurs)> Triggers()
    {
        var ours = Guards.All.Select(g => g.Name).ToHashSet(StringComparer.Ordinal);
        return Connection.Rows(
            row =>
                (
                    row.GetString(0),
                    row.GetString(1) is "O"
                        && row.GetString(2) is "refuse"
                        && (ours.Contains(row.GetString(0)) || row.GetString(0).EndsWith(Guards.NeverEmptied, StringComparison.Ordinal))
                ),
            """
            SELECT tgname::text, tgenabled::text, proname::text FROM pg_trigger JOIN pg_class ON pg_class.oid = tgrelid
            JOIN pg_namespace ON pg_namespace.oid = relnamespace JOIN pg_proc ON pg_proc.oid = tgfoid
            WHERE nspname = $1 AND NOT tgisinternal ORDER BY 1
            """,
            Schema
        );
    }

    public override bool MayMoveContent =>
        Connection.Number(
            "SELECT count(*) FROM pg_class JOIN pg_namespace ON pg_namespace.oid = relnamespace WHERE nspname = $1 AND relname = "
                + "'content' AND pg_has_role(relowner, 'USAGE')",
            Schema
        ) == 1;

    public override void WithoutGuard(Guard guard, Action work)
    {
        Connection.Execute($"ALTER TABLE {guard.Table} DISABLE TRIGGER {guard.Name}");
        work();
        Connection.Execute($"ALTER TABLE {guard.Table} ENABLE TRIGGER {guard.Name}");
    }

    public override IReadOnlyList<string> ForeignTables() =>
        [
            .. Connection
                .Rows(
                    row => (Kind: row.GetString(0), Name: row.GetString(1)),
                    "SELECT relkind::text, relname::text FROM pg_class JOIN pg_namespace ON pg_namespace.oid = relnamespace "
                        + "WHERE nspname = $1 AND relkind IN ('r', 'v', 'm', 'f', 'p') ORDER BY 2",
                    Schema
                )
                .Where(o => o.Kind is not "r" || !Layout.Tables.Contains(o.Name, StringComparer.Ordinal))
                .Select(o => o.Name),
        ];

    public override DbTransaction BeginReading()
    {
        Connection.MustBeOpen();
        return Connection.BeginTransaction(System.Data.IsolationLevel.RepeatableRead);
    }

    /// <summary>
    /// An array, where rows would do: of rows the server supposes a hundred, and reads a table whole rather than look up so many.
    /// </summary>
    public override string AmongTexts(string parameter) => $"= ANY (ARRAY(SELECT json_array_elements_text({parameter}::json)))";

    public override string AmongNumbers(string parameter) => $"= ANY (ARRAY(SELECT json_array_elements_text({parameter}::json)::integer))";

    /// <summary>
    /// Members are in the order of their names, so that both words and numbers are at an end; no function of JSON takes bytes into an
    /// index.
    /// </summary>
    public override string VisitOfEntry =>
        """
            coalesce(substring(encode(substring(entry FROM greatest(length(entry) - 63, 1)), 'escape')
            FROM '"visit":([0-9]{1,9}),"what":"remembered"[}]$')::integer,
            CASE WHEN encode(substring(entry FROM greatest(length(entry) - 63, 1)), 'escape') ~ ',"what":"ends"[}]$'
            THEN substring(encode(substring(entry FROM 1 FOR 32), 'escape') FROM '^[{]"byVisit":([0-9]{1,9}),')::integer END)
            """;

    // No text within an entry has such quotes: they are escaped there.
    public override string DocumentOfEntry =>
        "substring(encode(entry, 'escape') FROM ',\"number\":\"([A-Z]-[0-9-]{4,15})\",\"position\":')";

    /// <summary>Whoever writes holds the one row of the register: entries of the log must come one after the other.</summary>
    public override DbTransaction BeginWriting()
    {
        Connection.MustBeOpen();
        var transaction = Connection.BeginTransaction();
        try
        {
            if (Connection.Number("SELECT single FROM register WHERE single = 1 FOR UPDATE") != 1)
                throw new RegisterRefusedException($"The register {Place} has lost its own row; restore it from a backup.");
            return transaction;
        }
        catch
        {
            transaction.Dispose();
            throw;
        }
    }

    private static string Named(string key, string machine) => $"{key}@{machine}";

    private static (string Key, string Machine) Parts(string run) =>
        run.Split('@', 2) is [var key, var machine] ? (key, machine) : (run, "");
}
