using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;
using NodaTime;

namespace ExamDocs.Register.Rows;

/// <summary>All that an open register holds: its documents, its visits, and the log in which each change is entered.</summary>
internal sealed class RegisterRows
{
    /// <param name="database">An open one, whose tables are those of this version.</param>
    /// <param name="today">The day that is entered for what happens now.</param>
    public RegisterRows(RegisterDatabase database, LocalDate today)
    {
        (Database, Today) = (database, today);
        Log = new(database.Connection);
        Documents = new(database.Connection);
        Contents = new(database, Log, today);
        DocumentEnds = new(database.Connection, Log, Documents);
        LineEnds = new(database.Connection, Log, Documents, DocumentEnds, today);
        Visits = new(database);
        Changes = new(database, Log, Documents, Contents, DocumentEnds, LineEnds, Visits, today);
        VisitStore = new(database, Log, Visits, LineEnds, today);
    }

    public RegisterDatabase Database { get; }

    /// <summary>The day that is entered for what happens now.</summary>
    public LocalDate Today { get; }

    public LogRows Log { get; }

    public DocumentRows Documents { get; }

    public ContentRows Contents { get; }

    public DocumentEnds DocumentEnds { get; }

    public LineEnds LineEnds { get; }

    public DocumentChanges Changes { get; }

    public RememberedVisits Visits { get; }

    public VisitStore VisitStore { get; }

    /// <summary>Drawn once, when it was made: 32 lower-case hexadecimal digits.</summary>
    /// <exception cref="RegisterDamagedException">It was taken away.</exception>
    public string Identity => Own.Identity;

    /// <summary>The day from which on it has been kept.</summary>
    /// <exception cref="RegisterDamagedException">It was taken away.</exception>
    public LocalDate KeptSince => Own.KeptSince;

    /// <summary>Identity of the register that gave out the number of a document.</summary>
    public string OriginOf(DocumentStatus document) => document.Origin ?? Identity;

    private (string Identity, LocalDate KeptSince) Own =>
        Database.Connection.Rows(row => (row.GetString(0), row.Day(1)!.Value), "SELECT id, kept_since FROM register") is [var own]
            ? own
            : throw new RegisterDamagedException("register", new InvalidDataException("It has no row of its own."));
}
