using Microsoft.Data.Sqlite;

namespace ExamDocs.Register;

/// <summary>
/// Numbers documents without gaps, publishes them, and remembers what was issued. One run at a time has it open. A number
/// is taken first, its bytes are recorded, its file is put in place, and only then is it issued; killed anywhere between,
/// the next run's <see cref="Recover"/> finishes or voids it, and no number is lost, reused or doubled.
/// </summary>
public sealed class DocumentRegister : IDisposable
{
    private readonly FileStream _lock;
    private readonly SqliteConnection _connection;

    private DocumentRegister(FileStream held, SqliteConnection connection) =>
        (_lock, _connection, Rows) = (held, connection, new(connection));

    internal DocumentRows Rows { get; }

    /// <summary>Opens a register, making it where there is none, and keeps other runs out until disposed.</summary>
    /// <exception cref="RegisterInUseException">Another run has it open.</exception>
    /// <exception cref="RegisterRefusedException">The file is no register, or of a later version; it is left alone.</exception>
    /// <exception cref="IOException">The file cannot be reached.</exception>
    public static DocumentRegister Open(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        var full = WithoutLink(Path.GetFullPath(path));
        var held = RegisterLock.Take(full);
        try
        {
            return new(held, RegisterFile.Open(full));
        }
        catch
        {
            held.Dispose();
            throw;
        }
    }

    /// <summary>The document issued for the same input, rules and template; null where there is none.</summary>
    public IssuedDocument? FindIssued(string jobKey) => Rows.IssuedFor(jobKey);

    /// <summary>The issued document of a number; null where none was issued under it.</summary>
    public IssuedDocument? FindByNumber(string number) => Rows.IssuedAs(number);

    /// <summary>Everything issued, by letter, year and number.</summary>
    public IReadOnlyList<IssuedDocument> Issued() => Rows.AllIssued();

    /// <summary>Every number that was taken and never came out, with the reason.</summary>
    public IReadOnlyList<VoidedDocument> Voided() => Rows.AllVoid();

    /// <summary>Takes the next number of a letter and year. Nobody gets it again, whatever becomes of the document.</summary>
    /// <param name="letter">Letter of the kind, A to Z.</param>
    /// <param name="year">Year of issue, 1900 to 9999 inclusive.</param>
    /// <param name="kind">Word of the kind, for example report.</param>
    /// <param name="jobKey">Names the same input, rules and template.</param>
    /// <param name="items">Ids of the items it is about.</param>
    /// <param name="folder">Where the file goes; made where it is missing.</param>
    /// <exception cref="InvalidOperationException">The job has a document already, issued or pending.</exception>
    public PendingDocument Take(char letter, int year, string kind, string jobKey, IReadOnlyList<string> items, string folder)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(jobKey);
        _ = new DocumentNumber(letter, year, 1);
        var full = Directory.CreateDirectory(folder).FullName;
        IReadOnlyList<string> kept = [.. items];
        return new(Rows.Add(letter, year, kind, jobKey, kept, full), kind, jobKey, kept, full);
    }

    /// <summary>Writes the document into its folder and marks it issued; its bytes are kept here too.</summary>
    /// <param name="pending">The number taken.</param>
    /// <param name="pdf">The finished file.</param>
    /// <param name="pages">1 or more.</param>
    /// <param name="outcomesJson">Outcome of each item as a JSON object.</param>
    /// <exception cref="DocumentFileConflictException">A different file of that name is there; the number is void.</exception>
    /// <exception cref="IOException">It cannot be written; the number stays pending until <see cref="Recover"/>.</exception>
    public IssuedDocument Publish(PendingDocument pending, byte[] pdf, int pages, string outcomesJson)
    {
        ArgumentNullException.ThrowIfNull(pending);
        ArgumentNullException.ThrowIfNull(pdf);
        ArgumentException.ThrowIfNullOrWhiteSpace(outcomesJson);
        ArgumentOutOfRangeException.ThrowIfLessThan(pages, 1);
        Rows.Prepare(pending.Number, pdf, pages, outcomesJson);
        try
        {
            DurableFile.Publish(pending.Folder, pending.FileName, pdf);
        }
        catch (DocumentFileConflictException conflict)
        {
            Rows.Void(pending.Number, conflict.Message.TrimEnd('.'));
            throw;
        }
        Rows.MarkIssued(pending.Number);
        return FindByNumber(pending.Number)!;
    }

    /// <summary>Gives up a number that was taken, for example because the page could not be printed.</summary>
    /// <param name="pending">A number not yet published.</param>
    /// <param name="reason">Why, in words that can be listed.</param>
    public void Void(PendingDocument pending, string reason)
    {
        ArgumentNullException.ThrowIfNull(pending);
        ArgumentException.ThrowIfNullOrWhiteSpace(reason);
        Rows.Void(pending.Number, reason);
    }

    /// <summary>Finishes or voids whatever an interrupted run left; to be called before issuing.</summary>
    /// <returns>One sentence for each number; empty where nothing was left.</returns>
    public IReadOnlyList<string> Recover() => new Recovery(Rows).Run();

    /// <summary>Writes an issued document into a folder where it is missing, byte for byte as issued.</summary>
    /// <returns>False where it was there already.</returns>
    /// <exception cref="DocumentFileConflictException">A different file of that name is there; it is left alone.</exception>
    public bool Restore(IssuedDocument document, string folder)
    {
        ArgumentNullException.ThrowIfNull(document);
        var full = Directory.CreateDirectory(folder).FullName;
        return DurableFile.Publish(full, document.FileName, Content(document));
    }

    /// <summary>The bytes of an issued document, as issued.</summary>
    public byte[] Content(IssuedDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        return Rows.Content(document.Number, document.Sha256);
    }

    /// <summary>Whether the register is sound: undamaged, without gaps, every document as issued.</summary>
    /// <returns>One sentence for each thing that is wrong.</returns>
    public IReadOnlyList<string> Check() => RegisterCheck.Run(_connection, Rows);

    /// <summary>Two names of one register must meet at one lock.</summary>
    private static string WithoutLink(string path)
    {
        var file = new FileInfo(path);
        return file.LinkTarget is null ? path : file.ResolveLinkTarget(returnFinalTarget: true)!.FullName;
    }

    public void Dispose()
    {
        _connection.Dispose();
        _lock.Dispose();
    }
}
