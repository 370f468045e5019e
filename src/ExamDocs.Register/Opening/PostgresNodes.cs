using System.Data.Common;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Opening;

/// <summary>Rights, guards and content of the table of the log's nodes, once it was added to a register on a server.</summary>
internal static class PostgresNodes
{
    /// <summary>Who may read the log, or add to it, may do so with its nodes.</summary>
    private const string GrantAsTheLog = """
        DO $$ DECLARE who record; BEGIN
          FOR who IN SELECT grantee, privilege_type FROM information_schema.role_table_grants
            WHERE table_schema = 'examdocs' AND table_name = 'log' AND privilege_type IN ('SELECT', 'INSERT')
            AND grantee <> current_user LOOP
            EXECUTE format('GRANT %s ON log_node TO %I', who.privilege_type, who.grantee);
          END LOOP;
        END $$
        """;

    public static void Make(DbConnection connection)
    {
        connection.Execute(GrantAsTheLog);
        PostgresGuards.Make(connection, Guards.OfNodes);
        new LogRows(connection).MakeNodes();
    }
}
