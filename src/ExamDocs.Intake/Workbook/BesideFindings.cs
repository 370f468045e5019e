using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Workbook;

/// <summary>
/// What a workbook hides, strikes out or shows beside its values: its author may have meant something that the record does not say.
/// </summary>
public static class BesideFindings
{
    public static readonly RuleInfo HiddenRead = new(
        "INT034",
        Severity.Warning,
        "Nothing that is read is hidden",
        "Hidden rows and sheets are read like any others, but nobody looking at the workbook sees them.",
        $"Show what is hidden and look at it.",
        RuleSources.Practice
    );

    public static readonly RuleInfo MacrosNotRun = new(
        "INT047",
        Severity.Note,
        "Macros in a workbook are never run",
        "A macro could change what the cells show; what was saved in the cells is read, and nothing else.",
        $"Check whether the cells hold what you see, then save the workbook without macros.",
        RuleSources.Practice
    );

    public static readonly RuleInfo OtherWorkbooks = new(
        "INT056",
        Severity.Warning,
        "No value is taken from another workbook",
        "Other workbooks are never opened: what was saved with this one may be out of date.",
        $"Type the values themselves.",
        RuleSources.Practice
    );

    public static readonly RuleInfo StruckOut = new(
        "INT064",
        Severity.Error,
        "Nothing that is read is struck out",
        "A value that is struck or crossed out is still in its cell and would be read, and whoever struck it out meant that "
            + "it does not hold.",
        $"Empty the cell; or type the value that holds and remove the strike-through.",
        RuleSources.Practice
    );

    public static readonly RuleInfo CommentOnValue = new(
        "INT065",
        Severity.Error,
        "No comment is on an answer, a conclusion, an identity or a date",
        "Comments are not read, and this one may say that the value does not hold.",
        $"Put what it says into the record: as the answer, its note or a defect. Then delete the comment.",
        RuleSources.Practice
    );

    public static readonly RuleInfo CommentElsewhere = new(
        "INT066",
        Severity.Warning,
        "No comment is where it is not read",
        "Comments are not read, wherever they are.",
        $"Read it; where it says something about the kit, put that into the record.",
        RuleSources.Practice
    );

    public static readonly RuleInfo HelperAltered = new(
        "INT067",
        Severity.Error,
        "What the program wrote to be looked at is as it wrote it",
        "It is not read, and an answer or a danger may have been typed there.",
        $"Put what was typed under its heading on the sheet it belongs to, and take it out here.",
        RuleSources.CaptureWorkbook
    );

    public static readonly RuleInfo TextInDrawing = new(
        "INT069",
        Severity.Error,
        "No text is drawn over a sheet",
        "Text boxes and shapes are not read, and this one may say what the cells do not.",
        $"Put what it says into the record, then delete it.",
        RuleSources.Practice
    );

    public static readonly RuleInfo DrawingNotRead = new(
        "INT070",
        Severity.Warning,
        "Nothing lies over the cells of a sheet",
        "Pictures, charts, controls and objects are not read, and may cover what is.",
        $"Look at them; where they say something about the kit, put that into the record.",
        RuleSources.Practice
    );

    public static readonly RuleInfo HeaderOrFooter = new(
        "INT071",
        Severity.Warning,
        "No header or footer says something of the kit",
        "What is printed above and below a sheet is not read.",
        $"Read it; where it says something about the kit, put that into the record.",
        RuleSources.Practice
    );

    public static readonly RuleInfo StrikingFormat = new(
        "INT074",
        Severity.Warning,
        "No conditional format strikes values out",
        "Conditions are never worked out here: whether a value looks struck out cannot be told, and it is read.",
        $"Check whether a value is struck out, and type the value that holds.",
        RuleSources.Practice
    );

    public static IReadOnlyList<RuleInfo> All { get; } =
    [
        HiddenRead,
        MacrosNotRun,
        OtherWorkbooks,
        StruckOut,
        CommentOnValue,
        CommentElsewhere,
        HelperAltered,
        TextInDrawing,
        DrawingNotRead,
        HeaderOrFooter,
        StrikingFormat,
    ];
}
