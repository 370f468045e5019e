using System.Data.Common;
using Microsoft.Data.Sqlite;

namespace ExamDocs.Register.Tests;

/// <summary>The register is a file in the folder of the test.</summary>
public abstract partial class Workplace
{
    /// <summary>Each waits for the disk several times over.</summary>
    internal const int DocumentsForEachRun = 10;

    internal string Database => Path.Combine(Root, "kit.db");

    internal DbConnection Connect()
    {
        var connection = new SqliteConnection($"Data Source={Database};Pooling=False");
        connection.Open();
        return connection;
    }

    /// <summary>What tells two rows of one table apart.</summary>
    internal const string Row = "rowid";

    /// <summary>Bytes that are no document.</summary>
    internal const string Empty = "x'00'";

    internal IReadOnlyList<string> EveryTable()
    {
        using var connection = Connect();
        return Storage.Sql.Rows(connection, row => row.GetString(0), "SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name");
    }

    internal IReadOnlyList<(string Table, string Column, bool IsNumber, bool IsBytes)> ColumnsOf(string table)
    {
        using var connection = Connect();
        return Storage.Sql.Rows(
            connection,
            row => (table, row.GetString(0), row.GetString(1) == "INTEGER", row.GetString(1) == "BLOB"),
            $"SELECT name, type FROM pragma_table_info('{table}')"
        );
    }

    /// <summary>Changes something behind the back of everything that guards it.</summary>
    /// <returns>False where that cannot be done, or changes nothing.</returns>
    internal bool Changed(string statement, out IDisposable undo)
    {
        var copy = File.ReadAllBytes(Database);
        undo = new Undo(() => File.WriteAllBytes(Database, copy));
        try
        {
            using var connection = Connect();
            Storage.Sql.Execute(
                connection,
                "PRAGMA synchronous = OFF; PRAGMA journal_mode = MEMORY; PRAGMA foreign_keys = OFF; PRAGMA ignore_check_constraints = ON"
            );
            foreach (
                var guard in Storage.Sql.Rows(connection, row => row.GetString(0), "SELECT name FROM sqlite_schema WHERE type = 'trigger'")
            )
                Storage.Sql.Execute(connection, $"DROP TRIGGER {guard}");
            if (Storage.Sql.Execute(connection, statement) > 0)
                return true;
        }
        catch (SqliteException)
        {
            // A type, a NOT NULL or a key of the table itself refuses it.
        }
        undo.Dispose();
        return false;
    }

    private sealed class Undo(Action undo) : IDisposable
    {
        public void Dispose() => undo();
    }

    private static string OfTable(string _) => "";

    /// <summary>What the file itself says of its layout.</summary>
    private protected void SayLayout(int layout) => ByHand(FormattableString.Invariant($"PRAGMA user_version = {layout}"));
}
