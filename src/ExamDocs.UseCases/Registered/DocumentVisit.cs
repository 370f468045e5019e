using ExamDocs.Register;
using ExamDocs.Register.Model;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// Looks at the visit that a document was issued from, and at those that touch its items, before what a register says of it is used.
/// </summary>
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
            logged.RequireEnds(document);
        }
        return document;
    }
}
