using System.Text.RegularExpressions;

namespace ExamDocs.Core.Records;

/// <summary>
/// The reference of a visit that records what a safety notice took out of use. Its end names the notice, its text and the items, so that
/// a register itself knows which items a notice has taken out already.
/// </summary>
/// <param name="Reference">That of the notice, as typed.</param>
/// <param name="Notice">Ten digits of maker and reference, however they are spelt.</param>
/// <param name="Text">Ten digits of all that the notice says: one that names more kit under the same reference differs.</param>
/// <param name="Items">Ten digits of the record.</param>
public sealed partial record RecallVisit(string Reference, string Notice, string Text, string Items)
{
    /// <summary>What a visit of this reference records; null for any other visit.</summary>
    public static RecallVisit? Read(string? reference) =>
        reference is not null && Form().Match(reference) is { Success: true, Groups: var found }
            ? new(found["reference"].Value, found["notice"].Value, found["text"].Value, found["items"].Value)
            : null;

    /// <summary>The reference of the visit.</summary>
    public override string ToString() => $"{Reference} recall {Notice}-{Text}-{Items}";

    [GeneratedRegex(
        @"^(?<reference>.*) recall (?<notice>[0-9a-f]{10})-(?<text>[0-9a-f]{10})-(?<items>[0-9a-f]{10})$",
        RegexOptions.CultureInvariant | RegexOptions.Singleline,
        1000
    )]
    private static partial Regex Form();
}
