using System.Data.Common;
using NodaTime;
using Npgsql;

namespace ExamDocs.Register.Storage;

/// <summary>Makes the tables of a register on a server, where there are none.</summary>
internal static class PostgresTables
{
    /// <summary>Taken while tables are made, so that two first runs do not both make them; any fixed number will do.</summary>
    private const long MakingTables = 0x4578446F_63730001;

    private const string NoPermission = "42501";

    /// <exception cref="RegisterRefusedException">It is of a later version, or none can be made here.</exception>
    public static void Prepare(DbConnection connection, string place, LocalDate today)
    {
        using var transaction = connection.BeginTransaction();
        connection.Number("SELECT 1 FROM pg_advisory_xact_lock($1)", MakingTables);
        if (!IsThere(connection))
            Create(connection, place, today);
        else if (connection.Number("SELECT layout FROM register") is var version && version > Layout.Version)
            throw RegisterRefusedException.FromTheFuture(place, version);
        transaction.Commit();
    }

    // Other views of the catalogue leave out what this user may not read.
    private static bool IsThere(DbConnection connection) => connection.Number(
        "SELECT count(*) FROM pg_class JOIN pg_namespace ON pg_namespace.oid = relnamespace WHERE nspname = $1 AND relname = 'register'", PostgresRegister.Schema) > 0;

    private static void Create(DbConnection connection, string place, LocalDate today)
    {
        if (connection.Number("SELECT CASE current_setting('server_encoding') WHEN 'UTF8' THEN 1 ELSE 0 END") == 0)
            throw new RegisterRefusedException($"The database {place} cannot keep every character: make one with the encoding UTF8.");
        try
        {
            // Who may make no schema is refused even where it is there.
            if (connection.Number("SELECT count(*) FROM pg_namespace WHERE nspname = $1", PostgresRegister.Schema) == 0)
                connection.Execute($"CREATE SCHEMA {PostgresRegister.Schema}");
            connection.Execute(Written(Layout.First));
        }
        catch (PostgresException refused) when (string.Equals(refused.SqlState, NoPermission, StringComparison.Ordinal))
        {
            throw new RegisterRefusedException(
                $"There is no register at {place} yet, and this user may make none. Open it once as the owner of the database (docs/shared-register.md).", refused);
        }
        connection.Execute(Written(Layout.Second));
        Migration.ToSecond(connection, today);
        Guard(connection);
    }

    private static void Guard(DbConnection connection)
    {
        connection.Execute(
            """
            CREATE FUNCTION refuse() RETURNS trigger LANGUAGE plpgsql SET search_path FROM CURRENT AS $$ BEGIN RAISE EXCEPTION '%', TG_ARGV[0]; END $$;
            CREATE FUNCTION is_issued(wanted TEXT) RETURNS boolean LANGUAGE sql STABLE SET search_path FROM CURRENT AS $$ SELECT state = 'issued' FROM document WHERE number = wanted $$;
            """);
        foreach (var guard in Layout.Guards)
        {
            // A condition may hold no question here, but it may call a function that asks.
            var when = guard.When.Replace("(SELECT state FROM document WHERE number = OLD.number) = 'issued'", "is_issued(OLD.number)", StringComparison.Ordinal);
            connection.Execute($"CREATE TRIGGER {guard.Name} BEFORE {guard.Event} ON {guard.Table} FOR EACH ROW WHEN ({when}) EXECUTE FUNCTION refuse('{guard.Words}')");
        }
        // Emptying a table at one go passes by its rows.
        foreach (var table in Layout.Guards.Select(g => g.Table).Distinct(StringComparer.Ordinal))
            connection.Execute($"CREATE TRIGGER {table}_is_never_emptied BEFORE TRUNCATE ON {table} EXECUTE FUNCTION refuse('a register is never emptied')");
    }

    private static string Written(string layout) => layout
        .Replace("{strict}", "", StringComparison.Ordinal).Replace("{blob}", "BYTEA", StringComparison.Ordinal)
        // What is typed may be longer than a tree of a server takes.
        .Replace("{equal}", "USING hash ", StringComparison.Ordinal);
}
