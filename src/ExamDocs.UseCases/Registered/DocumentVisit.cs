using ExamDocs.Register;
using ExamDocs.Register.Model;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// Checks a document, the visit that it was issued from, and those that share its items, against the log before the register's answer
/// about it is used.
/// </summary>
internal static class DocumentVisit
{
    /// <returns>The document.</returns>
    /// <exception cref="RegisterAlteredException">One of them differs from the log.</exception>
    public static DocumentStatus? Require(DocumentRegister register, DocumentStatus? document)
    {
        if (document is not null)
            register.RequireAsLogged(document);
        if (document?.Visit is { } visit)
        {
            var records = new RememberedRecords(register);
            var logged = register.Visits.AsLogged(records.Read);
            logged.Require([visit]);
            register.RequireDecided(document);
            var touching = logged.Touching(records.Of(visit));
            logged.RequireEnds(document);
            VisitsAsLogged.RequireNoWithdrawal(document, touching);
        }
        return document;
    }
}
