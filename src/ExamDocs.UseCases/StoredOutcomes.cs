using ExamDocs.Core.Records;
using ExamDocs.Core.Determination;
using ExamDocs.Register;

namespace ExamDocs.UseCases;

/// <summary>What a register's words for outcomes mean.</summary>
internal static class StoredOutcomes
{
    public static bool IsWithdrawal(this PastOutcome outcome) => outcome.Is(Outcome.Withdraw);

    /// <summary>Found fit, without a limit in time or with one.</summary>
    public static bool Passes(this PastOutcome outcome) => outcome.Is(Outcome.Fit) || outcome.Is(Outcome.FitUntil);

    private static bool Is(this PastOutcome outcome, Outcome one) => string.Equals(outcome.Outcome.Outcome, one.Word(), StringComparison.Ordinal);
}
