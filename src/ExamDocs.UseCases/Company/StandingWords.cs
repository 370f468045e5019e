using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Registered;

namespace ExamDocs.UseCases.Company;

/// <summary>What a register says of an item today, in a word.</summary>
public static class StandingWords
{
    public static Message Said(this Standing standing) =>
        standing switch
        {
            Standing.Withdrawn => $"withdrawn",
            Standing.Held => $"held",
            Standing.Overdue => $"overdue",
            Standing.NotIssued => $"no current report",
            _ => $"in service",
        };
}
