using ExamDocs.Core.Findings;
using ExamDocs.Intake.Csv;
using ExamDocs.Intake.Merging;
using ExamDocs.Intake.Photos;
using ExamDocs.Intake.Workbook;

namespace ExamDocs.Intake.Rules;

/// <summary>Every rule of this room, whatever the input.</summary>
public static class ReadingRules
{
    public static IReadOnlyList<RuleInfo> All { get; } =
    [
        .. IntakeRules.All,
        .. AnswerRules.All,
        .. PlaceholderRules.All,
        .. CellFindings.All,
        .. SheetFindings.All,
        .. BesideFindings.All,
        .. ReadAsFindings.All,
        .. CsvFindings.All,
        .. MergeFindings.All,
        .. PhotoRules.All,
    ];
}
