using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Rules.Dates;

public sealed class ReleaseIsInTime : Rule<RowCase<Release>>
{
    public ReleaseIsInTime()
        : base(
            new RuleInfo(
                "DAT015",
                Severity.Error,
                "A release is not dated in the future, nor after the examination that depends on it",
                "Until the day it is given, the item stays withdrawn.",
                $"Correct the date of the release.",
                "common practice, no source"
            )
        ) =>
        Each(r =>
            r.Row.On is not { } on ? []
            : on > r.Context.AsOf ? [new Fault("/on", $"the release is dated {on}, in the future")]
            : r
                .Context.ItemsWithId(r.Row.Item)
                .Where(i => on > i.ExaminedOn)
                .Take(1)
                .Select(i => new Fault("/on", $"the release is dated {on}, after the examination of {i.ExaminedOn!.Value}"))
        );
}
