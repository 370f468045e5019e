using ExamDocs.Register.Files;
using ExamDocs.Register.Model;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register;

/// <summary>
/// Brings every pending number of a run that has ended to an end: issued where its bytes are known and its file is in
/// place or can be put there, void otherwise. Runs still at work keep theirs.
/// </summary>
internal sealed class Recovery(RegisterRows rows, string run)
{
    private readonly RegisterDatabase _database = rows.Database;

    /// <summary>One sentence for each number that was pending.</summary>
    public IReadOnlyList<string> Run() =>
        [
            .. from pending in rows.Documents.Pending()
            where IsLeft(pending.Run) && rows.Changes.Claim(pending.Document.Number, pending.Run, _database.Settling(run, pending.Run))
            select Settle(pending.Document, pending.Sha256, pending.Run),
        ];

    /// <summary>What this run itself took is left where it goes on after a fault.</summary>
    private bool IsLeft(string? owner) => owner is null || string.Equals(owner, run, StringComparison.Ordinal) || _database.HasEnded(owner);

    private string Settle(PendingDocument document, string? sha256, string? left)
    {
        if (sha256 is null)
            return Void(document, "the run was interrupted before it was printed");
        if (document.Folder.Length == 0)
        {
            if (Lost(document.Number, sha256) is { } lost)
                return Void(document, $"the run was interrupted, and what it had printed is lost: {lost}");
            rows.Changes.MarkIssued((document.Number, null));
            return $"{document.Number} was left unfinished by an interrupted run and is now issued; run its command again to have it.";
        }
        // Its file may be out there; what is out must not be void.
        if (left is not null && _database.WasElsewhere(left))
        {
            rows.Changes.MarkIssued((document.Number, null));
            return $"{document.Number} was left unfinished by an interrupted run on another machine and is now issued; issue its "
                + "visit again to have the file.";
        }
        try
        {
            DurableFile.Publish(document.Folder, document.FileName, rows.Contents.Of(document.Number, sha256));
        }
        // A place that cannot be reached says nothing of what is there: the number waits for the next run.
        catch (Exception failure)
            when (failure is (IOException and not ContentStoreException) or UnauthorizedAccessException or InvalidDataException)
        {
            // A void number must leave no whole document behind.
            if (!DurableFile.HasHash(Path.Combine(document.Folder, document.FileName), sha256))
                return Void(document, $"the run was interrupted and its file cannot be written: {failure.Message}");
            FolderSync.Flush(document.Folder);
        }
        rows.Changes.MarkIssued((document.Number, null));
        return $"{document.Number} was left unfinished by an interrupted run and is now issued in {document.Folder}.";
    }

    private string? Lost(string number, string sha256)
    {
        try
        {
            rows.Contents.Of(number, sha256);
            return null;
        }
        catch (InvalidDataException lost)
        {
            return lost.Message;
        }
    }

    private string Void(PendingDocument document, string reason)
    {
        rows.Changes.Void(document.Number, reason);
        try
        {
            if (document.Folder.Length > 0)
                DurableFile.RemoveTemporary(document.Folder, document.FileName);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return $"{document.Number} is void: {reason}. A temporary file of it is left in {document.Folder}.";
        }
        return $"{document.Number} is void: {reason}.";
    }
}
