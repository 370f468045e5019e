using System.Data.Common;

namespace ExamDocs.Register.Storage;

/// <summary>
/// An open database that holds a register: a file of its own, or a schema on a server that several examiners share. The
/// statements are the same for both; what differs is here.
/// </summary>
internal abstract class RegisterDatabase(DbConnection connection) : IDisposable
{
    public DbConnection Connection { get; } = connection;

    /// <summary>Where it is, in words for the user; without any password.</summary>
    public abstract string Place { get; }

    /// <summary>Names this run to others, and holds a lock by which they know that it is still alive.</summary>
    public abstract RunHold Hold();

    /// <summary>Whether a run has ended, whatever ended it.</summary>
    public abstract bool HasEnded(string run);

    /// <summary>Whether a run worked on another machine, whose folders cannot be seen from here.</summary>
    public virtual bool WasElsewhere(string run) => false;

    /// <summary>The name under which a run settles what another has left.</summary>
    public virtual string Settling(string run, string? left) => run;

    /// <summary>One sentence for each thing that the database itself finds wrong.</summary>
    public abstract IEnumerable<string> Damage();

    /// <summary>The triggers that are there, and whether each is as the program makes it.</summary>
    public abstract IReadOnlyList<(string Name, bool IsOurs)> Triggers();

    /// <summary>Names of tables and views that are there and are not the program's.</summary>
    public abstract IReadOnlyList<string> ForeignTables();

    /// <summary>Does something that a guard refuses, within the transaction at work; nobody else ever sees the guard away.</summary>
    public abstract void WithoutGuard(Guard guard, Action work);

    /// <summary>Whether this user may say where documents are kept.</summary>
    public virtual bool MayMoveContent => true;

    /// <summary>Gives the disk the space back that is no longer used, where that can be done now.</summary>
    public virtual void GiveBackSpace() { }

    /// <summary>Keeps others from writing until the transaction ends.</summary>
    public abstract DbTransaction BeginWriting();

    /// <summary>Shows everything as it is at one moment until the transaction ends.</summary>
    public abstract DbTransaction BeginReading();

    /// <summary>The condition, behind a column, that it is among the texts of one value that is a JSON array of strings.</summary>
    /// <param name="parameter">Its name in the statement, for example $1.</param>
    public abstract string AmongTexts(string parameter);

    /// <summary>The condition, behind a column, that it is among the whole numbers of one value that is a JSON array of them.</summary>
    /// <param name="parameter">Its name in the statement, for example $1.</param>
    public abstract string AmongNumbers(string parameter);

    /// <summary>
    /// The number of the visit that an entry of the log remembers, or that ended something, as the index over the log has it; else null.
    /// </summary>
    public abstract string VisitOfEntry { get; }

    /// <summary>The number of the document that an entry of the log is about, as the index over the log has it; else null.</summary>
    public abstract string DocumentOfEntry { get; }

    public virtual void Dispose() => Connection.Dispose();
}

/// <summary>Keeps a run visible to others; it ends with the process, even a killed one.</summary>
/// <param name="run">Its name in the register.</param>
/// <param name="end">Ends it.</param>
internal sealed class RunHold(string run, Action end) : IDisposable
{
    public string Run { get; } = run;

    public void Dispose() => end();
}
