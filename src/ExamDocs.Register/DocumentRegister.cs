using ExamDocs.Core.Records;
using ExamDocs.Register.Checking;
using ExamDocs.Register.Contents;
using ExamDocs.Register.Files;
using ExamDocs.Register.Log;
using ExamDocs.Register.Merging;
using ExamDocs.Register.Model;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;
using NodaTime;

namespace ExamDocs.Register;

/// <summary>
/// Numbers documents without gaps, publishes them, and remembers what was issued, also for several runs at once. A number
/// is taken first, its bytes are recorded, its file is put in place, and only then is it issued; killed anywhere between,
/// the next run's <see cref="Recover"/> finishes or voids it, and no number is lost, reused or doubled.
/// </summary>
public sealed partial class DocumentRegister : IDisposable
{
    private readonly RunHold _run;

    private DocumentRegister(RegisterRows rows, RunHold run) => (Rows, _run, Visits) = (rows, run, new(rows));

    internal RegisterRows Rows { get; }

    /// <summary>The visits that it remembers.</summary>
    public VisitRegister Visits { get; }

    /// <summary>Drawn once, when it was made: 32 lower-case hexadecimal digits.</summary>
    /// <exception cref="RegisterDamagedException">It was taken away.</exception>
    public string Identity => Rows.Identity;

    /// <summary>The day from which on it has been kept.</summary>
    /// <exception cref="RegisterDamagedException">It was taken away.</exception>
    public LocalDate KeptSince => Rows.KeptSince;

    /// <summary>Where it is, in words; without any password.</summary>
    public string Place => Rows.Database.Place;

    /// <summary>The current document issued for the same input, rules and template; null where there is none.</summary>
    public IssuedDocument? FindIssued(string jobKey) => Rows.Documents.IssuedFor(jobKey)?.Issued();

    /// <summary>The issued document of a number, current or not; null where none was issued under it.</summary>
    public IssuedDocument? FindByNumber(string number) =>
        Rows.Documents.Find(number) is { State: DocumentState.Issued } document ? document.Issued() : null;

    /// <summary>All that is known of a number; null where it was never taken.</summary>
    public DocumentStatus? Find(string number) => Rows.Documents.Find(number);

    /// <summary>Everything issued, by letter, year and number.</summary>
    public IReadOnlyList<IssuedDocument> Issued() => [.. Rows.Documents.In(DocumentState.Issued).Select(d => d.Issued())];

    /// <summary>Everything issued, current or not, with all that is known of it.</summary>
    public IReadOnlyList<DocumentStatus> Documents() => Rows.Documents.In(DocumentState.Issued);

    /// <summary>Every number that was taken and never came out, with the reason.</summary>
    public IReadOnlyList<VoidedDocument> Voided() =>
        [.. Rows.Documents.In(DocumentState.Void).Select(d => new VoidedDocument(d.Number, d.Kind, d.Items, d.VoidReason!))];

    /// <summary>Current documents made from one visit.</summary>
    public IReadOnlyList<DocumentStatus> CurrentOf(int visit) => Rows.Documents.CurrentOf(visit);

    /// <summary>Documents issued from one visit, current or not.</summary>
    public IReadOnlyList<DocumentStatus> Of(int visit) => Rows.Documents.Of(visit);

    /// <summary>Documents issued from one visit that name an item, current or not.</summary>
    public IReadOnlyList<DocumentStatus> About(string item, int visit) => Rows.Documents.About(item, visit);

    /// <summary>The lines of a document that no longer hold; empty where all do, or none was issued under the number.</summary>
    public IReadOnlyList<EndedLine> EndedLines(string number) => Rows.Documents.EndedLines.In(number);

    /// <summary>Takes a document back that is out. Its bytes are kept; it is no longer current.</summary>
    /// <param name="number">For example R-2026-000123.</param>
    /// <param name="reason">Why, in words that can be listed.</param>
    /// <returns>False where none is issued under the number, or it is not current any more.</returns>
    public bool Withdraw(string number, string reason)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(reason);
        return Rows.Changes.Withdraw(number, reason);
    }

    /// <summary>Finishes or voids whatever interrupted runs left; to be called before issuing. Runs still at work are left alone.</summary>
    /// <returns>One sentence for each number; empty where nothing was left.</returns>
    public IReadOnlyList<string> Recover() => new Recovery(Rows, _run.Run).Run();

    /// <summary>Writes an issued document into a folder where it is missing, byte for byte as issued.</summary>
    /// <returns>False where it was there already.</returns>
    /// <exception cref="DocumentFileConflictException">A different file of that name is there; it is left alone.</exception>
    public bool Restore(IssuedDocument document, string folder)
    {
        ArgumentNullException.ThrowIfNull(document);
        var full = Directory.CreateDirectory(folder).FullName;
        return DurableFile.Publish(full, document.FileName, Content(document));
    }

    /// <summary>The bytes of an issued document, as issued, wherever they are kept.</summary>
    /// <exception cref="InvalidDataException">They are missing, or are not those that were issued.</exception>
    /// <exception cref="RegisterAlteredException">What is listed of it is not what the log has.</exception>
    /// <exception cref="ContentStoreException">Where they are kept cannot be reached.</exception>
    public byte[] Content(IssuedDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        if (Rows.Documents.Find(document.Number) is { } listed)
            RequireAsLogged(listed);
        return Rows.Contents.Of(document.Number, document.Sha256);
    }

    /// <summary>Where the bytes of documents are kept from now on: database, folder:PATH or s3://bucket/prefix.</summary>
    public string ContentPlace => Rows.Contents.Current();

    /// <summary>
    /// Gives the last day on which documents of a visit have to be kept, inclusive, null where none is known. A bucket with an object lock
    /// keeps them until then.
    /// </summary>
    public void KeepContentUntil(Func<int, LocalDate?> until)
    {
        ArgumentNullException.ThrowIfNull(until);
        Rows.Contents.KeepUntil = until;
    }

    /// <summary>
    /// Moves the bytes of all documents to another place; other runs may go on. Killed at any moment, it is run again and finishes.
    /// </summary>
    /// <param name="to">database, folder:PATH or s3://bucket/prefix?endpoint=https://host.</param>
    /// <exception cref="RegisterRefusedException">It is no such address, or this user may not move them.</exception>
    /// <exception cref="ContentStoreException">A place cannot be reached or written; nothing is lost.</exception>
    public ContentMoved MoveContent(string to)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(to);
        return new ContentMove(Rows, ContentAddress.Read(to)).Run();
    }

    /// <summary>How many documents are issued, current or not, and how many visits are remembered.</summary>
    public (long Documents, long Visits) Counted() =>
        (
            Rows.Database.Connection.Number("SELECT count(*) FROM document WHERE state = 'issued'"),
            Rows.Database.Connection.Number("SELECT count(*) FROM visit")
        );

    /// <summary>What the log holds by now, to be kept elsewhere: it shows later whether the log was cut or rewritten.</summary>
    /// <returns>Null while the log is empty.</returns>
    public Checkpoint? Checkpoint() => Rows.Log.Latest();

    /// <summary>
    /// Whether the register is sound in itself: undamaged, without gaps, every document as issued, the log whole; no record is read.
    /// </summary>
    /// <param name="kept">Checkpoints that were kept elsewhere.</param>
    /// <returns>One sentence for each thing that is wrong.</returns>
    public IReadOnlyList<string> Check(params IReadOnlyList<Checkpoint> kept) => Check(new RegisterCheckRequest { Kept = kept }).Faults;

    /// <summary>
    /// Whether the register is sound: as <see cref="Check(IReadOnlyList{Checkpoint})"/>, and whether every record gives what is stored of
    /// it.
    /// </summary>
    public RegisterCheckResult Check(RegisterCheckRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return new RegisterCheck(Rows, request).Run();
    }

    /// <summary>Takes the visits and documents of another register in, which is not changed. Taken in again they change nothing.</summary>
    /// <param name="other">Opened to be read.</param>
    /// <param name="read">Reads a stored record; null where that is impossible.</param>
    /// <param name="ends">What, once both know of each other, one side's visits end of the other's, given the numbers of the visits that
    /// came in.</param>
    public MergeResult Merge(
        DocumentRegister other,
        Func<byte[], ExaminationRecord?> read,
        Func<IReadOnlySet<int>, IReadOnlyList<(int ByVisit, LineEnd End)>>? ends = null
    )
    {
        ArgumentNullException.ThrowIfNull(other);
        ArgumentNullException.ThrowIfNull(read);
        return new RegisterMerge(Rows, other.Rows, read, ends ?? (static _ => [])).Run();
    }

    /// <summary>Writes a copy of a register in a file, whole and checked, where no file is yet.</summary>
    /// <exception cref="RegisterRefusedException">It is on a server, whose own tools make copies.</exception>
    /// <exception cref="IOException">A file is there already, or cannot be written.</exception>
    public void BackUp(string path) => Backup.Write(Rows.Database, path);

    public void Dispose()
    {
        _run.Dispose();
        Rows.Database.Dispose();
    }
}
