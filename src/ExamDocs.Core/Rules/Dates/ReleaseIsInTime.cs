using ExamDocs.Core.Cases;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Dates;

public sealed class ReleaseIsInTime : Rule<RowCase<Release>>
{
    public ReleaseIsInTime() : base(new RuleInfo("DAT015", Severity.Error, "A release is not dated in the future",
        "Until the day it is given, the item stays withdrawn.",
        "Correct the date of the release.", "common practice, no source")) =>
        Forbid(r => r.Row.On > r.Context.AsOf, "/on", r => $"the release is dated {Say.Day(r.Row.On!.Value)}, in the future");
}
