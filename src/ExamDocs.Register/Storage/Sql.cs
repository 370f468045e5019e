using System.Data;
using System.Data.Common;
using System.Globalization;
using System.Text.Json;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using Microsoft.Data.Sqlite;
using NodaTime.Text;

namespace ExamDocs.Register.Storage;

/// <summary>One statement, with values named $1, $2 and so on in the order given; never pasted into the text.</summary>
internal static class Sql
{
    public static int Execute(this DbConnection connection, string text, params object?[] values)
    {
        using var command = connection.Command(text, values);
        return command.ExecuteNonQuery();
    }

    /// <summary>Puts rows into one table, in their order, a hundred with each statement: a server is not asked for every row.</summary>
    /// <param name="table">Its name, with the columns where not all are given.</param>
    /// <param name="rows">The values of each, as many in every row.</param>
    /// <param name="end">What ends the statement.</param>
    public static void Insert(this DbConnection connection, string table, IEnumerable<object?[]> rows, string end = "")
    {
        foreach (var some in rows.Chunk(100))
        {
            var places = some.Select((row, n) => $"({string.Join(", ", row.Select((_, i) => Place((n * row.Length) + i)))})");
            connection.Execute($"INSERT INTO {table} VALUES {string.Join(", ", places)} {end}", [.. some.SelectMany(row => row)]);
        }
    }

    public static long Number(this DbConnection connection, string text, params object?[] values)
    {
        using var command = connection.Command(text, values);
        return Convert.ToInt64(command.ExecuteScalar(), CultureInfo.InvariantCulture);
    }

    public static List<T> Rows<T>(this DbConnection connection, Func<DbDataReader, T> read, string text, params object?[] values)
    {
        using var command = connection.Command(text, values);
        using var reader = command.ExecuteReader();
        var rows = new List<T>();
        while (reader.Read())
            rows.Add(Read(reader, read, text));
        return rows;
    }

    /// <exception cref="RegisterDamagedException">A column holds what the program never writes there.</exception>
    private static T Read<T>(DbDataReader row, Func<DbDataReader, T> read, string text)
    {
        try
        {
            return read(row);
        }
        catch (Exception unreadable)
            when (unreadable
                    is FormatException
                        or InvalidCastException
                        or InvalidOperationException
                        or OverflowException
                        or JsonException
                        or UnparsableValueException
            )
        {
            throw new RegisterDamagedException(TableOf(text), unreadable);
        }
    }

    private static string TableOf(string text) =>
        text.Split([' ', '\n', '(', ')'], StringSplitOptions.RemoveEmptyEntries) is var words
        && Array.IndexOf(words, "FROM") is >= 0 and var at
        && at + 1 < words.Length
            ? words[at + 1]
            : "the register";

    /// <summary>The text in a column; null where it holds none.</summary>
    public static string? Text(this DbDataReader row, int column) => row.IsDBNull(column) ? null : row.GetString(column);

    /// <summary>The whole number in a column; null where it holds none.</summary>
    public static int? Integer(this DbDataReader row, int column) => row.IsDBNull(column) ? null : row.GetInt32(column);

    /// <exception cref="IOException">The connection was lost before.</exception>
    public static void MustBeOpen(this DbConnection connection)
    {
        if (connection.State is not ConnectionState.Open)
            throw new IOException("The connection to the register was lost.");
    }

    private static string Place(int index) => string.Create(CultureInfo.InvariantCulture, $"${index + 1}");

    private static DbCommand Command(this DbConnection connection, string text, object?[] values)
    {
        connection.MustBeOpen();
        var command = connection.CreateCommand();
        command.CommandText = text;
        for (var index = 0; index < values.Length; index++)
        {
            var parameter = command.CreateParameter();
            // A server takes values by their place alone.
            if (connection is SqliteConnection)
                parameter.ParameterName = Place(index);
            parameter.Value = values[index] is string written ? StorableText.Of(written) : values[index] ?? DBNull.Value;
            command.Parameters.Add(parameter);
        }
        return command;
    }
}
