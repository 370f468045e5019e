using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Merging;

/// <summary>
/// The documents of another register. Each keeps its number, which is printed on it; where that number is taken here by another
/// document, it stays in its own register and is named.
/// </summary>
internal sealed class MergedDocuments(RegisterRows here, RegisterRows other, MergedVisits visits)
{
    private readonly MergedDocumentInsert _insert = new(here, other, visits);
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
                .Documents.In(DocumentState.Issued)
                .Concat(other.Documents.In(DocumentState.Void))
                .OrderBy(d => d.Number[0])
                .ThenBy(d => d.Number.Length)
                .ThenBy(d => d.Number, StringComparer.Ordinal)
        )
        {
            if (here.Documents.Find(document.Number) is not { } ours)
                added.Add(document);
            else if (IsSame(ours, document))
                Keep(document);
            // A void number has no document that somebody could confuse with ours.
            else if (document.State is DocumentState.Issued)
                _refused.Add(Both(ours, document));
        }
        foreach (var document in added)
            _insert.Insert(document);
        foreach (var document in added)
            Enter(document);
    }

    /// <summary>A document that ended there ends here too.</summary>
    public void End()
    {
        foreach (var document in _taken.Where(d => d.Ended is not null && here.Documents.Find(d.Number) is { IsCurrent: true }))
        {
            var (number, on, reason) = (document.Number, document.EndedOn!.Value, document.EndedReason!);
            var by = document.ReplacedBy.FirstOrDefault(r =>
                here.Documents.Find(r) is { State: DocumentState.Issued } ours
                && ours.Replaces.Any(x => string.Equals(x.Number, number, StringComparison.Ordinal))
            );
            var lasting = here.Documents.EndedLines.In(number) is [.., var line] ? line.ByVisit : (int?)null;
            if (document.Ended is DocumentEnd.Replaced && by is not null)
                here.DocumentEnds.Replace(number, by, reason, on);
            else if (document.Ended is DocumentEnd.Ended && lasting is { } visit)
                here.DocumentEnds.End(number, visit, reason, on);
            else
                here.DocumentEnds.Withdraw(number, reason, on);
        }
    }

    private bool IsSame(DocumentStatus ours, DocumentStatus theirs) =>
        ours.State == theirs.State
        && string.Equals(here.OriginOf(ours), other.OriginOf(theirs), StringComparison.Ordinal)
        && string.Equals(ours.Sha256, theirs.Sha256, StringComparison.Ordinal);

    private string Both(DocumentStatus ours, DocumentStatus theirs) =>
        $"{theirs.Number} ({Shown(theirs)}) of {other.Database.Place} is not taken in: that number is "
        + $"{(ours.State is DocumentState.Issued ? Shown(ours) : "void")} in {here.Database.Place}. Both registers gave it out; "
        + "ask the other one about it, or issue its visit again here.";

    private static string Shown(DocumentStatus document) => $"{document.Kind} of {string.Join(", ", document.Items.Take(3))}";

    private void Keep(DocumentStatus document)
    {
        Known++;
        _taken.Add(document);
    }

    private void Enter(DocumentStatus document)
    {
        var replaced = document.Replaces.Where(r =>
            here.Documents.Find(r.Number) is { } known
            && string.Equals(here.OriginOf(known), other.OriginOf(document), StringComparison.Ordinal)
        );
        here.Database.Connection.Insert("replacement", replaced.Select(r => new object?[] { document.Number, r.Number, r.Reason }));
        var ours = here.Documents.Find(document.Number)!;
        var (logged, row, day) = (LoggedDocument.Of(ours), LoggedDocument.RowOf(ours), document.IssuedOn ?? here.Today);
        here.Log.Append(at =>
            document.State is DocumentState.Issued
                ? LogEntry.Issued(at, logged, document.Sha256!, day, row)
                : LogEntry.Void(at, logged, document.VoidReason!, day, row)
        );
        New += document.State is DocumentState.Issued ? 1 : 0;
        _taken.Add(document);
        here.LineEnds.Apply(ours);
    }
}
