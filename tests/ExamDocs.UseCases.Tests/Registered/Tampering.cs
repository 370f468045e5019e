using System.Security.Cryptography;
using System.Text;
using ExamDocs.Register.Model;
using Microsoft.Data.Sqlite;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>What somebody with a tool of the database's own does to a register once he has taken its guards away.</summary>
internal static class Tampering
{
    /// <param name="register">The file.</param>
    /// <param name="statement">"the record" stands for the withdrawal taken out of the record of visit 2, with its hash made anew.</param>
    public static void Alter(string register, string statement)
    {
        using var connection = Connect(register);
        foreach (var guard in Read(register, "SELECT name FROM sqlite_schema WHERE type = 'trigger'", 0))
            Run(connection, $"DROP TRIGGER {guard}");
        if (statement.StartsWith("the record", StringComparison.Ordinal))
        {
            var record = Encoding.UTF8.GetBytes(
                Assert
                    .Single(Read(register, "SELECT CAST(record AS TEXT) FROM visit WHERE visit = 2", 0))
                    .Replace("\"withdraw\"", "\"fit\"", StringComparison.Ordinal)
            );
            Assert.Equal(
                1,
                Run(
                    connection,
                    "UPDATE visit SET record = $1, sha256 = $2 WHERE visit = 2 AND sha256 <> $2",
                    record,
                    Convert.ToHexStringLower(SHA256.HashData(record))
                )
            );
            statement = statement["the record".Length..].TrimStart(';', ' ');
        }
        Assert.True(statement.Length == 0 || Run(connection, statement) > 0, "Nothing was altered.");
    }

    /// <summary>One column of what a question gives.</summary>
    public static List<string> Read(string register, string question, int column)
    {
        using var connection = Connect(register);
        using var command = connection.CreateCommand();
        command.CommandText = question;
        using var reader = command.ExecuteReader();
        var rows = new List<string>();
        while (reader.Read())
            rows.Add(reader.GetString(column));
        return rows;
    }

    /// <summary>The refusal names visit 2, and says what to do, on one line.</summary>
    public static void AssertNamed(RegisterAlteredException refused)
    {
        Assert.StartsWith("The register was altered or damaged: visit 2 (", refused.Message, StringComparison.Ordinal);
        // Of a visit that is gone only the log is left, which has the day on which it was stored.
        Assert.Matches(@"(V-1 of 2026-05-11|stored on 2027-12-31)\) is no longer as it was recorded", refused.Message);
        Assert.Contains(
            "Issue nothing from it. Run examdocs register check, and restore the register from the backup.",
            refused.Message,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain('\n', refused.Message);
    }

    private static SqliteConnection Connect(string register)
    {
        var connection = new SqliteConnection($"Data Source={register};Pooling=False");
        connection.Open();
        return connection;
    }

    private static int Run(SqliteConnection connection, string statement, params object[] values)
    {
        using var command = connection.CreateCommand();
        command.CommandText = statement;
        for (var n = 0; n < values.Length; n++)
            command.Parameters.AddWithValue(FormattableString.Invariant($"${n + 1}"), values[n]);
        return command.ExecuteNonQuery();
    }
}
