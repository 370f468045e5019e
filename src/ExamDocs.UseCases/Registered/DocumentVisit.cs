using ExamDocs.Register;
using ExamDocs.Register.Model;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// Checks the visit that a document was issued from, and those that share its items, against the log before the register's answer
/// about it is used.
/// </summary>
internal static class DocumentVisit
{
    /// <returns>The document.</returns>
    /// <exception cref="RegisterAlteredException">One of them differs from the log.</exception>
    public static DocumentStatus? Require(DocumentRegister register, DocumentStatus? document)
    {
        if (document?.Visit is { } visit)
        {
            var records = new RememberedRecords(register);
            var logged = register.Visits.AsLogged(records.Read);
            logged.Require([visit]);
            logged.Touching(records.Of(visit));
            logged.RequireEnds(document);
        }
        return document;
    }
}
