using ExamDocs.Register.Log;
using ExamDocs.Register.Model;

namespace ExamDocs.Register;

/// <content>What shows to others that documents are in the log.</content>
public sealed partial class DocumentRegister
{
    /// <summary>Shows of documents that their coming out is in the log, and gives the checkpoint that the proofs lead to.</summary>
    /// <param name="numbers">Of the documents; one whose coming out is not in the log has no proof.</param>
    /// <returns>By place in the log; no checkpoint while the log is empty.</returns>
    /// <exception cref="RegisterAlteredException">The log is not what its last root says.</exception>
    public (Checkpoint? Checkpoint, IReadOnlyList<InclusionProof> Proofs) Proofs(IReadOnlySet<string> numbers)
    {
        ArgumentNullException.ThrowIfNull(numbers);
        using var reading = Rows.Database.BeginReading();
        return Rows.Log.Proofs(numbers);
    }
}
