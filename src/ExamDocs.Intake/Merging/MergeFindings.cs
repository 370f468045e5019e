using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Merging;

/// <summary>What only several inputs of one visit can have wrong with each other.</summary>
public static class MergeFindings
{
    public static readonly RuleInfo TakenOnce = new(
        "INT050",
        Severity.Note,
        "A row that is in two inputs of one visit counts once",
        "Two workbooks of one visit often begin from the same one; a row copied with it is still one item, one person or one limit.",
        $"Leave it, or take the row out of one of the two.",
        RuleSources.Practice
    );

    public static readonly RuleInfo Disagreement = new(
        "INT051",
        Severity.Error,
        "Inputs of one visit do not contradict each other",
        "Which of the two is right cannot be told from here, and the wrong one may hide a danger.",
        $"Put the wrong one right, or take its row out. If they are two visits, give each its own reference.",
        RuleSources.Practice
    );

    public static IReadOnlyList<RuleInfo> All { get; } = [TakenOnce, Disagreement];
}
