using System.Data.Common;
using ExamDocs.Register.Model;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;
using NodaTime;
using Npgsql;

namespace ExamDocs.Register.Opening;

/// <summary>Makes the tables of a register on a server, where there are none.</summary>
internal static class PostgresTables
{
    /// <summary>Taken while tables are made, so that two first runs do not both make them; any fixed number will do.</summary>
    private const long MakingTables = 0x4578446F_63730001;

    private const string NoPermission = "42501";

    /// <exception cref="RegisterRefusedException">It is of a later version, or none can be made or brought up to date here.</exception>
    public static void Prepare(PostgresRegister register, LocalDate today)
    {
        var connection = register.Connection;
        using var transaction = connection.BeginTransaction();
        connection.Number("SELECT 1 FROM pg_advisory_xact_lock($1)", MakingTables);
        if (!IsThere(connection))
            Create(register, today);
        else if (Recognised(register) is var version && version < Layout.Version)
            BringUpToDate(register, version, today);
        transaction.Commit();
    }

    /// <exception cref="RegisterRefusedException">It is of another version, or this user may not use it.</exception>
    public static void Recognise(PostgresRegister register)
    {
        if (Recognised(register) < Layout.Version)
            throw OfEarlierVersion(register.Place, null);
    }

    private static RegisterRefusedException OfEarlierVersion(string place, Exception? refused) =>
        new(
            $"The register at {place} is of an earlier version. Open it once as the owner of the database, who may bring it "
                + "up to date (docs/shared-register.md).",
            refused
        );

    private static long Recognised(PostgresRegister register)
    {
        var (connection, place) = (register.Connection, register.Place);
        if (connection.Number("SELECT CASE WHEN has_schema_privilege($1, 'USAGE') THEN 1 ELSE 0 END", PostgresRegister.Schema) == 0)
            throw new RegisterRefusedException(
                $"There is a register at {place}, and this user may not use it. Have it granted by whoever keeps the server "
                    + "(docs/shared-register.md)."
            );
        var version = connection.Number("SELECT layout FROM register");
        return version > Layout.Version ? throw RegisterRefusedException.FromTheFuture(place, version, Layout.Version) : version;
    }

    // Other views of the catalogue leave out what this user may not read.
    public static bool IsThere(DbConnection connection) =>
        connection.Number(
            "SELECT count(*) FROM pg_class JOIN pg_namespace ON pg_namespace.oid = relnamespace WHERE nspname = $1 AND "
                + "relname = 'register'",
            PostgresRegister.Schema
        ) > 0;

    private static void Create(PostgresRegister register, LocalDate today)
    {
        var (connection, place) = (register.Connection, register.Place);
        if (connection.Number("SELECT CASE current_setting('server_encoding') WHEN 'UTF8' THEN 1 ELSE 0 END") == 0)
            throw new RegisterRefusedException($"The database {place} cannot keep every character: make one with the encoding UTF8.");
        try
        {
            // Who may make no schema is refused even where it is there.
            if (connection.Number("SELECT count(*) FROM pg_namespace WHERE nspname = $1", PostgresRegister.Schema) == 0)
                connection.Execute($"CREATE SCHEMA {PostgresRegister.Schema}");
            connection.Execute(Written(FirstLayout.Statements));
        }
        catch (PostgresException refused) when (string.Equals(refused.SqlState, NoPermission, StringComparison.Ordinal))
        {
            throw new RegisterRefusedException(
                $"There is no register at {place} yet, and this user may not make one. Open it once as the owner of the database "
                    + "(docs/shared-register.md).",
                refused
            );
        }
        connection.Execute(Written(FourthLayout.Statements));
        connection.Execute(Written(SecondLayout.Statements));
        Migration.ToSecond(connection, today);
        connection.Execute(Written(ThirdLayout.Statements));
        Migration.ToThird(register, today);
        connection.Execute(Written(FourthLayout.Indexes(register.VisitOfEntry)));
        Migration.ToFourth(connection);
        connection.Execute(Written(FifthLayout.Statements(register.DocumentOfEntry)));
        Migration.ToLatestKeys(register);
        PostgresGuards.Make(connection);
    }

    private static void BringUpToDate(PostgresRegister register, long version, LocalDate today)
    {
        var connection = register.Connection;
        try
        {
            PostgresGuards.TakeAway(connection);
            if (version < 4)
                connection.Execute(Written(FourthLayout.Statements));
            if (version < 3)
                connection.Execute(Written(ThirdLayout.Statements));
            if (version < 4)
                connection.Execute(Written(FourthLayout.Indexes(register.VisitOfEntry)));
            if (version < 5)
                connection.Execute(Written(FifthLayout.Statements(register.DocumentOfEntry)));
        }
        catch (PostgresException refused) when (string.Equals(refused.SqlState, NoPermission, StringComparison.Ordinal))
        {
            throw OfEarlierVersion(register.Place, refused);
        }
        if (version < 3)
            Migration.ToThird(register, today);
        if (version < 4)
            Migration.ToFourth(connection);
        Migration.ToLatestKeys(register);
        connection.Execute(GrantAsBefore);
        PostgresGuards.Make(connection);
    }

    /// <summary>
    /// Who may store visits may store what a visit has now, and see where documents are kept; only the owner moves them. Who may read the
    /// log, or add to it, may do so with its nodes; the same holds for the keys of visits and those of items.
    /// </summary>
    private const string GrantAsBefore = """
        DO $$ DECLARE who record; BEGIN
          FOR who IN SELECT DISTINCT grantee FROM information_schema.role_table_grants
            WHERE table_schema = 'examdocs' AND table_name = 'visit' AND privilege_type = 'INSERT' AND grantee <> current_user LOOP
            EXECUTE format('GRANT SELECT, INSERT ON item_key, line_end, ended_line, merged_visit TO %I', who.grantee);
            EXECUTE format('GRANT SELECT ON content_place TO %I', who.grantee);
          END LOOP;
          FOR who IN SELECT grantee, privilege_type FROM information_schema.role_table_grants
            WHERE table_schema = 'examdocs' AND table_name = 'log' AND privilege_type IN ('SELECT', 'INSERT')
            AND grantee <> current_user LOOP
            EXECUTE format('GRANT %s ON log_node TO %I', who.privilege_type, who.grantee);
          END LOOP;
          FOR who IN SELECT grantee, privilege_type FROM information_schema.role_table_grants
            WHERE table_schema = 'examdocs' AND table_name = 'item_key' AND privilege_type IN ('SELECT', 'INSERT')
            AND grantee <> current_user LOOP
            EXECUTE format('GRANT %s ON visit_key TO %I', who.privilege_type, who.grantee);
          END LOOP;
        END $$
        """;

    private static string Written(string layout) =>
        layout
            .Replace("{strict}", "", StringComparison.Ordinal)
            .Replace("{blob}", "BYTEA", StringComparison.Ordinal)
            // What is typed may be longer than a tree of a server takes.
            .Replace("{equal}", "USING hash ", StringComparison.Ordinal);
}
