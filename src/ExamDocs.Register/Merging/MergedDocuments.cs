using ExamDocs.Register.Log;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Merging;

/// <summary>
/// The documents of another register. Each keeps its number, which is printed on it; where that number is taken here by another
/// document, it stays in its own register and is named.
/// </summary>
internal sealed class MergedDocuments(RegisterDatabase database, DocumentRegister here, DocumentRegister other, MergedVisits visits)
{
    private readonly List<DocumentStatus> _taken = [];
    private readonly List<string> _refused = [];

    public int New { get; private set; }

    public int Known { get; private set; }

    public IReadOnlyList<string> Refused => _refused;

    public void TakeIn()
    {
        var added = new List<DocumentStatus>();
        foreach (
            var document in other
                .Rows.In(DocumentState.Issued)
                .Concat(other.Rows.In(DocumentState.Void))
                .OrderBy(d => d.Number[0])
                .ThenBy(d => d.Number.Length)
                .ThenBy(d => d.Number, StringComparer.Ordinal)
        )
        {
            if (here.Find(document.Number) is not { } ours)
                added.Add(document);
            else if (IsSame(ours, document))
                Keep(document);
            // A void number says nothing that somebody could hold against the other.
            else if (document.State is DocumentState.Issued)
                _refused.Add(Both(ours, document));
        }
        foreach (var document in added)
            Insert(document);
        foreach (var document in added)
            Enter(document);
    }

    /// <summary>What no longer holds there does not hold here.</summary>
    public void End()
    {
        foreach (var document in _taken.Where(d => d.Ended is not null && here.Rows.Find(d.Number) is { IsCurrent: true }))
        {
            var (number, on, reason) = (document.Number, document.EndedOn!.Value, document.EndedReason!);
            var by = document.ReplacedBy.FirstOrDefault(r =>
                here.Rows.Find(r) is { State: DocumentState.Issued } ours
                && ours.Replaces.Any(x => string.Equals(x.Number, number, StringComparison.Ordinal))
            );
            var lasting = here.EndedLines(number) is [.., var line] ? line.ByVisit : (int?)null;
            var logged = DocumentRows.Logged(here.Rows.Find(number)!);
            if (document.Ended is DocumentEnd.Replaced && by is not null && here.Rows.End(number, "replaced", on, reason))
                here.Log.Append(at => LogEntry.Replaced(at, logged, by, reason, on));
            else if (document.Ended is DocumentEnd.Ended && lasting is { } visit && here.Rows.End(number, "ended", on, reason))
                here.Log.Append(at => LogEntry.Ended(at, logged, visit, reason, on));
            else if (here.Rows.End(number, "withdrawn", on, reason))
                here.Log.Append(at => LogEntry.Withdrawn(at, logged, reason, on));
        }
    }

    private static string OriginOf(DocumentStatus document, DocumentRegister of) => document.Origin ?? of.Identity;

    private bool IsSame(DocumentStatus ours, DocumentStatus theirs) =>
        ours.State == theirs.State
        && string.Equals(OriginOf(ours, here), OriginOf(theirs, other), StringComparison.Ordinal)
        && string.Equals(ours.Sha256, theirs.Sha256, StringComparison.Ordinal);

    private string Both(DocumentStatus ours, DocumentStatus theirs) =>
        $"{theirs.Number} ({theirs.Kind} of {string.Join(", ", theirs.Items.Take(3))}) of {other.Place} is not taken in: that number is "
        + $"{(ours.State is DocumentState.Issued ? $"{ours.Kind} of {string.Join(", ", ours.Items.Take(3))}" : "void")} in "
        + $"{here.Place}. Both registers gave it out; ask the other one about it, or issue its visit again here.";

    private void Keep(DocumentStatus document)
    {
        Known++;
        _taken.Add(document);
    }

    private void Insert(DocumentStatus document)
    {
        _ = DocumentNumber.TryParse(document.Number, out var number);
        var (letter, isOut) = (number.Letter.ToString(), document.State is DocumentState.Issued);
        var copyOf =
            document.CopyOf is { } original
            && here.Rows.Find(original) is { } found
            && string.Equals(OriginOf(found, here), OriginOf(document, other), StringComparison.Ordinal)
                ? original
                : null;
        database.Connection.Execute(
            """
            INSERT INTO document (number, letter, year, sequence, kind, job_key, folder, state, sha256, pages, outcomes, void_reason, issued_on, language, visit, copy_of, origin)
            VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13, $14, $15, $16, $17)
            """,
            document.Number,
            letter,
            number.Year,
            number.Sequence,
            document.Kind,
            Job(document),
            document.Folder,
            isOut ? "issued" : "void",
            document.Sha256,
            document.Pages,
            document.OutcomesJson,
            document.VoidReason,
            DocumentRows.Day(document.IssuedOn),
            document.Language,
            visits.Ours(document.Visit),
            copyOf,
            OriginOf(document, other)
        );
        for (var position = 0; position < document.Items.Count; position++)
            database.Connection.Execute(
                "INSERT INTO document_item VALUES ($1, $2, $3)",
                document.Number,
                position,
                document.Items[position]
            );
        if (isOut)
            database.Connection.Execute(
                "INSERT INTO content VALUES ($1, $2)",
                document.Number,
                other.Rows.Content(document.Number, document.Sha256!)
            );
        database.Connection.Execute(
            "INSERT INTO counter (letter, year, last) VALUES ($1, $2, $3) ON CONFLICT (letter, year) DO UPDATE SET last = $3 "
                + "WHERE counter.last < $3",
            letter,
            number.Year,
            number.Sequence
        );
    }

    /// <summary>The same job may have been done in both registers; then only ours is found by it.</summary>
    private string Job(DocumentStatus document) =>
        document is { State: DocumentState.Issued, Ended: null }
        && here.FindIssued(document.JobKey) is null
        && database.Connection.Number(
            "SELECT count(*) FROM document WHERE job_key = $1 AND state <> 'void' AND ended IS NULL",
            document.JobKey
        ) == 0
            ? document.JobKey
            : $"{OriginOf(document, other)}/{document.Number}/{document.JobKey}";

    private void Enter(DocumentStatus document)
    {
        foreach (
            var replaced in document.Replaces.Where(r =>
                here.Rows.Find(r.Number) is { } ours
                && string.Equals(OriginOf(ours, here), OriginOf(document, other), StringComparison.Ordinal)
            )
        )
            database.Connection.Execute("INSERT INTO replacement VALUES ($1, $2, $3)", document.Number, replaced.Number, replaced.Reason);
        var ours = here.Rows.Find(document.Number)!;
        var (logged, row, day) = (DocumentRows.Logged(ours), DocumentRows.RowOf(ours), document.IssuedOn ?? here.Rows.Now);
        here.Log.Append(at =>
            document.State is DocumentState.Issued
                ? LogEntry.Issued(at, logged, document.Sha256!, day, row)
                : LogEntry.Void(at, logged, document.VoidReason!, day, row)
        );
        New += document.State is DocumentState.Issued ? 1 : 0;
        _taken.Add(document);
        here.Rows.Ends.Apply(ours);
    }
}
