using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Workbook;

/// <summary>What can be wrong with the value in a cell of a workbook, whatever column it is for.</summary>
public static class CellFindings
{
    public static readonly RuleInfo ErrorCell = new(
        "INT023",
        Severity.Error,
        "No cell holds an error",
        "An error such as #N/A is no answer; the value counts as missing.",
        $"Type the value itself.",
        RuleSources.Practice
    )
    {
        LosesValue = true,
    };

    public static readonly RuleInfo FormulaWithoutValue = new(
        "INT024",
        Severity.Error,
        "Every formula was saved with its result",
        "Formulas are never calculated here; without a saved result the value counts as missing.",
        $"Type the value itself, or open the workbook, let it calculate and save it.",
        RuleSources.Practice
    )
    {
        LosesValue = true,
    };

    public static readonly RuleInfo TimeNotDate = new(
        "INT025",
        Severity.Error,
        "A date is a date, without a time of day",
        "A time or a span of hours names no day; the value counts as missing.",
        $"Type year-month-day, for example 2026-05-11.",
        "ISO 8601 calendar dates"
    )
    {
        LosesValue = true,
    };

    public static readonly RuleInfo NoSuchDay = new(
        "INT026",
        Severity.Error,
        "Every date cell names a day of the calendar",
        "The 1900 date system counts a 29 February 1900 that never was, and serials outside its range name no day.",
        $"Type year-month-day, for example 2026-05-11.",
        RuleSources.DateSerials
    )
    {
        LosesValue = true,
    };

    public static readonly RuleInfo DateNotExpected = new(
        "INT027",
        Severity.Error,
        "No text or number has been turned into a date",
        "Spreadsheet programs turn what looks like a date into one, 3-4 or 1/2 for instance, and what was typed is lost.",
        $"Set the cell's format to text, then type the value again.",
        RuleSources.DateSerials
    )
    {
        LosesValue = true,
    };

    public static readonly RuleInfo NumberAsIdentity = new(
        "INT028",
        Severity.Warning,
        "Serials and marks are kept as text",
        "A number cell drops leading zeros: 00123 becomes 123.",
        $"Compare with the marking; if zeros are missing, set the cell's format to text and type it again.",
        RuleSources.Practice
    );

    public static readonly RuleInfo DigitsLost = new(
        "INT029",
        Severity.Error,
        "No number is longer than a number cell can hold",
        "A number cell keeps 15 digits; further ones are lost in silence.",
        $"Set the cell's format to text, then type the digits again.",
        "IEEE 754 double precision: 15 significant decimal digits are kept"
    );

    public static readonly RuleInfo FormulaResult = new(
        "INT035",
        Severity.Note,
        "A formula's saved result is what counts",
        "Formulas are never calculated here; the result saved with the workbook is read.",
        $"Where it matters, type the value itself.",
        RuleSources.Practice
    );

    public static readonly RuleInfo UnreadableCell = new(
        "INT036",
        Severity.Error,
        "Every cell can be read",
        "The file holds something in the cell that is not a text, a number or a date; the value counts as missing.",
        $"Type the value again.",
        "ECMA-376 1st ed. Part 4, cell types"
    )
    {
        LosesValue = true,
    };

    public static readonly RuleInfo PercentNotExpected = new(
        "INT039",
        Severity.Error,
        "No cell shows a percentage",
        "A cell that shows 10 % holds 0.1, and it is not clear which of the two was meant; the value counts as missing.",
        $"Set the cell's format to text, then type the number alone.",
        RuleSources.Practice
    )
    {
        LosesValue = true,
    };

    public static readonly RuleInfo NumberReadTwoWays = new(
        "INT053",
        Severity.Error,
        "Every number can be read in one way only",
        "1,250 is a thousand and more in one country, and one and a quarter in another.",
        $"Type the number without marks between thousands and with a point before the decimals.",
        "ISO 80000-1: no point or comma between groups of digits (from memory)"
    )
    {
        LosesValue = true,
    };

    public static readonly RuleInfo DatesInOrder = new(
        "INT054",
        Severity.Note,
        "Dates typed in another order are read in the order the workbook declares",
        "03/04/2026 is two different days; the visit sheet says which of them.",
        $"Look at the first of them; where the order is wrong, correct \"date order\" on the Visit sheet.",
        RuleSources.CaptureWorkbook
    );

    public static IReadOnlyList<RuleInfo> All { get; } =
    [
        ErrorCell,
        FormulaWithoutValue,
        TimeNotDate,
        NoSuchDay,
        DateNotExpected,
        NumberAsIdentity,
        DigitsLost,
        FormulaResult,
        UnreadableCell,
        PercentNotExpected,
        NumberReadTwoWays,
        DatesInOrder,
    ];
}
