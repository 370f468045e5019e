using System.Globalization;
using Microsoft.Data.Sqlite;

namespace ExamDocs.Register;

/// <summary>One statement, with values named $1, $2 and so on in the order given; never pasted into the text.</summary>
internal static class Sql
{
    public static int Execute(this SqliteConnection connection, string text, params object?[] values)
    {
        using var command = connection.Command(text, values);
        return command.ExecuteNonQuery();
    }

    public static long Number(this SqliteConnection connection, string text, params object?[] values)
    {
        using var command = connection.Command(text, values);
        return Convert.ToInt64(command.ExecuteScalar(), CultureInfo.InvariantCulture);
    }

    public static List<T> Rows<T>(
        this SqliteConnection connection, Func<SqliteDataReader, T> read, string text, params object?[] values)
    {
        using var command = connection.Command(text, values);
        using var reader = command.ExecuteReader();
        var rows = new List<T>();
        while (reader.Read())
            rows.Add(read(reader));
        return rows;
    }

    private static SqliteCommand Command(this SqliteConnection connection, string text, object?[] values)
    {
        var command = connection.CreateCommand();
        command.CommandText = text;
        for (var index = 0; index < values.Length; index++)
            command.Parameters.AddWithValue(string.Create(CultureInfo.InvariantCulture, $"${index + 1}"), values[index] ?? DBNull.Value);
        return command;
    }
}
