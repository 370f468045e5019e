namespace ExamDocs.Core.Records;

/// <summary>Whether an item may stay in service, from best to worst.</summary>
public enum Outcome
{
    Fit,
    FitUntil,
    Undetermined,
    Withdraw,
}

/// <summary>Words for outcomes as they stand in files.</summary>
public static class OutcomeWords
{
    public static string Word(this Outcome outcome) =>
        outcome switch
        {
            Outcome.Fit => "fit",
            Outcome.FitUntil => "fit-until",
            Outcome.Undetermined => "undetermined",
            _ => "withdraw",
        };

    /// <summary>The outcome that a word of <see cref="Word"/> names; null where it names none.</summary>
    public static Outcome? Find(string? word) =>
        Enum.GetValues<Outcome>().Where(o => string.Equals(o.Word(), word, StringComparison.Ordinal)).Cast<Outcome?>().FirstOrDefault();
}
