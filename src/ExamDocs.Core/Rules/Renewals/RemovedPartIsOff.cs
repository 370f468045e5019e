using ExamDocs.Core.Cases;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Renewals;

public sealed class RemovedPartIsOff : Rule<RowCase<Renewal>>
{
    public RemovedPartIsOff() : base(new RuleInfo("REN005", Severity.Error, "A part taken off is not still fitted when it is examined later",
        "A part that was taken off months ago and is found fitted today was put back, or was never off: its defects are the item's.",
        "Clear fittedTo of the part where it is off; record the renewal that put it back where it is on.", "common practice, no source")) =>
        Forbid(r => r.Row is { Item: { } whole, RemovedPart: { } part }
            && r.Context.ItemsWithId(part).Any(p => string.Equals(p.Item.FittedTo, whole, StringComparison.Ordinal) && (p.ExaminedOn > r.Row.DoneOn || p.Earlier.Any(e => e.On > r.Row.DoneOn)))
            && Assembly.IsRemoved(r.Context.Record, part, whole), "/removedPart",
            r => $"{r.Row.RemovedPart} was taken off {r.Row.Item} on {Say.Day(r.Row.DoneOn!.Value)}, and its own row says that it is still fitted there");
}
