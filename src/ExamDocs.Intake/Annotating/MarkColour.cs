using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Annotating;

/// <summary>Pale fills, one for each severity; the word for it is in the note as well, because colour alone says nothing.</summary>
internal static class MarkColour
{
    public static string Of(Severity severity) =>
        severity switch
        {
            Severity.Error => "FFFFC9C4",
            Severity.Warning => "FFFFE9A8",
            _ => "FFD6E6F5",
        };
}
