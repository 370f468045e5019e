using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Determination;

/// <summary>Why an item has the outcome it has.</summary>
/// <param name="Code">W1 to W11, U0 to U6 or D1 to D3.</param>
/// <param name="Said">The reason, complete enough to be printed.</param>
/// <param name="Source">The law, maker's document or practice behind it.</param>
public sealed record Reason(string Code, Sentence Said, string Source)
{
    /// <summary>The reason in English.</summary>
    public string Text => Said.Text;

    /// <summary>Id of the part or whole that the reason is about; null where it is about the item itself.</summary>
    public string? Other { get; init; }
}
