using ExamDocs.Core.Determination.FitUntil;
using ExamDocs.Core.Determination.Undetermined;
using ExamDocs.Core.Determination.Withdraw;

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

    private static readonly Dictionary<string, int> Places = All.Select((rule, at) => (rule.Code, at))
        .ToDictionary(r => r.Code, r => r.at, StringComparer.Ordinal);

    /// <summary>The place of a rule in the order in which reasons are printed.</summary>
    internal static int PlaceOf(string code) => Places[code];
}
