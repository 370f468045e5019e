using System.Data.Common;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;
using Microsoft.Data.Sqlite;
using NodaTime;

namespace ExamDocs.Register.Opening;

/// <summary>Recognises the tables of a register in a file, makes them where there are none and brings older ones up to date.</summary>
internal sealed class SqliteTables(SqliteRegister register)
{
    /// <summary>Marks the file as a register of ours, "ExDo" in ASCII.</summary>
    internal const int ApplicationId = 0x4578446F;

    /// <summary>A statement does not fit the tables.</summary>
    private const int OrdinaryError = 1;

    private readonly DbConnection _connection = register.Connection;

    /// <exception cref="RegisterRefusedException">It is not a register, or one of a later version.</exception>
    public void Prepare(LocalDate today)
    {
        if (!IsEmpty())
            Recognise();
        _connection.Execute("PRAGMA journal_mode = DELETE");
        // EXTRA also flushes the folder once the rollback journal is gone, without which a loss of power may undo a commit.
        _connection.Execute("PRAGMA synchronous = EXTRA");
        if (Version() < Layout.Version)
            Update(today);
    }

    public long Version() => _connection.Number("PRAGMA user_version");

    public bool IsEmpty() =>
        _connection.Number("SELECT count(*) FROM sqlite_schema") == 0 && _connection.Number("PRAGMA application_id") == 0 && Version() == 0;

    /// <exception cref="RegisterRefusedException">It is not a register, or one of a later version.</exception>
    public void Recognise()
    {
        if (_connection.Number("PRAGMA application_id") != ApplicationId)
            throw new RegisterRefusedException($"{register.Place} is a database, but not a register.");
        if (Version() is var version && version > Layout.Version)
            throw RegisterRefusedException.FromTheFuture(register.Place, version, Layout.Version);
    }

    /// <summary>Another run may have done it in the meantime: what is there is looked at again under the lock.</summary>
    /// <exception cref="RegisterRefusedException">The tables are not those of an earlier version.</exception>
    public void Update(LocalDate today)
    {
        try
        {
            Step(today);
        }
        catch (SqliteException odd) when (odd.SqliteErrorCode == OrdinaryError)
        {
            throw new RegisterRefusedException(
                $"{register.Place} says that it is of an earlier version, and its tables are not: it was damaged or altered. "
                    + "Restore a backup.",
                odd
            );
        }
    }

    private void Step(LocalDate today)
    {
        using var transaction = register.BeginWriting();
        var version = Version();
        if (version >= Layout.Version)
            return;
        if (version < 1)
            _connection.Execute(Written(FirstLayout.Statements));
        // A guard would keep the steps themselves from their work.
        foreach (var guard in _connection.Rows(row => row.GetString(0), "SELECT name FROM sqlite_schema WHERE type = 'trigger'"))
            _connection.Execute($"DROP TRIGGER \"{guard}\"");
        if (version < 4)
            _connection.Execute(Written(FourthLayout.Statements));
        if (version < 2)
        {
            _connection.Execute(Written(SecondLayout.Statements));
            Migration.ToSecond(_connection, today);
        }
        if (version < 3)
        {
            _connection.Execute(Written(ThirdLayout.Statements));
            Migration.ToThird(register, today);
        }
        if (version < 4)
        {
            _connection.Execute(Written(FourthLayout.Indexes(register.VisitOfEntry)));
            Migration.ToFourth(_connection);
        }
        if (version < 5)
            _connection.Execute(Written(FifthLayout.Statements(register.DocumentOfEntry)));
        Migration.ToLatestKeys(register);
        foreach (var guard in Guards.All)
            _connection.Execute(SqliteRegister.Trigger(guard));
        _connection.Execute(FormattableString.Invariant($"PRAGMA application_id = {ApplicationId}"));
        _connection.Execute(FormattableString.Invariant($"PRAGMA user_version = {Layout.Version}"));
        transaction.Commit();
    }

    private static string Written(string layout) =>
        layout
            .Replace("{strict}", " STRICT", StringComparison.Ordinal)
            .Replace("{blob}", "BLOB", StringComparison.Ordinal)
            .Replace("{equal}", "", StringComparison.Ordinal);
}
