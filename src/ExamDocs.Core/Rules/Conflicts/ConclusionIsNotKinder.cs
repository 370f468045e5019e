using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Conflicts;

/// <summary>An examination whose item the rules withdraw.</summary>
public sealed class WithdrawnCase(ExaminationCase examination) : ICase
{
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
                "Change the conclusion to withdraw, or correct the answer that is wrong.",
                "SI 1998/2307 reg 10(1) and (3)"
            )
        ) =>
        Forbid(
            w => w.Examination.Examination.Conclusion is Conclusion.Fit,
            "/conclusion",
            _ => "the conclusion is fit, and there is a reason to withdraw the item"
        );
}
