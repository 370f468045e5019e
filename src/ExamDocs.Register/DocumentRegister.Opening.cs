using ExamDocs.Register.Storage;
using NodaTime;
using NodaTime.Extensions;

namespace ExamDocs.Register;

/// <content>Making, finding and opening a register.</content>
public sealed partial class DocumentRegister
{
    /// <summary>Opens a register, making it where there is none.</summary>
    /// <param name="place">A file, or postgres://user@server/database for one that several examiners share.</param>
    /// <param name="today">The day that is entered for what happens now; left out, that of this machine's clock.</param>
    /// <exception cref="RegisterRefusedException">The file is no register, or of a later version; it is left alone.</exception>
    /// <exception cref="IOException">The file cannot be reached.</exception>
    /// <exception cref="System.Data.Common.DbException">The server cannot be reached, or the disk is full.</exception>
    public static DocumentRegister Open(string place, LocalDate? today = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(place);
        var day = today ?? Now;
        var database = PostgresAddress.IsOne(place)
            ? (RegisterDatabase)PostgresRegister.Open(place, day)
            : SqliteRegister.Open(WithoutLink(Path.GetFullPath(place)), day);
        try
        {
            return new(database, database.Hold(), day);
        }
        catch
        {
            database.Dispose();
            throw;
        }
    }

    /// <summary>
    /// Opens a register that must be there and changes nothing in it; one of an earlier version is brought up to date in a copy that is
    /// gone afterwards.
    /// </summary>
    /// <exception cref="FileNotFoundException">There is none.</exception>
    /// <inheritdoc cref="Open"/>
    public static DocumentRegister OpenToRead(string place, LocalDate? today = null)
    {
        if (!Exists(place))
            throw Missing(place);
        var day = today ?? Now;
        var database = PostgresAddress.IsOne(place)
            ? (RegisterDatabase)PostgresRegister.OpenToRead(place)
            : SqliteRegister.OpenToRead(WithoutLink(Path.GetFullPath(place)), day);
        return new(database, new RunHold("", static () => { }), day);
    }

    private static LocalDate Now => SystemClock.Instance.InZone(DateTimeZoneProviders.Tzdb.GetSystemDefault()).GetCurrentDate();

    private static FileNotFoundException Missing(string place) =>
        new($"There is no register at {(PostgresAddress.IsOne(place) ? "that address" : place)}; register create makes one.");

    /// <summary>Opens a register that must be there: a misspelt name must not pass for a register that knows nothing.</summary>
    /// <exception cref="FileNotFoundException">There is none.</exception>
    /// <inheritdoc cref="Open"/>
    public static DocumentRegister OpenExisting(string place, LocalDate? today = null) =>
        Exists(place) ? Open(place, today) : throw Missing(place);

    /// <summary>Whether there is a register at a place; a server is asked.</summary>
    /// <exception cref="IOException">There is no such server.</exception>
    /// <exception cref="System.Data.Common.DbException">It cannot be reached, or refuses.</exception>
    public static bool Exists(string place)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(place);
        return PostgresAddress.IsOne(place) ? PostgresRegister.IsThere(place) : File.Exists(place);
    }

    /// <summary>Makes a register where there is none.</summary>
    /// <exception cref="IOException">There is one already, or none can be made.</exception>
    /// <inheritdoc cref="Open"/>
    public static DocumentRegister Create(string place, LocalDate? today = null)
    {
        if (Exists(place))
            throw new RegisterRefusedException(
                $"There is a register, or another file, at {(PostgresAddress.IsOne(place) ? "that address" : place)} already; "
                    + "it was left as it is."
            );
        if (!PostgresAddress.IsOne(place))
            Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(place))!);
        return Open(place, today);
    }

    /// <summary>Two names of one register are one register.</summary>
    private static string WithoutLink(string path)
    {
        var file = new FileInfo(path);
        return file.LinkTarget is null ? path : file.ResolveLinkTarget(returnFinalTarget: true)!.FullName;
    }
}
