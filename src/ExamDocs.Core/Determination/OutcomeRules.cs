using ExamDocs.Core.Determination.FitUntil;
using ExamDocs.Core.Determination.Undetermined;
using ExamDocs.Core.Determination.Withdraw;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Determination;

/// <summary>The outcome rules in the order of their codes: a new one is one file and one line here.</summary>
public static class OutcomeRules
{
    internal static IReadOnlyList<IExaminationRule> OfExamination { get; } =
    [
        new DecisiveCriterionIsDefective(),
        new CriterionIsInDoubt(),
        new JudgedDefectHasNoLaterDate(),
        new DefectIsDangerNow(),
        new ServiceHasEnded(),
        new ExaminerConcludesWithdraw(),
        new DiameterIsOutsideLimits(),
    ];

    internal static IReadOnlyList<IItemRule> Withdrawing { get; } =
    [new PartIsNotPermitted(), new FittedPartIsWithdrawn(), new EarlierWithdrawalIsOpen(), new ItemIsDestroyed()];

    internal static IReadOnlyList<IItemRule> Undetermining { get; } =
    [
        new ItemWasNotExamined(),
        new RequiredCriterionIsUnanswered(),
        new AnswerIsNotAllowed(),
        new RecordHasErrors(),
        new LimitCannotBeCounted(),
        new AgeingKitHasNoTimeLimit(),
        new FittedPartIsUndetermined(),
    ];

    internal static IReadOnlyList<IUntilRule> Limiting { get; } =
    [new DefectBecomesDanger(), new ServiceEndsBeforeNextExamination(), new FittedPartMayBeUsedUntil()];

    public static IReadOnlyList<OutcomeRuleInfo> All { get; } =
    [.. OfExamination.Cast<IOutcomeRule>().Concat(Withdrawing).Concat(Undetermining).Concat(Limiting).Select(r => r.Info)];

    private static readonly Dictionary<string, string> Titles = All.ToDictionary(r => r.Code, r => r.Title, StringComparer.Ordinal);

    private static readonly Dictionary<string, int> Places = All.Select((rule, at) => (rule.Code, at))
        .ToDictionary(r => r.Code, r => r.at, StringComparer.Ordinal);

    /// <summary>Titles of rules, to be used within a sentence; a code without a rule is given as it is.</summary>
    /// <param name="codes">For example W1.</param>
    public static Message InWords(IEnumerable<string> codes) => Message.Join("; ", codes.Select(InWords));

    /// <inheritdoc cref="InWords(IEnumerable{string})"/>
    private static Message InWords(string code) =>
        Titles.TryGetValue(code, out var title) ? Message.Again(title, [])!.Reworded((_, text) => Within(text)) : Message.AsIs(code);

    // A title begins with an article or the like, in each language.
    private static string Within(string title) => char.ToLowerInvariant(title[0]) + title[1..];

    /// <summary>The place of a rule in the order in which reasons are printed.</summary>
    internal static int PlaceOf(string code) => Places[code];
}
