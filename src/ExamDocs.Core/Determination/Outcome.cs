using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Determination;

/// <summary>Whether an item may stay in service, from best to worst.</summary>
public enum Outcome
{
    Fit,
    FitUntil,
    Undetermined,
    Withdraw,
}

/// <summary>Why an item has the outcome it has.</summary>
/// <param name="Code">W1 to W10, U0 to U6 or D1 to D3.</param>
/// <param name="Said">The reason, complete enough to be printed.</param>
/// <param name="Source">The law, maker's document or practice it rests on.</param>
public sealed record Reason(string Code, Sentence Said, string Source)
{
    /// <summary>The reason in English.</summary>
    public string Text => Said.Text;
}

/// <summary>Words for outcomes as they stand in files.</summary>
public static class OutcomeWords
{
    public static string Word(this Outcome outcome) => outcome switch
    {
        Outcome.Fit => "fit",
        Outcome.FitUntil => "fit-until",
        Outcome.Undetermined => "undetermined",
        _ => "withdraw",
    };
}
