using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Rows;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Checking;

/// <summary>Compares documents with the entries of the log about them, found by an index, before anything is made of them.</summary>
internal sealed class DocumentsInLog(RegisterDatabase database, LogRows log)
{
    private readonly EntriesInLog _entries = log.InLog();
    private readonly DocumentAsLogged _logged = new(database);

    /// <exception cref="RegisterAlteredException">It says that something may be used, and its visit did not decide so.</exception>
    public void RequireDecided(DocumentStatus document)
    {
        if (_logged.NotDecided(document).FirstOrDefault() is { } fault)
            throw new RegisterAlteredException(document.Number, $"Of it, {fault}.");
    }

    /// <exception cref="RegisterAlteredException">What is listed of it is not what the log has.</exception>
    public void Require(DocumentStatus document)
    {
        var found = database.Connection.Rows(
            row => (Position: row.GetInt64(0), Entry: LogEntryJson.Read(row.GetFieldValue<byte[]>(1))),
            $"SELECT position, entry FROM log WHERE {database.DocumentOfEntry} = $1 ORDER BY position",
            document.Number
        );
        if (found.Exists(f => f.Entry?.Position != f.Position))
            throw new RegisterAlteredException(document.Number, "An entry of the log about it was altered.");
        _entries.Require(found.Select(f => f.Position));
        if (_logged.Faults(document, [.. found.Select(f => f.Entry!)]).FirstOrDefault() is { } fault)
            throw new RegisterAlteredException(document.Number, $"Of it, {fault}.");
    }
}
