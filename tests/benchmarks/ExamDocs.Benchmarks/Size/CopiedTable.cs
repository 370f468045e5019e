using Npgsql;
using NpgsqlTypes;

namespace ExamDocs.Benchmarks.Size;

/// <summary>A table that rows are copied into over a connection of its own: a backend of the server for each table.</summary>
internal sealed class CopiedTable : IDisposable
{
    private readonly NpgsqlConnection _connection;
    private readonly NpgsqlBinaryImporter _rows;

    public CopiedTable(string connection, string table, string columns)
    {
        _connection = Open(connection);
        _rows = _connection.BeginBinaryImport($"COPY {table} ({columns}) FROM STDIN (FORMAT BINARY)");
    }

    /// <summary>A connection that no trigger and no reference of the tables speaks to.</summary>
    public static NpgsqlConnection Open(string connection)
    {
        var opened = new NpgsqlConnection(connection);
        opened.Open();
        using var command = new NpgsqlCommand("SET session_replication_role = replica; SET synchronous_commit = off", opened);
        command.ExecuteNonQuery();
        return opened;
    }

    public void Row(params ReadOnlySpan<object?> values)
    {
        _rows.StartRow();
        foreach (var value in values)
        {
            switch (value)
            {
                case null:
                    _rows.WriteNull();
                    break;
                case string text:
                    _rows.Write(text, NpgsqlDbType.Text);
                    break;
                case int number:
                    _rows.Write(number, NpgsqlDbType.Integer);
                    break;
                case long number:
                    _rows.Write((int)number, NpgsqlDbType.Integer);
                    break;
                case byte[] bytes:
                    _rows.Write(bytes, NpgsqlDbType.Bytea);
                    break;
                default:
                    throw new ArgumentException(value.GetType().Name, nameof(values));
            }
        }
    }

    public void Complete() => _rows.Complete();

    public void Dispose()
    {
        _rows.Dispose();
        _connection.Dispose();
    }
}
