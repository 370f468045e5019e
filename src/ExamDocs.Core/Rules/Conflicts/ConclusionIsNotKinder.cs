using ExamDocs.Core.Cases;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Conflicts;

/// <summary>An examination whose item the rules withdraw.</summary>
public sealed class WithdrawnCase(ExaminationCase examination, IReadOnlyList<Reason> reasons) : ICase
{
    /// <summary>Why its item is withdrawn.</summary>
    public IReadOnlyList<Reason> Reasons { get; } = reasons;

    public ExaminationCase Examination { get; } = examination;

    public string Path => Examination.Path;

    public string? ItemId => Examination.ItemId;

    public string? RegimeId => Examination.RegimeId;
}

public sealed class ConclusionIsNotKinder : Rule<WithdrawnCase>
{
    public ConclusionIsNotKinder()
        : base(
            new RuleInfo(
                "CON001",
                Severity.Error,
                "The examiner's conclusion is not kinder than the rules",
                "An item with a reason to withdraw is withdrawn, whatever the conclusion says; the record must not say two things.",
                $"Change the conclusion to withdraw, or correct the answer that is wrong.",
                "SI 1998/2307 reg 10(1) and (3)"
            )
        ) =>
        Each(w =>
            w.Examination.Examination.Conclusion is Conclusion.Fit
                ? [new Fault("/conclusion", $"the conclusion is fit, but there is a reason to withdraw the item", Cause: CauseOf(w))]
                : []
        );

    /// <summary>
    /// Where all that withdraws the item is one answer, one defect, one release or one part that was not recorded as it should be,
    /// or a day that nobody knows.
    /// </summary>
    private static PossibleCause? CauseOf(WithdrawnCase withdrawn) =>
        withdrawn.Reasons is [{ Code: "W9", Other: { } part }] ? OfPart(part, withdrawn.Examination)
        : IsFor(withdrawn, "W10") && ReleaseByNobody(withdrawn.Examination) is { } release ? new($"{release.Path}/by", "CON003")
        : OfAnswer(withdrawn) ?? OfDefect(withdrawn) ?? OfDay(withdrawn);

    private static PossibleCause? OfPart(string part, ExaminationCase whole) =>
        whole.Context.ItemsWithId(part).SelectMany(p => p.Deciding).FirstOrDefault() is { } examination
            ? new($"{examination.Path}/conclusion", "CON001")
            : null;

    private static PossibleCause? OfAnswer(WithdrawnCase withdrawn) =>
        Adverse(withdrawn.Examination) is not [var only] ? null
        : withdrawn.Examination.Defects.Count == 0 && IsFor(withdrawn, "W1", "W2", "W3") ? new($"{only.Path}/state")
        : only.Criterion is { } criterion && IsFor(withdrawn, "W3") && EnteredAstray.Of(withdrawn.Examination, criterion) is { } path
            ? new($"{path}/criterion", "CON019")
        : null;

    private static PossibleCause? OfDefect(WithdrawnCase withdrawn) =>
        withdrawn.Examination.Defects is [({ ImminentRisk: not true, Danger: Danger.Later, BecomesDangerOn: null }, var path)]
        && Adverse(withdrawn.Examination).Count < 2
        && IsFor(withdrawn, "W3", "W4")
            ? new($"{path}/becomesDangerOn", "PAR011")
            : null;

    /// <summary>Until the day is known, a later danger counts as one now, and an earlier examination as one of today.</summary>
    private static PossibleCause? OfDay(WithdrawnCase withdrawn) =>
        IsFor(withdrawn, "W3", "W4", "W10")
        || (
            Adverse(withdrawn.Examination).Count == 0
            && withdrawn.Examination.Item is { Deciding.Count: > 1 }
            && IsFor(withdrawn, "W6", "W10")
        )
            ? UnknownDay.CauseOf(withdrawn.Examination)
            : null;

    private static List<(string Path, string? Criterion)> Adverse(ExaminationCase examination) =>
        [
            .. examination
                .Observations.Where(o => o.Observation.State is ObservedState.Defect or ObservedState.Doubt)
                .Select(o => (o.Path, o.Observation.Criterion)),
        ];

    private static RowCase<Release>? ReleaseByNobody(ExaminationCase examination) =>
        examination.Context.Releases.FirstOrDefault(r =>
            string.Equals(r.Row.Item, examination.ItemId, StringComparison.Ordinal) && !examination.Context.KnowsPerson(r.Row.By)
        );

    private static bool IsFor(WithdrawnCase withdrawn, params string[] codes) =>
        withdrawn.Reasons.All(r => codes.Contains(r.Code, StringComparer.Ordinal));
}
