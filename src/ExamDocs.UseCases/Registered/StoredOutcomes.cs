using ExamDocs.Core.Records;
using ExamDocs.Register.Model;

namespace ExamDocs.UseCases.Registered;

/// <summary>Reads the words that a register uses for outcomes.</summary>
internal static class StoredOutcomes
{
    public static bool IsWithdrawal(this PastOutcome outcome) =>
        string.Equals(outcome.Outcome.Outcome, Outcome.Withdraw.Word(), StringComparison.Ordinal);
}
