using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Renewals;

public sealed class PartIsWhereItWas : Rule<ItemCase>
{
    public PartIsWhereItWas()
        : base(
            new RuleInfo(
                "REN012",
                Severity.Warning,
                "A part is on the item that it was on before, or a renewal says how it moved",
                "A part that changes from harness to harness takes its history along, and leaves a question on the harness it came from.",
                $"Record the renewal that moved it, or correct fittedTo.",
                "common practice, no source"
            )
        ) =>
        Each(i =>
            i.Item.FittedTo is not { } now
                ? []
                : i
                    .Context.History.Fittings.Where(f =>
                        f.Word is FittingWord.WasOn
                        && i.ItemId is not null
                        && string.Equals(f.Part, i.ItemId, StringComparison.Ordinal)
                        && !Folded.Same(f.Whole, now)
                        && !Moved(i, f)
                    )
                    .Select(f => new Fault(
                        "/fittedTo",
                        $"the latest earlier record has it on {f.Whole}, and no renewal records that it was taken off"
                    ))
        );

    private static bool Moved(ItemCase item, PastFitting was) =>
        item
            .Context.Record.Renewals.Concat(item.Context.History.Renewals)
            .Any(r => Folded.Same(r.RemovedPart, item.ItemId) && Folded.Same(r.Item, was.Whole) && !(r.DoneOn < was.On));
}
