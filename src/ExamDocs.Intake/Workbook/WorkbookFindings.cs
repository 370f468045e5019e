using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Workbook;

/// <summary>What only a workbook can have wrong with it; the rest is found as in any other input.</summary>
public static class WorkbookFindings
{
    private const string Layout = "capture workbook, sheet \"How to fill this in\"";

    private const string Serials = "ECMA-376 1st ed. Part 4, Date Representation";

    public static readonly RuleInfo UnknownSheet = new(
        "INT020",
        Severity.Error,
        "Every sheet that holds something is one the workbook knows",
        "What stands on an unknown sheet is not read, and an answer or a danger may stand there.",
        "Name the sheet as the capture workbook does, or take it out.",
        Layout
    );

    public static readonly RuleInfo UnknownColumn = new(
        "INT021",
        Severity.Error,
        "Every column that holds something has a heading the sheet knows",
        "What stands under an unknown heading is not read, and an answer or a danger may stand there.",
        "Spell the heading as the capture workbook does, or empty the column.",
        Layout
    );

    public static readonly RuleInfo NoHeading = new(
        "INT022",
        Severity.Error,
        "Every filled cell stands under a heading",
        "A value without a heading is not read, because nothing says what it is.",
        "Move the value under its heading, or empty the cell.",
        Layout
    );

    public static readonly RuleInfo ErrorCell = new(
        "INT023",
        Severity.Error,
        "No cell holds an error",
        "An error such as #N/A is no answer; the value counts as missing.",
        "Type the value itself.",
        "common practice, no source"
    );

    public static readonly RuleInfo FormulaWithoutValue = new(
        "INT024",
        Severity.Error,
        "Every formula was saved with its result",
        "Formulas are never calculated here; without a saved result the value counts as missing.",
        "Type the value itself, or open the workbook, let it calculate and save it.",
        "common practice, no source"
    );

    public static readonly RuleInfo TimeNotDate = new(
        "INT025",
        Severity.Error,
        "A date is a date, without a time of day",
        "A time or a span of hours names no day; the value counts as missing.",
        "Type year-month-day, for example 2026-05-11.",
        "ISO 8601 calendar dates"
    );

    public static readonly RuleInfo NoSuchDay = new(
        "INT026",
        Severity.Error,
        "Every date cell names a day of the calendar",
        "The 1900 date system counts a 29 February 1900 that never was, and serials outside its range name no day.",
        "Type year-month-day, for example 2026-05-11.",
        Serials
    );

    public static readonly RuleInfo DateNotExpected = new(
        "INT027",
        Severity.Error,
        "No text or number has been turned into a date",
        "Spreadsheet programs turn what looks like a date into one, 3-4 or 1/2 for instance, and what was typed is lost.",
        "Set the cell's format to text, then type the value again.",
        Serials
    );

    public static readonly RuleInfo NumberAsIdentity = new(
        "INT028",
        Severity.Warning,
        "Serials and marks are kept as text",
        "A number cell drops leading noughts: 00123 becomes 123.",
        "Compare with the marking; if noughts are missing, set the cell's format to text and type it again.",
        "common practice, no source"
    );

    public static readonly RuleInfo DigitsLost = new(
        "INT029",
        Severity.Error,
        "No number is longer than a number cell can hold",
        "A number cell keeps 15 digits; further ones are lost in silence.",
        "Set the cell's format to text, then type the digits again.",
        "IEEE 754 double precision: 15 significant decimal digits are kept"
    );

    public static readonly RuleInfo NoExamination = new(
        "INT030",
        Severity.Error,
        "What was found belongs to an examination of its item",
        "The row names an item or a date for which no examination is filled in; what it says is kept, but cannot be weighed properly.",
        "Spell the item's id and the date as on its own sheet, or fill in the examination.",
        Layout
    );

    public static readonly RuleInfo NoItemNamed = new(
        "INT031",
        Severity.Error,
        "Every row says which item it is about",
        "Without the item's id, what the row says hangs in the air.",
        "Type the item's id.",
        Layout
    );

    public static readonly RuleInfo EarlierWithoutDate = new(
        "INT032",
        Severity.Error,
        "An earlier observation or examination has its date",
        "Without its date it would be taken for today's.",
        "Type the date of that examination.",
        Layout
    );

    public static readonly RuleInfo PhotoWithoutObservation = new(
        "INT033",
        Severity.Error,
        "A photo belongs to an observation",
        "The photo's criterion has no observation in that examination.",
        "Spell the criterion as in the column heading, or fill in its observation.",
        Layout
    );

    public static readonly RuleInfo HiddenRead = new(
        "INT034",
        Severity.Warning,
        "Nothing that is read is hidden",
        "Hidden rows and sheets are read like any others, but nobody looking at the workbook sees them.",
        "Show what is hidden and look at it.",
        "common practice, no source"
    );

    public static readonly RuleInfo FormulaResult = new(
        "INT035",
        Severity.Note,
        "A formula's saved result is what counts",
        "Formulas are never calculated here; the result saved with the workbook is read.",
        "Where it matters, type the value itself.",
        "common practice, no source"
    );

    public static readonly RuleInfo UnreadableCell = new(
        "INT036",
        Severity.Error,
        "Every cell can be read",
        "The file holds something in the cell that is no text, number or date; the value counts as missing.",
        "Type the value again.",
        "ECMA-376 1st ed. Part 4, cell types"
    );

    public static readonly RuleInfo ListTooLong = new(
        "INT037",
        Severity.Error,
        "A cell lists no more than 200 things",
        "A list that long is a slip; it counts as missing.",
        "List fewer things, separated by semicolons.",
        "common practice, no source"
    );

    public static readonly RuleInfo TwoExaminationsOfOneDay = new(
        "INT038",
        Severity.Error,
        "An item has one examination on one day",
        "What other sheets say of that day cannot be told apart; it is put to the first of the two.",
        "Keep one of the two, or correct a date.",
        Layout
    );

    public static readonly RuleInfo PercentNotExpected = new(
        "INT039",
        Severity.Error,
        "No cell shows a percentage",
        "A cell that shows 10 % holds 0.1, and it is not clear which of the two was meant; the value counts as missing.",
        "Set the cell's format to text, then type the number alone.",
        "common practice, no source"
    );

    public static readonly RuleInfo MacrosNotRun = new(
        "INT047",
        Severity.Note,
        "Macros in a workbook are never run",
        "A macro could change what the cells show; what was saved in the cells is read, and nothing else.",
        "Look whether the cells hold what you see, then save the workbook without macros.",
        "common practice, no source"
    );

    public static readonly RuleInfo ColumnMissing = new(
        "INT052",
        Severity.Warning,
        "No column that every row needs is missing from a sheet",
        "Without it no row of the sheet has the answer, however many rows there are.",
        "Put the heading in the sheet's first row, or say in headings.json of a rules folder what yours is called.",
        Layout
    );

    public static readonly RuleInfo NumberReadTwoWays = new(
        "INT053",
        Severity.Error,
        "Every number can be read in one way only",
        "1,250 is a thousand and more in one country, and one and a quarter in another.",
        "Type the number without marks between thousands and with a point before the decimals.",
        "ISO 80000-1: no point or comma between groups of digits (from memory)"
    );

    public static readonly RuleInfo DatesInOrder = new(
        "INT054",
        Severity.Note,
        "Dates typed in another order are read in the order the workbook declares",
        "03/04/2026 is two different days; the visit sheet says which of them.",
        "Look at the first of them; where the order is wrong, correct \"date order\" on the Visit sheet.",
        Layout
    );

    public static readonly RuleInfo MergedCells = new(
        "INT055",
        Severity.Warning,
        "No cells are merged on a sheet that is read",
        "A merged cell holds its value once: it counts for the first row and column only, whatever it spans.",
        "Take the merge apart and fill in every cell that the value was meant for.",
        "ECMA-376 1st ed. Part 4, merged cells"
    );

    public static readonly RuleInfo OtherWorkbooks = new(
        "INT056",
        Severity.Warning,
        "No value is taken from another workbook",
        "Other workbooks are never opened: what was saved with this one may be out of date.",
        "Type the values themselves.",
        "common practice, no source"
    );

    public static readonly RuleInfo NoSuchItem = new(
        "INT060",
        Severity.Error,
        "What tells an item from others names an item of the workbook",
        "The row names an item that no sheet has, so that what it says counts for none.",
        "Spell the item's id as on its own sheet.",
        Layout
    );

    public static IReadOnlyList<RuleInfo> All { get; } =
    [
        UnknownSheet,
        UnknownColumn,
        NoHeading,
        ErrorCell,
        FormulaWithoutValue,
        TimeNotDate,
        NoSuchDay,
        DateNotExpected,
        NumberAsIdentity,
        DigitsLost,
        NoExamination,
        NoItemNamed,
        EarlierWithoutDate,
        PhotoWithoutObservation,
        HiddenRead,
        FormulaResult,
        UnreadableCell,
        ListTooLong,
        TwoExaminationsOfOneDay,
        PercentNotExpected,
        ColumnMissing,
        NumberReadTwoWays,
        DatesInOrder,
        MergedCells,
        OtherWorkbooks,
        MacrosNotRun,
        NoSuchItem,
    ];
}
