using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Workbook;

/// <summary>What a workbook shows beside its values: its author meant something that the record does not say.</summary>
public static class BesideFindings
{
    private const string Practice = "common practice, no source";

    private const string Layout = "capture workbook, sheet \"How to fill this in\"";

    public static readonly RuleInfo StruckOut = new(
        "INT064",
        Severity.Error,
        "Nothing that is read is struck out",
        "A value that is struck or crossed out is still in its cell and would be read, and whoever struck it out meant that "
            + "it does not hold.",
        "Empty the cell, or type what holds; take the line through it off.",
        Practice
    );

    public static readonly RuleInfo CommentOnValue = new(
        "INT065",
        Severity.Error,
        "No comment stands on an answer, a conclusion, an identity or a date",
        "Comments are not read, and this one may say that the value does not hold.",
        "Put what it says into the record: as the answer, its note or a defect. Then delete the comment.",
        Practice
    );

    public static readonly RuleInfo CommentElsewhere = new(
        "INT066",
        Severity.Warning,
        "No comment stands where it is not read",
        "Comments are not read, wherever they stand.",
        "Read it; where it says something of the kit, put that into the record.",
        Practice
    );

    public static readonly RuleInfo HelperAltered = new(
        "INT067",
        Severity.Error,
        "What the program wrote to be looked at is as it wrote it",
        "It is not read, and an answer or a danger may have been typed there.",
        "Put what was typed under its heading on the sheet it belongs to, and take it out here.",
        Layout
    );

    public static readonly RuleInfo KnownByHeadings = new(
        "INT068",
        Severity.Note,
        "A sheet without a known name is known by its headings",
        "A sheet that was renamed or copied is read as the one whose headings it has.",
        "Look whether it is to be read; if not, take it out of the workbook.",
        Layout
    );

    public static readonly RuleInfo TextInDrawing = new(
        "INT069",
        Severity.Error,
        "No text is drawn over a sheet",
        "Text boxes and shapes are not read, and this one may say what the cells do not.",
        "Put what it says into the record, then delete it.",
        Practice
    );

    public static readonly RuleInfo DrawingNotRead = new(
        "INT070",
        Severity.Warning,
        "Nothing lies over the cells of a sheet",
        "Pictures, charts, controls and objects are not read, and may cover what is.",
        "Look at them; where they say something of the kit, put that into the record.",
        Practice
    );

    public static readonly RuleInfo HeaderOrFooter = new(
        "INT071",
        Severity.Warning,
        "No header or footer says something of the kit",
        "What is printed above and below a sheet is not read.",
        "Read it; where it says something of the kit, put that into the record.",
        Practice
    );

    public static readonly RuleInfo StrikingFormat = new(
        "INT074",
        Severity.Warning,
        "No conditional format strikes values out",
        "Conditions are never worked out here: whether a value looks struck out cannot be told, and it is read.",
        "Look whether a value is struck out, and type what holds.",
        Practice
    );

    public static readonly RuleInfo MergedRows = new(
        "INT075",
        Severity.Error,
        "No cell is merged over several items",
        "A merged cell holds its value for its first row only, and looks as if it held for all of them.",
        "Take the merge apart and fill in every cell that the value was meant for.",
        "ECMA-376 1st ed. Part 4, merged cells"
    );

    public static readonly RuleInfo LastTimeAltered = new(
        "INT076",
        Severity.Error,
        "The grey columns show what was seen last time, and nothing else",
        "They are there to compare with and are not read; what was typed there would be lost.",
        "Put what was typed into the answer or its note, and empty the grey cell.",
        Layout
    );

    public static IReadOnlyList<RuleInfo> All { get; } =
    [
        StruckOut,
        CommentOnValue,
        CommentElsewhere,
        HelperAltered,
        KnownByHeadings,
        TextInDrawing,
        DrawingNotRead,
        HeaderOrFooter,
        StrikingFormat,
        MergedRows,
        LastTimeAltered,
    ];
}
