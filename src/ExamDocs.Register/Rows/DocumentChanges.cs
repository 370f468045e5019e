using System.Data.Common;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;
using NodaTime;

namespace ExamDocs.Register.Rows;

/// <summary>
/// Changes to documents. Each, of one or of several at once, is one transaction; how a number came out, and what ended, is entered in
/// the log.
/// </summary>
internal sealed class DocumentChanges(
    RegisterDatabase database,
    LogRows log,
    DocumentRows documents,
    ContentRows contents,
    DocumentEnds ends,
    LineEnds lineEnds,
    RememberedVisits visits,
    LocalDate today
)
{
    private readonly DbConnection _connection = database.Connection;

    /// <summary>Takes the next numbers of their letters and years, in order, and records them pending.</summary>
    /// <exception cref="DocumentInProgressException">A job has a document already, issued or pending; then none is taken.</exception>
    /// <exception cref="OvertakenException">A later version of a visit is stored; then none is taken.</exception>
    public IReadOnlyList<string> Add(IReadOnlyList<DocumentRequest> requests, string run)
    {
        using var transaction = database.BeginWriting();
        foreach (var (visit, knownUpTo) in requests.Where(r => CanBeOvertaken(r.Kind)).Select(r => (r.Visit, r.KnownUpTo)).Distinct())
        {
            if (visits.OvertakenReference(visit, knownUpTo) is { } reference)
                throw new OvertakenException(reference);
        }
        IReadOnlyList<string> numbers = [.. requests.Select(r => Add(r, run))];
        transaction.Commit();
        return numbers;
    }

    private string Add(DocumentRequest request, string run)
    {
        if (documents.HasLive(request.JobKey))
            throw new DocumentInProgressException(request.Kind);
        var (letter, year) = (request.Letter.ToString(), request.Year);
        var sequence = (int)
            _connection.Number(
                """
                INSERT INTO counter (letter, year, last) VALUES ($1, $2, 1)
                ON CONFLICT (letter, year) DO UPDATE SET last = counter.last + 1 RETURNING last
                """,
                letter,
                year
            );
        var number = new DocumentNumber(request.Letter, year, sequence).ToString();
        _connection.Execute(
            """
            INSERT INTO document (number, letter, year, sequence, kind, job_key, folder, run, language, visit, copy_of)
            VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11)
            """,
            number,
            letter,
            year,
            sequence,
            request.Kind,
            request.JobKey,
            request.Folder,
            run,
            request.Language,
            request.Visit,
            request.CopyOf
        );
        _connection.Insert("document_item", request.Items.Select((item, position) => new object?[] { number, position, item }));
        _connection.Insert("replacement", request.Replaces.Select(r => new object?[] { number, r.Number, r.Reason }));
        return number;
    }

    /// <summary>
    /// Records what is about to be written, so that a later run can tell a whole file from a broken one. The bytes are durable before.
    /// </summary>
    /// <exception cref="ContentStoreException">Where they are to be kept cannot be reached; nothing is recorded.</exception>
    public void Prepare(params IReadOnlyList<(string Number, byte[] Pdf, int Pages, string Outcomes)> documents)
    {
        IReadOnlyList<KeptContent> kept = [.. documents.Select(d => new KeptContent(d.Number, Sha256Hex.Of(d.Pdf), d.Pdf))];
        while (true)
        {
            var place = contents.Current();
            contents.PutOutside(place, kept);
            using var transaction = database.BeginWriting();
            // They may have been moved meanwhile: what is recorded now must be at the place of now.
            if (!string.Equals(contents.Current(), place, StringComparison.Ordinal))
                continue;
            foreach (var ((number, _, pages, outcomes), content) in documents.Zip(kept))
            {
                ChangePending(number, "sha256 = $2, pages = $3, outcomes = $4", content.Sha256, pages, outcomes);
                contents.PutInside(place, content);
            }
            transaction.Commit();
            return;
        }
    }

    /// <summary>They are out, and what they replace is no longer current, both at once.</summary>
    /// <param name="documents">Their numbers, each with the last visit that its run knew of; null where that is not known.</param>
    public void MarkIssued(params IReadOnlyList<(string Number, int? KnownUpTo)> documents)
    {
        using var transaction = database.BeginWriting();
        foreach (var (number, knownUpTo) in documents)
            MarkOneIssued(number, knownUpTo);
        transaction.Commit();
    }

    private void MarkOneIssued(string number, int? knownUpTo)
    {
        ChangePending(number, "state = 'issued', issued_on = $2, run = NULL", StoredDay.Of(today));
        var document = documents.Find(number)!;
        log.Append(at => LogEntry.Issued(at, LoggedDocument.Of(document), document.Sha256!, today, LoggedDocument.RowOf(document)));
        foreach (var replaced in document.Replaces)
            ends.Replace(replaced.Number, number, replaced.Reason, today);
        // A visit that ends what it says may have been stored while it was printed.
        lineEnds.Apply(document);
        // So may a correction, which takes back only what was out by then.
        if (CanBeOvertaken(document.Kind) && visits.OvertakenReference(document.Visit, knownUpTo) is { } reference)
            ends.Withdraw(number, $"a later version of {StorableText.Of(reference)} was recorded before it came out", today);
    }

    /// <summary>
    /// A withdrawal of any version of a record holds, also of an item that a later one leaves out: what warns of it is printed, and is
    /// never taken back without somebody's asking for it.
    /// </summary>
    private static bool CanBeOvertaken(string kind) => kind is not ("quarantine-label" or "notice");

    public void Void(string number, string reason)
    {
        reason = StorableText.Of(reason);
        using var transaction = database.BeginWriting();
        ChangePending(number, "state = 'void', void_reason = $2, run = NULL", reason);
        _connection.Execute("DELETE FROM content WHERE number = $1", number);
        _connection.Execute("DELETE FROM replacement WHERE number = $1", number);
        var document = documents.Find(number)!;
        log.Append(at => LogEntry.Void(at, LoggedDocument.Of(document), reason, today, LoggedDocument.RowOf(document)));
        transaction.Commit();
    }

    /// <returns>False where it is not issued, or no longer current.</returns>
    public bool Withdraw(string number, string reason)
    {
        using var transaction = database.BeginWriting();
        if (!ends.Withdraw(number, StorableText.Of(reason), today))
            return false;
        transaction.Commit();
        return true;
    }

    /// <summary>Makes a pending number of a run that has ended this run's own. Only one of several that try gets it.</summary>
    public bool Claim(string number, string? from, string run)
    {
        using var transaction = database.BeginWriting();
        var claimed = _connection.Execute(
            "UPDATE document SET run = $2 WHERE number = $1 AND state = 'pending' AND coalesce(run, '') = $3",
            number,
            run,
            from ?? ""
        );
        transaction.Commit();
        return claimed == 1;
    }

    private void ChangePending(string number, string change, params object?[] values)
    {
        var rows = _connection.Execute($"UPDATE document SET {change} WHERE number = $1 AND state = 'pending'", [number, .. values]);
        if (rows != 1)
            throw new InvalidOperationException($"{number} is not pending in this register.");
    }
}
