using Microsoft.Data.Sqlite;

namespace ExamDocs.Register;

/// <summary>Recognises failures of the database, so that nobody else has to know which database it is.</summary>
public static class StoreFailure
{
    /// <summary>SQLITE_FULL.</summary>
    private const int Full = 13;

    /// <summary>Whether the disk that holds the register is full.</summary>
    public static bool IsFullDisk(Exception failure) => failure is SqliteException { SqliteErrorCode: Full };
}
