using ExamDocs.Register.Checking;
using ExamDocs.Register.Model;

namespace ExamDocs.Register;

/// <content>Whether what is listed of a document is what the log has, before anything is made of it.</content>
public sealed partial class DocumentRegister
{
    private DocumentsInLog Logged => field ??= new(Rows.Database, Rows.Log);

    /// <summary>Compares what a document says may be used with what its visit decided; compare both with the log before.</summary>
    /// <exception cref="RegisterAlteredException">It differs.</exception>
    public void RequireDecided(DocumentStatus document)
    {
        ArgumentNullException.ThrowIfNull(document);
        Logged.RequireDecided(document);
    }

    /// <summary>Compares all that is listed of a document with the log.</summary>
    /// <exception cref="RegisterAlteredException">It differs.</exception>
    public void RequireAsLogged(DocumentStatus document)
    {
        ArgumentNullException.ThrowIfNull(document);
        Logged.Require(document);
    }
}
