using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Workbook;

/// <summary>What is said of a sheet that is not laid out, or not filled in, as the capture workbook is, and is read all the same.</summary>
public static class ReadAsFindings
{
    public static readonly RuleInfo ReadAs = new(
        "INT080",
        Severity.Note,
        "What is typed in another way is read where there is one way to read it",
        "A synonym, a date in another form or a number with its unit is read as the record format has it; the cells are named "
            + "so that somebody can look.",
        $"Check whether it is what was meant; where it is not, type the word, the date or the number as the record format has it.",
        RuleSources.CaptureWorkbook
    );

    public static readonly RuleInfo OwnColumn = new(
        "INT081",
        Severity.Note,
        "A column of your own is left alone",
        "What is under a heading of your own stays in your workbook. The record has no place for it, so no document shows it.",
        $"Nothing to do if it says nothing about the state of the kit; otherwise put what it says into an answer, a note or a defect.",
        RuleSources.CaptureWorkbook
    );

    public static readonly RuleInfo ResultColumn = new(
        "INT082",
        Severity.Note,
        "A column of results is not taken for a conclusion",
        "A pass in a column of results says neither what was examined nor who concluded it. A fail in it is an error.",
        $"Type fit or withdraw into the column 'conclusion', and the answers under their criteria.",
        RuleSources.CaptureWorkbook
    );

    public static readonly RuleInfo RowsAboveHeadings = new(
        "INT083",
        Severity.Note,
        "The headings are in a sheet's first row",
        "Rows above the headings, such as a title or a logo, are not read.",
        $"Check whether they say something about the kit; if so, put it below the headings where it belongs.",
        RuleSources.CaptureWorkbook
    );

    public static IReadOnlyList<RuleInfo> All { get; } = [ReadAs, OwnColumn, ResultColumn, RowsAboveHeadings];
}
