using ExamDocs.Core.Records;

namespace ExamDocs.Intake.Binding;

/// <summary>
/// Adverse answers by what they begin with, in any letter case and whatever marks stand before: "DEFECT!", "defect - cut
/// 4 mm" and "doubtful?" are as adverse as the words themselves.
/// </summary>
internal static class Adverse
{
    /// <summary>The state that a text begins with; null where it begins with neither adverse one.</summary>
    public static ObservedState? State(string typed) =>
        Begins(typed, "defect") ? ObservedState.Defect
        : Begins(typed, "doubt") ? ObservedState.Doubt
        : null;

    /// <summary>Withdraw, where a text begins with it: withdrawn and withdrew too.</summary>
    public static Conclusion? Conclusion(string typed) => Begins(typed, "withdr") ? Core.Records.Conclusion.Withdraw : null;

    /// <summary>Whether letters of its own go with an adverse state, which nobody else keeps.</summary>
    public static bool IsMoreThanTheWord(string? typed) =>
        typed is not null
        && State(typed) is { } state
        && !string.Equals(
            string.Concat(typed.Where(char.IsLetterOrDigit)),
            Words.States.WordFor(state),
            StringComparison.OrdinalIgnoreCase
        );

    private static bool Begins(string typed, string word)
    {
        var first = 0;
        while (first < typed.Length && !char.IsLetterOrDigit(typed[first]))
            first++;
        return typed.AsSpan(first).StartsWith(word, StringComparison.OrdinalIgnoreCase);
    }
}
