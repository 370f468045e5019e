using System.Data.Common;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Opening;

/// <summary>The guards of a register on a server, as triggers that call one function.</summary>
internal static class PostgresGuards
{
    private const string OfTables = """
        SELECT tgname, relname FROM pg_trigger JOIN pg_class ON pg_class.oid = tgrelid JOIN pg_namespace ON pg_namespace.oid = relnamespace
        WHERE nspname = $1 AND NOT tgisinternal
        """;

    public static void Make(DbConnection connection)
    {
        connection.Execute(
            """
            CREATE OR REPLACE FUNCTION refuse() RETURNS trigger LANGUAGE plpgsql SET search_path FROM CURRENT
            AS $$ BEGIN RAISE EXCEPTION '%', TG_ARGV[0]; END $$;
            CREATE OR REPLACE FUNCTION is_issued(wanted TEXT) RETURNS boolean LANGUAGE sql STABLE SET search_path FROM CURRENT
            AS $$ SELECT state = 'issued' FROM document WHERE number = wanted $$;
            """
        );
        foreach (var guard in Guards.All)
        {
            // A condition may not hold a query here, but it may call a function that does.
            var when = guard.When.Replace(Guards.IsIssued, "is_issued(OLD.number)", StringComparison.Ordinal);
            connection.Execute(
                $"CREATE TRIGGER {guard.Name} BEFORE {guard.Event} ON {guard.Table} FOR EACH ROW WHEN ({when}) EXECUTE "
                    + $"FUNCTION refuse('{guard.Words}')"
            );
        }
        // TRUNCATE fires no trigger on rows.
        foreach (var table in Guards.All.Select(g => g.Table).Distinct(StringComparer.Ordinal))
            connection.Execute(
                $"CREATE TRIGGER {table}{Guards.NeverEmptied} BEFORE TRUNCATE ON {table} EXECUTE "
                    + "FUNCTION refuse('a register is never emptied')"
            );
    }

    /// <summary>A guard would keep the steps to a later layout from their work.</summary>
    public static void TakeAway(DbConnection connection)
    {
        foreach (var (name, table) in connection.Rows(row => (row.GetString(0), row.GetString(1)), OfTables, PostgresRegister.Schema))
            connection.Execute($"DROP TRIGGER {name} ON {table}");
    }
}
