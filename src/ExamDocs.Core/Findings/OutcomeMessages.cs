using ExamDocs.Core.Records;

namespace ExamDocs.Core.Findings;

/// <summary>Outcomes for somebody to read on a screen.</summary>
public static class OutcomeMessages
{
    public static Message Said(this Outcome outcome) =>
        outcome switch
        {
            Outcome.Fit => $"fit",
            Outcome.FitUntil => $"fit-until",
            Outcome.Undetermined => $"undetermined",
            _ => $"withdraw",
        };
}
