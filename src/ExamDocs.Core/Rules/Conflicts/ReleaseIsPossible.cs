using ExamDocs.Core.Cases;
using ExamDocs.Core.Determination.Withdraw;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class ReleaseIsPossible : Rule<RowCase<Release>>
{
    public ReleaseIsPossible() : base(new RuleInfo("CON013", Severity.Error, "A release is of a withdrawal that can be released",
        "Saw contact, severe loading and an expired life leave nothing that a later look could set right.",
        "Take the release out; the item stays withdrawn.", "common practice, no source")) =>
        Forbid(r => r.Context.ItemsWithId(r.Row.Item).SelectMany(EarlierWithdrawals.Of).Any(w => w.NeverReleasable && w.IsReleasedBy(r)),
            "", _ => "the withdrawal rested on saw contact, severe loading or an expired life, which is never released");
}
