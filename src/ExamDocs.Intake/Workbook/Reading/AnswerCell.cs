using System.Text.RegularExpressions;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Vocabulary;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>An answer with its note in the same cell, as "noted: dried soil".</summary>
/// <param name="State">The word before the first colon.</param>
/// <param name="Note">What follows it; empty where nothing does.</param>
internal sealed partial record AnswerCell(string State, string Note)
{
    private static readonly IReadOnlyList<string> States = Words.States.All;

    /// <summary>The word as it was typed.</summary>
    public required string Typed { get; init; }

    /// <summary>Null where the cell holds anything else, which is then an answer as it was typed.</summary>
    public static AnswerCell? Of(Cell cell)
    {
        var colon = cell.Kind is CellKind.Text ? cell.Raw.IndexOf(':', StringComparison.Ordinal) : -1;
        if (colon < 0)
            return null;
        var word = cell.Raw[..colon].Trim();
        return Synonyms.Find(word, States) is { } found ? new(found.Word, cell.Raw[(colon + 1)..].Trim()) { Typed = word } : null;
    }

    /// <summary>
    /// Whether an answer that is not adverse is followed by another: by its word at the beginning of the note, after clear
    /// by an adverse one anywhere. A "no" before it makes no difference, because who found nothing types clear alone.
    /// </summary>
    public bool NamesAnother =>
        State is not ("defect" or "doubt")
        && (
            OtherFirst().IsMatch(Note)
            || (
                Note.Length > 0
                && Synonyms.Find(FirstPart().Match(Note).Value, States) is { } other
                && !string.Equals(other.Word, State, StringComparison.Ordinal)
            )
            || (State is "clear" && AnswerWords.IsIn(Note) && !AnswerWords.IsGood(Note))
        );

    [GeneratedRegex(
        @"\A\W*((defect|doubt|withdr)|(clear|noted|no-sign|not-examined|not-applicable)\b)",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex OtherFirst();

    /// <summary>The note up to its first mark.</summary>
    [GeneratedRegex(@"\A[^,;:()!?\u2013\u2014]*", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex FirstPart();
}
