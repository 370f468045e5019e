namespace ExamDocs.Intake.OwnList.Mapping;

/// <summary>Something about a list that is not sure, with what can be answered.</summary>
/// <param name="Text">The question, with values to look at.</param>
/// <param name="Choices">At least two, in the order of their numbers.</param>
/// <param name="Proposed">Which of them is proposed, counted from 0.</param>
public sealed record ListQuestion(string Text, IReadOnlyList<string> Choices, int Proposed)
{
    /// <summary>What it is about: nothing is asked twice.</summary>
    internal string Key { get; init; } = "";

    /// <summary>Settles the answer, counted from 0.</summary>
    internal Action<ListMapping, int> Settle { get; init; } = (_, _) => { };
}
