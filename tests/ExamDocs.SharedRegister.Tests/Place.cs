using System.Data.Common;
using ExamDocs.SharedRegister.Tests;
using Npgsql;

namespace ExamDocs.Register.Tests;

/// <summary>The register is a database of its own on the tests' server.</summary>
public abstract partial class Workplace
{
    internal const int DocumentsForEachRun = 60;

    private static int s_databases;

    private string _name = "";

    /// <summary>To take guards away by; a connection is dear, and some tests change hundreds of things.</summary>
    private DbConnection? _unguarded;

    internal Server Server { get; private set; } = null!;

    internal string Database => Server.AddressOf(_name);

    internal string DatabaseName => _name;

    internal DbConnection Connect() => Connect(_name, Server.Owner, Server.Password);

    internal NpgsqlConnection Connect(string database, string user, string password)
    {
        var settings = new NpgsqlConnectionStringBuilder
        {
            Host = "127.0.0.1",
            Port = Server.Port,
            Database = database,
            Username = user,
            Password = password,
            SearchPath = "examdocs",
            Pooling = false,
            CommandTimeout = 120,
        };
        var connection = new NpgsqlConnection(settings.ToString());
        connection.Open();
        return connection;
    }

    /// <summary>By the owner of the server, outside of any register.</summary>
    internal void OnTheServer(string statement)
    {
        using var connection = Connect("postgres", Server.Owner, Server.Password);
        Storage.Sql.Execute(connection, statement);
    }

    /// <summary>What tells two rows of one table apart.</summary>
    internal const string Row = "ctid";

    /// <summary>Bytes that are no document.</summary>
    internal const string Empty = "'\\x00'::bytea";

    internal IReadOnlyList<string> EveryTable()
    {
        using var connection = Connect();
        return Storage.Sql.Rows(
            connection,
            row => row.GetString(0),
            "SELECT table_name::text FROM information_schema.tables WHERE table_schema = 'examdocs' ORDER BY 1"
        );
    }

    internal IReadOnlyList<(string Table, string Column, bool IsNumber, bool IsBytes)> ColumnsOf(string table)
    {
        using var connection = Connect();
        return Storage.Sql.Rows(
            connection,
            row => (table, row.GetString(0), row.GetString(1) is "integer" or "bigint", row.GetString(1) == "bytea"),
            "SELECT column_name::text, data_type::text FROM information_schema.columns WHERE table_schema = 'examdocs' AND table_name = $1",
            table
        );
    }

    /// <summary>Changes something behind the back of everything that guards it, as the owner of the server can.</summary>
    /// <returns>False where that cannot be done, or changes nothing.</returns>
    internal bool Changed(string statement, out IDisposable undo)
    {
        var table = statement.Split(' ') is ["DELETE", _, var from, ..] ? from : statement.Split(' ')[1];
        undo = new Undo(() => Unguarded($"DELETE FROM {table}; INSERT INTO {table} SELECT * FROM kept"));
        Unguarded($"DROP TABLE IF EXISTS kept; CREATE TEMPORARY TABLE kept AS SELECT * FROM {table}");
        try
        {
            if (Unguarded(statement) > 0)
                return true;
        }
        catch (PostgresException)
        {
            // A type, a NOT NULL, a CHECK or a key of the table itself refuses it.
        }
        undo.Dispose();
        return false;
    }

    private int Unguarded(string statement)
    {
        if (_unguarded is null)
        {
            _unguarded = Connect();
            Storage.Sql.Execute(_unguarded, "SET session_replication_role = replica");
        }
        return Storage.Sql.Execute(_unguarded, statement);
    }

    private sealed class Undo(Action undo) : IDisposable
    {
        public void Dispose() => undo();
    }

    /// <summary>A server keeps the layout in the register's own row alone.</summary>
    private protected static void SayLayout(int layout) => Assert.True(layout > 0);

    private static string OfTable(string table) => $" ON {table}";

    partial void SetUp()
    {
        Server = Server.Needed();
        _name = FormattableString.Invariant($"kit_{Interlocked.Increment(ref s_databases)}");
        OnTheServer($"CREATE DATABASE {_name} TEMPLATE template0");
    }

    partial void TakeDown()
    {
        _unguarded?.Dispose();
        OnTheServer($"DROP DATABASE {_name} WITH (FORCE)");
    }
}
