using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Renewals;

public sealed class RemovedPartIsAccountedFor : Rule<RowCase<Renewal>>
{
    public RemovedPartIsAccountedFor()
        : base(
            new RuleInfo(
                "REN006",
                Severity.Warning,
                "What became of the part taken off is recorded",
                "A part that lies about unmarked finds its way back onto a harness.",
                $"Examine the part and record it, or record its disposal; its label goes on it at once.",
                "common practice, no source"
            )
        ) =>
        Forbid(
            r => r.Context.ItemsWithId(r.Row.RemovedPart).Any(p => IsOff(p, r.Row) && !IsAccountedFor(p, r)),
            "/removedPart",
            r => $"{r.Row.RemovedPart} was taken off, and what became of it is not recorded"
        );

    private static bool IsOff(ItemCase part, Renewal renewal) =>
        renewal.Item is { } whole && Assembly.IsRemoved(part.Context, renewal.RemovedPart!, whole);

    private static bool IsAccountedFor(ItemCase part, RowCase<Renewal> renewal) =>
        part.Deciding.Count > 0 || part.Earlier.Any(e => e.On >= renewal.Row.DoneOn) || part.Disposals.Any();
}
