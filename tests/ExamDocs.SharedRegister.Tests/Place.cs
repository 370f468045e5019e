using System.Data.Common;
using ExamDocs.SharedRegister.Tests;
using Npgsql;

namespace ExamDocs.Register.Tests;

/// <summary>The register is a database of its own on the tests' server.</summary>
public abstract partial class Workplace
{
    internal const int DocumentsForEachRun = 200;

    private static int s_databases;

    private string _name = "";

    internal Server Server { get; private set; } = null!;

    internal string Database => Server.AddressOf(_name);

    internal string DatabaseName => _name;

    internal DbConnection Connect() => Connect(_name, Server.Owner, Server.Password);

    internal NpgsqlConnection Connect(string database, string user, string password)
    {
        var settings = new NpgsqlConnectionStringBuilder
        {
            Host = "127.0.0.1", Port = Server.Port, Database = database, Username = user, Password = password, SearchPath = "examdocs", Pooling = false, CommandTimeout = 120,
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

    private static string OfTable(string table) => $" ON {table}";

    partial void SetUp()
    {
        Server = Server.Needed();
        _name = FormattableString.Invariant($"kit_{Interlocked.Increment(ref s_databases)}");
        OnTheServer($"CREATE DATABASE {_name} TEMPLATE template0");
    }

    partial void TakeDown() => OnTheServer($"DROP DATABASE {_name} WITH (FORCE)");
}
