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

    private static string OfTable(string _) => "";
}
