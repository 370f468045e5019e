using System.Data.Common;
using ExamDocs.Register.Model;
using ExamDocs.Register.Opening;
using ExamDocs.Register.Storage;
using Npgsql;

namespace ExamDocs.Register.Work;

/// <summary>
/// The tables of the jobs that machines share, in a schema of their own beside the register's: they come and go, and nothing is read from
/// them that the register knows. They have a version of their own.
/// </summary>
internal static class WorkTables
{
    public const string Schema = "examdocs_work";

    public const int Version = 2;

    /// <summary>Most bytes of one file of a job, inclusive: our own limit, that of the largest input which is read from a file.</summary>
    public const int MostBytesOfAFile = 256 * 1024 * 1024;

    /// <summary>Taken while tables are made, so that two do not both make them; any fixed number will do.</summary>
    private const long MakingTables = 0x4578446F_63730002;

    private const string NoPermission = "42501";

    /// <summary>The server itself refuses what is larger than any job has to be.</summary>
    private static readonly string Statements = FormattableString.Invariant(
        $"""
        CREATE TABLE {Schema}.layout (single INTEGER PRIMARY KEY CHECK (single = 1), version INTEGER NOT NULL);
        CREATE TABLE {Schema}.job (
          number INTEGER GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
          title TEXT NOT NULL CHECK (octet_length(title) <= 4000),
          visit_references TEXT[] NOT NULL CHECK (cardinality(visit_references) <= 1000),
          options TEXT NOT NULL CHECK (octet_length(options) <= 100000),
          as_of TEXT NOT NULL CHECK (as_of ~ '^[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]$'),
          known_up_to INTEGER NOT NULL,
          asked_by TEXT NOT NULL DEFAULT session_user,
          asked_at TIMESTAMPTZ NOT NULL DEFAULT clock_timestamp(),
          state TEXT NOT NULL DEFAULT 'waiting' CHECK (state IN ('waiting', 'decided', 'done', 'refused', 'cancelled')),
          version TEXT,
          visits INTEGER[],
          visit_order INTEGER[],
          seen INTEGER,
          said TEXT NOT NULL DEFAULT '' CHECK (octet_length(said) <= 100000)
        );
        CREATE TABLE {Schema}.file (
          job INTEGER NOT NULL REFERENCES {Schema}.job,
          position INTEGER NOT NULL CHECK (position BETWEEN 0 AND {JobToEnqueue.MostFiles - 1}),
          path TEXT NOT NULL CHECK (octet_length(path) <= 1000),
          bytes BYTEA NOT NULL CHECK (octet_length(bytes) <= {MostBytesOfAFile}),
          sha256 TEXT NOT NULL CHECK (length(sha256) = 64),
          PRIMARY KEY (job, position)
        );
        CREATE TABLE {Schema}.part (
          job INTEGER NOT NULL REFERENCES {Schema}.job,
          stage INTEGER NOT NULL,
          slice INTEGER NOT NULL,
          slices INTEGER NOT NULL CHECK (slices > slice),
          state TEXT NOT NULL DEFAULT 'waiting' CHECK (state IN ('waiting', 'running', 'done', 'failed')),
          attempts INTEGER NOT NULL DEFAULT 0,
          not_before TIMESTAMPTZ NOT NULL DEFAULT '-infinity',
          run TEXT,
          lease_until TIMESTAMPTZ,
          documents TEXT[] NOT NULL DEFAULT '{"{}"}',
          issued_before INTEGER NOT NULL DEFAULT 0,
          refused TEXT NOT NULL DEFAULT '[]',
          said TEXT NOT NULL DEFAULT '' CHECK (octet_length(said) <= 100000),
          PRIMARY KEY (job, stage, slice)
        );
        CREATE INDEX part_open ON {Schema}.part (job, stage, slice) WHERE state <> 'done';
        CREATE INDEX job_open ON {Schema}.job (number) WHERE state IN ('waiting', 'decided');
        INSERT INTO {Schema}.layout VALUES (1, {Version});
        {Pages}
        """
    );

    /// <summary>New in version 2. The server need not keep them through a failure of its own: whoever asked asks again.</summary>
    private static string Pages =>
        FormattableString.Invariant(
            $"""
            CREATE UNLOGGED TABLE {Schema}.page (
              id UUID PRIMARY KEY,
              place BIGINT GENERATED ALWAYS AS IDENTITY,
              asker TEXT NOT NULL,
              version TEXT NOT NULL,
              html BYTEA NOT NULL CHECK (octet_length(html) <= {SharedPages.MostBytes}),
              state TEXT NOT NULL DEFAULT 'waiting' CHECK (state IN ('waiting', 'running', 'printed', 'failed')),
              attempts INTEGER NOT NULL DEFAULT 0,
              worker TEXT,
              lease_until TIMESTAMPTZ,
              pdf BYTEA CHECK (octet_length(pdf) <= {MostBytesOfAFile}),
              said TEXT CHECK (octet_length(said) <= 100000)
            );
            CREATE INDEX page_waiting ON {Schema}.page (place) WHERE state = 'waiting';
            """
        );

    /// <summary>Makes the tables where there are none.</summary>
    /// <exception cref="RegisterRefusedException">They are of a later version, or this user may make none.</exception>
    public static void Make(RegisterDatabase register)
    {
        var connection = register.Connection;
        using var transaction = connection.BeginTransaction();
        connection.Number("SELECT 1 FROM pg_advisory_xact_lock($1)", MakingTables);
        if (!IsThere(connection))
            Create(register, Statements);
        else if (connection.Number($"SELECT version FROM {Schema}.layout") == 1)
            Create(register, $"{Pages} UPDATE {Schema}.layout SET version = {Version}");
        else
            Require(register);
        transaction.Commit();
    }

    /// <summary>Opens a register for work.</summary>
    /// <param name="place">Its address.</param>
    /// <exception cref="RegisterRefusedException">It is a file, or has no such tables, or this user may not use them.</exception>
    public static PostgresRegister Open(string place)
    {
        if (!SharedWork.CanBeAt(place))
            throw new RegisterRefusedException(
                $"Several machines share the work of a register on a server; {place} is a file. examdocs issue prints from it."
            );
        var register = PostgresOpening.OpenForWork(place);
        try
        {
            Require(register);
            return register;
        }
        catch
        {
            register.Dispose();
            throw;
        }
    }

    /// <exception cref="RegisterRefusedException">They are not there, of another version, or this user may not use them.</exception>
    public static void Require(RegisterDatabase register)
    {
        var (connection, place) = (register.Connection, register.Place);
        if (!IsThere(connection))
            throw new RegisterRefusedException(
                $"The register at {place} has no list of work yet. Have its owner run examdocs register update once (docs/work.md)."
            );
        if (connection.Number("SELECT CASE WHEN has_schema_privilege($1, 'USAGE') THEN 1 ELSE 0 END", Schema) == 0)
            throw new RegisterRefusedException(
                $"There is a list of work at {place}, and this user may not use it. Have it granted by whoever keeps the server "
                    + "(docs/work.md)."
            );
        if (connection.Number($"SELECT version FROM {Schema}.layout") is not Version and var version)
            throw new RegisterRefusedException(
                FormattableString.Invariant(
                    $"The list of work at {place} was made by another version of the program (layout {version}; this one knows {Version})."
                ) + (version < Version ? " Have its owner run examdocs register update once, and grant what is new (docs/work.md)." : "")
            );
    }

    private static bool IsThere(DbConnection connection) =>
        connection.Number(
            "SELECT count(*) FROM pg_class JOIN pg_namespace ON pg_namespace.oid = relnamespace WHERE nspname = $1 AND relname = 'layout'",
            Schema
        ) > 0;

    private static void Create(RegisterDatabase register, string statements)
    {
        var connection = register.Connection;
        try
        {
            // Who may make no schema is refused even where it is there.
            if (connection.Number("SELECT count(*) FROM pg_namespace WHERE nspname = $1", Schema) == 0)
                connection.Execute($"CREATE SCHEMA {Schema}");
            connection.Execute(statements);
        }
        catch (PostgresException refused) when (string.Equals(refused.SqlState, NoPermission, StringComparison.Ordinal))
        {
            throw new RegisterRefusedException(
                $"There is no list of work at {register.Place} yet, and this user may not make one: the owner of the database may "
                    + "(docs/work.md).",
                refused
            );
        }
    }
}
