using Microsoft.Data.Sqlite;

namespace ExamDocs.Register;

/// <summary>Opens the database file of a register: makes a new one, and refuses what is none or comes from the future.</summary>
internal static class RegisterFile
{
    /// <summary>Marks the file as a register of ours, "ExDo" in ASCII.</summary>
    internal const int ApplicationId = 0x4578446F;

    /// <summary>The layout that this version writes.</summary>
    internal const int Version = 1;

    private const int NotADatabase = 26;

    private const string Layout =
        """
        CREATE TABLE counter (
          letter TEXT NOT NULL CHECK (letter GLOB '[A-Z]'),
          year INTEGER NOT NULL,
          last INTEGER NOT NULL CHECK (last >= 1),
          PRIMARY KEY (letter, year)
        ) STRICT, WITHOUT ROWID;

        CREATE TABLE document (
          number TEXT NOT NULL PRIMARY KEY,
          letter TEXT NOT NULL,
          year INTEGER NOT NULL,
          sequence INTEGER NOT NULL CHECK (sequence >= 1),
          kind TEXT NOT NULL,
          job_key TEXT NOT NULL,
          folder TEXT NOT NULL,
          state TEXT NOT NULL DEFAULT 'pending' CHECK (state IN ('pending', 'issued', 'void')),
          sha256 TEXT,
          pages INTEGER CHECK (pages >= 1),
          outcomes TEXT,
          void_reason TEXT,
          UNIQUE (letter, year, sequence),
          CHECK (state <> 'issued' OR (sha256 IS NOT NULL AND pages IS NOT NULL AND outcomes IS NOT NULL)),
          CHECK ((state = 'void') = (void_reason IS NOT NULL))
        ) STRICT;

        CREATE UNIQUE INDEX one_live_document_per_job ON document (job_key) WHERE state <> 'void';

        CREATE TABLE document_item (
          number TEXT NOT NULL REFERENCES document (number),
          position INTEGER NOT NULL,
          item TEXT NOT NULL,
          PRIMARY KEY (number, position)
        ) STRICT, WITHOUT ROWID;

        CREATE INDEX document_by_item ON document_item (item);

        CREATE TABLE content (
          number TEXT NOT NULL PRIMARY KEY REFERENCES document (number),
          bytes BLOB NOT NULL
        ) STRICT;

        CREATE TRIGGER numbers_are_never_taken_back BEFORE DELETE ON document
        BEGIN SELECT RAISE(ABORT, 'a number that was taken stays listed'); END;

        CREATE TRIGGER what_is_issued_or_void_stays_so BEFORE UPDATE ON document WHEN OLD.state <> 'pending'
        BEGIN SELECT RAISE(ABORT, 'an issued or void document is never changed'); END;

        CREATE TRIGGER issued_bytes_stay BEFORE UPDATE ON content
        BEGIN SELECT RAISE(ABORT, 'the bytes of a document are never changed'); END;

        CREATE TRIGGER issued_bytes_are_kept BEFORE DELETE ON content
        WHEN (SELECT state FROM document WHERE number = OLD.number) = 'issued'
        BEGIN SELECT RAISE(ABORT, 'the bytes of an issued document are kept'); END;
        """;

    /// <exception cref="RegisterRefusedException">No register of ours, or one of a later version.</exception>
    public static SqliteConnection Open(string path)
    {
        var settings = new SqliteConnectionStringBuilder { DataSource = path, Pooling = false, ForeignKeys = true };
        var connection = new SqliteConnection(settings.ToString());
        try
        {
            connection.Open();
            Prepare(connection, path);
            return connection;
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

    private static void Prepare(SqliteConnection connection, string path)
    {
        var isNew = connection.Number("SELECT count(*) FROM sqlite_schema") == 0
            && connection.Number("PRAGMA application_id") == 0 && connection.Number("PRAGMA user_version") == 0;
        if (!isNew)
            Recognise(connection, path);
        connection.Execute("PRAGMA journal_mode = DELETE");
        // EXTRA also flushes the folder once the rollback journal is gone, without which a loss of power may undo a commit.
        connection.Execute("PRAGMA synchronous = EXTRA");
        if (isNew)
            Create(connection);
    }

    private static void Recognise(SqliteConnection connection, string path)
    {
        if (connection.Number("PRAGMA application_id") != ApplicationId)
            throw new RegisterRefusedException($"{path} is a database, but not a register.");
        var version = connection.Number("PRAGMA user_version");
        if (version > Version)
        {
            throw new RegisterRefusedException(FormattableString.Invariant(
                $"The register {path} was written by a later version (layout {version}; this one knows {Version}). Use that version."));
        }
    }

    private static void Create(SqliteConnection connection)
    {
        using var transaction = connection.BeginTransaction();
        connection.Execute(Layout);
        connection.Execute(FormattableString.Invariant($"PRAGMA application_id = {ApplicationId}"));
        connection.Execute(FormattableString.Invariant($"PRAGMA user_version = {Version}"));
        transaction.Commit();
    }
}
