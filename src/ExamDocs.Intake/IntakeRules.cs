using ExamDocs.Core.Findings;

namespace ExamDocs.Intake;

/// <summary>What reading can find wrong with any input, whatever its file type.</summary>
public static class IntakeRules
{
    private const string Format = "record format examdocs/1";

    public static readonly RuleInfo UnknownMember = new(
        "INT001",
        Severity.Error,
        "Every member is one the format knows",
        "A misspelt member would otherwise be left out in silence, and with it the answer it holds.",
        $"Spell the member as the record format does, or take it out.",
        Format
    );

    public static readonly RuleInfo DuplicateMember = new(
        "INT002",
        Severity.Error,
        "No member is written twice",
        "Two values for one member contradict each other; the worse one counts until one is taken out.",
        $"Keep one of the two.",
        Format
    )
    {
        LosesValue = true,
    };

    public static readonly RuleInfo WrongType = new(
        "INT003",
        Severity.Error,
        "Every value is of the kind its member holds",
        "A text where a list belongs, or a number where a yes or no belongs, can be read in more than one way.",
        $"Type the value as the record format shows it.",
        Format
    )
    {
        LosesValue = true,
    };

    public static readonly RuleInfo UnreadableDate = new(
        "INT004",
        Severity.Error,
        "Every date can be read in one way only",
        "03/04/2026 is two different days, and 31 June is not in the calendar.",
        $"Type year-month-day, for example 2026-05-11; where the format allows it, the month or the year alone. A workbook may "
            + $"say 11 May 2026 as well. Where its dates are typed in another order, say so on its Visit sheet, under \"date order\".",
        "ISO 8601 calendar dates"
    )
    {
        LosesValue = true,
    };

    public static readonly RuleInfo UnknownWord = new(
        "INT005",
        Severity.Error,
        "Every word is one of those allowed",
        "A misspelt answer is no answer: it never counts as the good one.",
        $"Type one of the allowed words.",
        Format
    )
    {
        LosesValue = true,
    };

    public static readonly RuleInfo NumberOutOfRange = new(
        "INT006",
        Severity.Error,
        "Every number is readable and possible",
        "A limit of 600 years or a diameter below zero is a slip of the finger.",
        $"Type the number as the source has it, with a point before the decimals.",
        Format
    )
    {
        LosesValue = true,
    };

    public static readonly RuleInfo UnprintableText = new(
        "INT007",
        Severity.Error,
        "Every text can be printed as typed",
        "Control characters and marks that turn the reading direction make the printed text differ from the typed one.",
        $"Type the text again without hidden characters.",
        "Unicode Standard Annex 9 (bidirectional controls)"
    );

    public static readonly RuleInfo UnknownFormat = new(
        "INT008",
        Severity.Error,
        "The record says which format it is in",
        "Another format may use the same words with another meaning.",
        $"Write \"format\": \"examdocs/1\".",
        Format
    );

    public static readonly RuleInfo TextTooLong = new(
        "INT009",
        Severity.Error,
        "Every text is short enough to print whole",
        "A page that cuts a note off says something else than what was recorded.",
        $"Shorten the text to 2,000 characters, identities to 80.",
        RuleSources.Practice
    );

    public static IReadOnlyList<RuleInfo> All { get; } =
    [UnknownMember, DuplicateMember, WrongType, UnreadableDate, UnknownWord, NumberOutOfRange, UnprintableText, UnknownFormat, TextTooLong];
}
