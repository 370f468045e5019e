using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;
using Microsoft.Data.Sqlite;
using NodaTime;

namespace ExamDocs.Register.Opening;

/// <summary>
/// Opens a register in a file. One that is missing is made, an older one is brought up to date, any other file is refused.
/// </summary>
internal static class SqliteOpening
{
    private const int NotADatabase = 26;

    /// <summary>Seconds to wait for another run to finish writing.</summary>
    private const int Patience = 120;

    /// <exception cref="RegisterRefusedException">It is not a register, or one of a later version.</exception>
    /// <exception cref="IOException">The file cannot be reached.</exception>
    public static SqliteRegister Open(string path, LocalDate today)
    {
        if (!Directory.Exists(Path.GetDirectoryName(path)))
            throw new DirectoryNotFoundException($"There is no folder {Path.GetDirectoryName(path)} for the register.");
        return Opened(path, SqliteOpenMode.ReadWriteCreate, register =>
        {
            new SqliteTables(register).Prepare(today);
            register.RemoveEndedRuns();
            return register;
        });
    }

    /// <summary>
    /// Opens a register that is there and changes nothing in it; only what a killed run left half written is undone.
    /// </summary>
    /// <inheritdoc cref="Open"/>
    public static SqliteRegister OpenToRead(string path, LocalDate today) => Opened(path, SqliteOpenMode.ReadWrite, register =>
        {
            var tables = new SqliteTables(register);
            if (tables.IsEmpty())
                throw new RegisterRefusedException($"{path} is not a register.");
            tables.Recognise();
            if (tables.Version() < Layout.Version)
                return CopyInMemory(register, today);
            register.Connection.Execute("PRAGMA query_only = ON");
            return register;
        });

    private static SqliteRegister CopyInMemory(SqliteRegister older, LocalDate today)
    {
        var copy = new SqliteConnection("Data Source=:memory:;Foreign Keys=True");
        copy.Open();
        ((SqliteConnection)older.Connection).BackupDatabase(copy);
        older.Connection.Dispose();
        var register = new SqliteRegister(copy, older.Place);
        new SqliteTables(register).Update(today);
        return register;
    }

    private static SqliteRegister Opened(string path, SqliteOpenMode mode, Func<SqliteRegister, SqliteRegister> prepare)
    {
        var settings = new SqliteConnectionStringBuilder
        {
            DataSource = path,
            Mode = mode,
            Pooling = false,
            ForeignKeys = true,
            DefaultTimeout = Patience,
        };
        var connection = new SqliteConnection(settings.ToString());
        try
        {
            connection.Open();
            return prepare(new SqliteRegister(connection, path));
        }
        catch (SqliteException broken) when (broken.SqliteErrorCode == NotADatabase)
        {
            connection.Dispose();
            throw new RegisterRefusedException($"{path} is not a register.", broken);
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }
}
