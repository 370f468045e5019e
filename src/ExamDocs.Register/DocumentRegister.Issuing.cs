using System.Runtime.ExceptionServices;
using ExamDocs.Register.Files;
using ExamDocs.Register.Model;

namespace ExamDocs.Register;

public sealed partial class DocumentRegister
{
    /// <summary>Takes the next number of a letter and year. Nobody gets it again, whatever becomes of the document.</summary>
    /// <exception cref="DocumentInProgressException">The job has a document already, issued or being issued by another run.</exception>
    public PendingDocument Take(DocumentRequest request) => TakeAll([request])[0];

    /// <summary>The same for several, all in one transaction: their numbers follow in the order of the requests.</summary>
    /// <exception cref="DocumentInProgressException">One of the jobs has a document already; then no number is taken.</exception>
    /// <exception cref="OvertakenException">A later version of one of the visits is stored; then no number is taken.</exception>
    public IReadOnlyList<PendingDocument> TakeAll(IReadOnlyList<DocumentRequest> requests)
    {
        ArgumentNullException.ThrowIfNull(requests);
        IReadOnlyList<DocumentRequest> whole = [.. requests.Select(Whole)];
        return
        [
            .. Rows
                .Changes.Add(whole, _run.Run)
                .Zip(whole, (number, r) => new PendingDocument(number, r.Kind, r.JobKey, r.Items, r.Folder!) { KnownUpTo = r.KnownUpTo }),
        ];
    }

    private static DocumentRequest Whole(DocumentRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        if (string.IsNullOrWhiteSpace(request.JobKey))
            throw new ArgumentException("A job needs a key.", nameof(request));
        if (request.Replaces.Any(r => string.IsNullOrWhiteSpace(r.Reason)))
            throw new ArgumentException("What is replaced needs a reason.", nameof(request));
        _ = new DocumentNumber(request.Letter, request.Year, 1);
        return request with { Items = [.. request.Items], Folder = IssuedFile.Folder(request.Folder) };
    }

    /// <summary>Writes the document into its folder, where it has one, and marks it issued; its bytes are kept here too.</summary>
    /// <param name="pending">The number taken.</param>
    /// <param name="pdf">The finished file.</param>
    /// <param name="pages">1 or more.</param>
    /// <param name="outcomesJson">Outcome of each item as a JSON object.</param>
    /// <exception cref="DocumentFileConflictException">A different file of that name is there; the number is void.</exception>
    /// <exception cref="IOException">It cannot be written; the number stays pending until <see cref="Recover"/>.</exception>
    public IssuedDocument Publish(PendingDocument pending, byte[] pdf, int pages, string outcomesJson)
    {
        var (document, failure) = PublishAll([new(pending, pdf, pages, outcomesJson)])[0];
        if (failure is not null)
            ExceptionDispatchInfo.Throw(failure);
        return document!;
    }

    /// <summary>
    /// The same for several: one transaction records their bytes, their files are put in place, and one transaction marks them issued.
    /// </summary>
    /// <returns>For each, in order, the document, or why it is not out: its number is void or pending, as for one alone.</returns>
    public IReadOnlyList<(IssuedDocument? Document, Exception? Failure)> PublishAll(IReadOnlyList<FinishedDocument> documents)
    {
        ArgumentNullException.ThrowIfNull(documents);
        if (documents.Any(d => d.Pages < 1 || string.IsNullOrWhiteSpace(d.OutcomesJson)))
            throw new ArgumentException("A finished document has a page and outcomes.", nameof(documents));
        Rows.Changes.Prepare([.. documents.Select(d => (d.Pending.Number, d.Pdf, d.Pages, d.OutcomesJson))]);
        var failures = new Dictionary<string, Exception>(StringComparer.Ordinal);
        foreach (var folder in documents.Where(d => d.Pending.Folder.Length > 0).GroupBy(d => d.Pending.Folder, StringComparer.Ordinal))
        {
            var found = DurableFile.PublishAll(folder.Key, [.. folder.Select(d => (d.Pending.FileName, d.Pdf))]);
            foreach (var (document, failure) in folder.Zip(found))
            {
                if (failure is not null)
                    failures[document.Pending.Number] = failure;
            }
        }
        foreach (var (number, conflict) in failures.Where(f => f.Value is DocumentFileConflictException))
            Rows.Changes.Void(number, conflict.Message.TrimEnd('.'));
        Rows.Changes.MarkIssued([
            .. documents.Select(d => d.Pending).Where(p => !failures.ContainsKey(p.Number)).Select(p => (p.Number, p.KnownUpTo)),
        ]);
        return
        [
            .. documents.Select(d =>
                failures.TryGetValue(d.Pending.Number, out var failure)
                    ? ((IssuedDocument?)null, (Exception?)failure)
                    : (FindByNumber(d.Pending.Number)!, null)
            ),
        ];
    }

    /// <summary>Gives up a number that was taken, for example because the page could not be printed.</summary>
    /// <param name="pending">A number not yet published.</param>
    /// <param name="reason">Why, in words that can be listed.</param>
    public void Void(PendingDocument pending, string reason)
    {
        ArgumentNullException.ThrowIfNull(pending);
        ArgumentException.ThrowIfNullOrWhiteSpace(reason);
        Rows.Changes.Void(pending.Number, reason);
    }
}
