using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Workbook;

/// <summary>What can be wrong with the sheets, headings and rows of a workbook.</summary>
/// <remarks>Longer than other types: it is one list, the same as the page docs/rules/sheets.md.</remarks>
public static class SheetFindings
{
    public static readonly RuleInfo UnknownSheet = new(
        "INT020",
        Severity.Error,
        "Every sheet that holds something is one the workbook knows",
        "What is on an unknown sheet is not read, and it may be an answer or a danger.",
        $"Name the sheet as the capture workbook does, or take it out.",
        RuleSources.CaptureWorkbook
    );

    public static readonly RuleInfo UnknownColumn = new(
        "INT021",
        Severity.Error,
        "No heading is misspelt, and no answer stands under one that is not known",
        "What is under such a heading is not read: it may be an answer, a remark or a danger. A column that is plainly your own, "
            + "such as a location, is left alone.",
        $"Spell the heading as the capture workbook does; put what it says about the kit into an answer or its note, or empty the column.",
        RuleSources.CaptureWorkbook
    );

    public static readonly RuleInfo NoHeading = new(
        "INT022",
        Severity.Error,
        "Every filled cell stands under a heading",
        "A value without a heading is not read, because nothing says what it is.",
        $"Move the value under its heading, or empty the cell.",
        RuleSources.CaptureWorkbook
    );

    public static readonly RuleInfo NoExamination = new(
        "INT030",
        Severity.Error,
        "What was found belongs to an examination of its item",
        "The row names an item or a date for which no examination is filled in; what it says is kept, but cannot be weighed properly.",
        $"Spell the item's id and the date as on its own sheet, or fill in the examination.",
        RuleSources.CaptureWorkbook
    );

    public static readonly RuleInfo NoItemNamed = new(
        "INT031",
        Severity.Error,
        "Every row says which item it is about",
        "Without the item's id, nobody knows which item the row is about.",
        $"Type the item's id.",
        RuleSources.CaptureWorkbook
    );

    public static readonly RuleInfo EarlierWithoutDate = new(
        "INT032",
        Severity.Error,
        "An earlier observation or examination has its date",
        "Without its date it would be taken for today's.",
        $"Type the date of that examination.",
        RuleSources.CaptureWorkbook
    );

    public static readonly RuleInfo PhotoWithoutObservation = new(
        "INT033",
        Severity.Error,
        "A photo belongs to an observation",
        "The photo's criterion has no observation in that examination.",
        $"Spell the criterion as in the column heading, or fill in its observation.",
        RuleSources.CaptureWorkbook
    );

    public static readonly RuleInfo ListTooLong = new(
        "INT037",
        Severity.Error,
        "A cell lists no more than 200 things",
        "A list that long is a slip; it counts as missing.",
        $"List fewer things, separated by semicolons.",
        RuleSources.Practice
    )
    {
        LosesValue = true,
    };

    public static readonly RuleInfo TwoExaminationsOfOneDay = new(
        "INT038",
        Severity.Error,
        "An item has one examination on one day",
        "What other sheets say of that day cannot be told apart; it is put to the first of the two.",
        $"Keep one of the two, or correct a date.",
        RuleSources.CaptureWorkbook
    );

    public static readonly RuleInfo ColumnMissing = new(
        "INT052",
        Severity.Warning,
        "No column that every row needs is missing from a sheet",
        "Without it no row of the sheet has the answer, however many rows there are.",
        $"Put the heading into the sheet's row of headings, or say in headings.json of a rules folder what yours is called.",
        RuleSources.CaptureWorkbook
    );

    public static readonly RuleInfo MergedCells = new(
        "INT055",
        Severity.Warning,
        "No cells are merged on a sheet that is read",
        "A merged cell holds its value once: it counts for the first row and column only, whatever it spans.",
        $"Unmerge the cells, and fill in each one that the value was meant for.",
        RuleSources.MergedCells
    );

    public static readonly RuleInfo NoSuchItem = new(
        "INT060",
        Severity.Error,
        "What tells an item from others names an item of the workbook",
        "The row names an item that no sheet has, so that what it says counts for none.",
        $"Spell the item's id as on its own sheet.",
        RuleSources.CaptureWorkbook
    );

    public static readonly RuleInfo KnownByHeadings = new(
        "INT068",
        Severity.Note,
        "A sheet without a known name is known by its headings",
        "A sheet that was renamed or copied is read as the one whose headings it has.",
        $"Check whether it is to be read; if not, take it out of the workbook.",
        RuleSources.CaptureWorkbook
    );

    public static readonly RuleInfo MergedRows = new(
        "INT075",
        Severity.Error,
        "No cell is merged over several items",
        "A merged cell holds its value for its first row only, and looks as if it held for all of them.",
        $"Unmerge the cells, and fill in each one that the value was meant for.",
        RuleSources.MergedCells
    );

    public static readonly RuleInfo LastTimeAltered = new(
        "INT076",
        Severity.Error,
        "The grey columns show what was seen last time, and nothing else",
        "They are there to compare with and are not read; what was typed there would be lost.",
        $"Put what was typed into the answer or its note, and empty the grey cell.",
        RuleSources.CaptureWorkbook
    );

    public static readonly RuleInfo PlaceNotMeasured = new(
        "INT086",
        Severity.Warning,
        "Every place that was measured last time is measured again",
        "The row of the place holds no reading: whether the rope has worn there since cannot be told.",
        $"Measure there too and type the readings; or leave the row as it is, if the place cannot be reached.",
        "EN 892:2012 5.3.1 (unofficial copy): readings at several levels"
    );

    public static IReadOnlyList<RuleInfo> All { get; } =
    [
        UnknownSheet,
        UnknownColumn,
        NoHeading,
        NoExamination,
        NoItemNamed,
        EarlierWithoutDate,
        PhotoWithoutObservation,
        ListTooLong,
        TwoExaminationsOfOneDay,
        ColumnMissing,
        MergedCells,
        NoSuchItem,
        KnownByHeadings,
        MergedRows,
        LastTimeAltered,
        PlaceNotMeasured,
    ];
}
