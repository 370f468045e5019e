using ExamDocs.Core.Findings;

namespace ExamDocs.Intake;

/// <summary>What can be wrong with an answer that says more than one of the allowed words.</summary>
public static class AnswerRules
{
    private const string Format = "docs/record-format.md";

    public static readonly RuleInfo AdverseWord = new(
        "INT061",
        Severity.Error,
        "An adverse answer is the word alone, its note beside it",
        "What begins with defect, doubt or withdraw counts as that, however it goes on: no danger is lost to a slip. The "
            + "rest is kept as the note where there is none.",
        $"Type the word alone, and what was seen in the note; or both in one cell of a workbook, for example defect: cut 4 mm.",
        Format
    )
    {
        LosesValue = true,
    };

    public static readonly RuleInfo TwoAnswers = new(
        "INT062",
        Severity.Error,
        "The note of an answer names no other answer",
        "clear, with the note defect at 200 mm, is two answers, and one of them hides a danger. It counts as none.",
        $"Type the answer that holds, and what was seen as its note.",
        Format
    )
    {
        LosesValue = true,
    };

    public static readonly RuleInfo TwoNotes = new(
        "INT063",
        Severity.Error,
        "An answer has one note",
        "There is a note in the cell of the answer and another in the column of notes, and it is not clear which is meant. Both are kept.",
        $"Leave the word alone in its cell, and put the whole note into the column of notes.",
        Format
    );

    public static IReadOnlyList<RuleInfo> All { get; } = [AdverseWord, TwoAnswers, TwoNotes];
}
