using ExamDocs.Core.Records;
using ExamDocs.Intake.Vocabulary;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>An answer with its note in the same cell, as "noted: dried soil".</summary>
/// <param name="State">The word before the first colon.</param>
/// <param name="Note">What follows it; empty where nothing does.</param>
internal sealed record AnswerCell(string State, string Note)
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

    /// <inheritdoc cref="AnswerNote.NamesAnother"/>
    public bool NamesAnother => AnswerNote.NamesAnother(State, Note);
}
