namespace ExamDocs.Register;

/// <summary>
/// Brings every pending number to an end after a run that was interrupted: issued where its bytes are known and its file
/// is in place or can be put there, void otherwise.
/// </summary>
internal sealed class Recovery(DocumentRows rows)
{
    /// <summary>One sentence for each number that was pending.</summary>
    public IReadOnlyList<string> Run() =>
        [.. rows.AllPending().Select(pending => Settle(pending.Document, pending.Sha256))];

    private string Settle(PendingDocument document, string? sha256)
    {
        if (sha256 is null)
            return Void(document, "the run was interrupted before it was printed");
        try
        {
            DurableFile.Publish(document.Folder, document.FileName, rows.Content(document.Number, sha256));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or InvalidDataException)
        {
            // A void number must leave no whole document behind.
            if (!DurableFile.HasHash(Path.Combine(document.Folder, document.FileName), sha256))
                return Void(document, $"the run was interrupted and its file cannot be written: {failure.Message}");
            FolderSync.Flush(document.Folder);
        }
        rows.MarkIssued(document.Number);
        return $"{document.Number} was left unfinished by an interrupted run and is now issued in {document.Folder}.";
    }

    private string Void(PendingDocument document, string reason)
    {
        rows.Void(document.Number, reason);
        try
        {
            DurableFile.RemoveTemporary(document.Folder, document.FileName);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return $"{document.Number} is void: {reason}. A temporary file of it is left in {document.Folder}.";
        }
        return $"{document.Number} is void: {reason}.";
    }
}
