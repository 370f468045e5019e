using ExamDocs.Register;

namespace ExamDocs.UseCases;

/// <summary>The visit that a document was issued from, and the visits that touch its items, before a register's word on it is passed on.</summary>
internal static class DocumentVisit
{
    /// <returns>The document.</returns>
    /// <exception cref="RegisterAlteredException">One of them is not as the log has it.</exception>
    public static DocumentStatus? Require(DocumentRegister register, DocumentStatus? document)
    {
        if (document?.Visit is { } visit)
        {
            var records = new RememberedRecords(register);
            var logged = register.Visits.AsLogged(records.Read);
            logged.Require([visit]);
            logged.Touching(records.Of(visit));
        }
        return document;
    }
}
