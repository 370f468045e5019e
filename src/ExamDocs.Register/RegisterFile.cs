using ExamDocs.Register.Opening;
using ExamDocs.Register.Storage;
using Microsoft.Data.Sqlite;

namespace ExamDocs.Register;

/// <summary>Tells by its bytes whether a file is a register, so that nothing is written over one. Opens and changes nothing else.</summary>
public static class RegisterFile
{
    /// <summary>Place of the application's id in the header of a SQLite file (sqlite.org/fileformat.html, 1.3).</summary>
    private const int ApplicationIdAt = 68;

    private static readonly string[] Companions = ["-journal", "-wal", "-shm"];

    /// <summary>Whether a file is a register, or a copy of one; also one that is damaged beyond its header.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    public static bool Is(string path)
    {
        var header = new byte[ApplicationIdAt + 4];
        using var stream = File.OpenRead(path);
        return stream.ReadAtLeast(header, header.Length, throwOnEndOfStream: false) == header.Length
            && header.AsSpan().StartsWith("SQLite format 3\0"u8)
            && System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(header.AsSpan(ApplicationIdAt)) == SqliteTables.ApplicationId;
    }

    /// <summary>Whether a name, taken or free, is that of what the database keeps beside a register while it writes.</summary>
    public static bool IsBeside(string path) =>
        RegistersOf(path).Any(register => new FileInfo(register) is { Exists: true, Length: > 0 } && Is(register));

    /// <summary>The registers, there or not, beside which the database would keep a file of this name.</summary>
    public static IEnumerable<string> RegistersOf(string path) =>
        Companions.Where(c => path.EndsWith(c, StringComparison.Ordinal)).Select(c => path[..^c.Length]);

    /// <summary>The identity of the register in a file; null where it has none that can be read.</summary>
    public static string? IdentityOf(string path)
    {
        try
        {
            // Immutable: what a killed run left beside it is neither read nor undone.
            var file = $"file:{Uri.EscapeDataString(Path.GetFullPath(path)).Replace("%2F", "/", StringComparison.Ordinal)}?immutable=1";
            var settings = new SqliteConnectionStringBuilder
            {
                DataSource = file,
                Mode = SqliteOpenMode.ReadOnly,
                Pooling = false,
            };
            using var connection = new SqliteConnection(settings.ToString());
            connection.Open();
            return connection.Rows(row => row.Text(0), "SELECT id FROM register") is [{ } id] ? id : null;
        }
        catch (SqliteException)
        {
            return null;
        }
    }
}
