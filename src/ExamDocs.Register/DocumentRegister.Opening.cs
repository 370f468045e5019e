using ExamDocs.Register.Model;
using ExamDocs.Register.Opening;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;
using NodaTime;

namespace ExamDocs.Register;

/// <content>Making, finding and opening a register.</content>
public sealed partial class DocumentRegister
{
    private static LocalDate Now => LocalDate.FromDateTime(TimeProvider.System.GetLocalNow().DateTime);

    /// <summary>Opens a register, making it where there is none.</summary>
    /// <param name="place">A file, or postgres://user@server/database for one that several examiners share.</param>
    /// <param name="today">The day that is entered for what happens now; left out, that of this machine's clock.</param>
    /// <exception cref="RegisterRefusedException">The file is not a register, or of a later version; it is left alone.</exception>
    /// <exception cref="IOException">The file cannot be reached.</exception>
    /// <exception cref="System.Data.Common.DbException">The server cannot be reached, or the disk is full.</exception>
    public static DocumentRegister Open(string place, LocalDate? today = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(place);
        var day = today ?? Now;
        var database = RegisterOpening.Open(place, day);
        try
        {
            return new(new RegisterRows(database, day), database.Hold());
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
        ArgumentException.ThrowIfNullOrWhiteSpace(place);
        RegisterOpening.MustExist(place);
        var day = today ?? Now;
        return new(new RegisterRows(RegisterOpening.OpenToRead(place, day), day), new RunHold("", static () => { }));
    }

    /// <summary>Opens a register that must be there: a misspelt name must not pass for a register that knows nothing.</summary>
    /// <exception cref="FileNotFoundException">There is none.</exception>
    /// <inheritdoc cref="Open"/>
    public static DocumentRegister OpenExisting(string place, LocalDate? today = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(place);
        RegisterOpening.MustExist(place);
        return Open(place, today);
    }

    /// <summary>Whether there is a register at a place; a server is asked.</summary>
    /// <exception cref="IOException">There is no such server.</exception>
    /// <exception cref="System.Data.Common.DbException">It cannot be reached, or refuses.</exception>
    public static bool Exists(string place)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(place);
        return RegisterOpening.Exists(place);
    }

    /// <summary>Makes a register where there is none.</summary>
    /// <exception cref="IOException">There is one already, or none can be made.</exception>
    /// <inheritdoc cref="Open"/>
    public static DocumentRegister Create(string place, LocalDate? today = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(place);
        RegisterOpening.MakeRoom(place);
        return Open(place, today);
    }
}
