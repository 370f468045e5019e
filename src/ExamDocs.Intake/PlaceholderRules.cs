using ExamDocs.Core.Findings;

namespace ExamDocs.Intake;

/// <summary>What is said of a text that stands for a missing value.</summary>
public static class PlaceholderRules
{
    public static readonly RuleInfo StandsForNothing = new(
        "INT084",
        Severity.Warning,
        "A cell without a value is empty",
        "n/a, none, unknown or a dash is no serial, name, date or number. It counts as missing, and is not printed as if it were one.",
        $"Leave it empty, or type the value.",
        RuleSources.Practice
    );

    public static readonly RuleInfo ValueIsAsked = new(
        "INT085",
        Severity.Error,
        "A value that there is, or may be, is typed",
        "\"As above\" leaves the value to be guessed, an illegible limit may have passed, and X or 0 may be a mark or a stand-in "
            + "for none. It counts as missing until somebody says which.",
        $"Type the value itself, or leave it empty where there is none. If a marking is such a word, type it with what is beside "
            + $"it, for example No. X.",
        RuleSources.Practice
    );

    public static IReadOnlyList<RuleInfo> All { get; } = [StandsForNothing, ValueIsAsked];
}
