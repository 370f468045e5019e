using System.Data.Common;
using ExamDocs.Register.Model;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Merging;

/// <summary>Stores a document of another register under its own number, with its bytes.</summary>
internal sealed class MergedDocumentInsert(RegisterRows here, RegisterRows other, MergedVisits visits)
{
    private readonly DbConnection _connection = here.Database.Connection;

    public void Insert(DocumentStatus document)
    {
        _ = DocumentNumber.TryParse(document.Number, out var number);
        var (letter, isOut) = (number.Letter.ToString(), document.State is DocumentState.Issued);
        var copyOf =
            document.CopyOf is { } original
            && here.Documents.Find(original) is { } found
            && string.Equals(here.OriginOf(found), other.OriginOf(document), StringComparison.Ordinal)
                ? original
                : null;
        _connection.Execute(
            """
            INSERT INTO document (number, letter, year, sequence, kind, job_key, folder, state, sha256, pages, outcomes, void_reason,
            issued_on, language, visit, copy_of, origin)
            VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13, $14, $15, $16, $17)
            """,
            document.Number,
            letter,
            number.Year,
            number.Sequence,
            document.Kind,
            Job(document),
            document.Folder,
            DocumentWords.Of(document.State),
            document.Sha256,
            document.Pages,
            document.OutcomesJson,
            document.VoidReason,
            StoredDay.Of(document.IssuedOn),
            document.Language,
            visits.Ours(document.Visit),
            copyOf,
            other.OriginOf(document)
        );
        _connection.Insert("document_item", document.Items.Select((item, position) => new object?[] { document.Number, position, item }));
        if (isOut)
            here.Contents.Keep(new(document.Number, document.Sha256!, other.Contents.Of(document.Number, document.Sha256!)));
        _connection.Execute(
            "INSERT INTO counter (letter, year, last) VALUES ($1, $2, $3) ON CONFLICT (letter, year) DO UPDATE SET last = $3 "
                + "WHERE counter.last < $3",
            letter,
            number.Year,
            number.Sequence
        );
    }

    /// <summary>The same job may have been done in both registers; then only ours is found by it.</summary>
    private string Job(DocumentStatus document) =>
        document is { State: DocumentState.Issued, Ended: null } && !here.Documents.HasLive(document.JobKey)
            ? document.JobKey
            : $"{other.OriginOf(document)}/{document.Number}/{document.JobKey}";
}
