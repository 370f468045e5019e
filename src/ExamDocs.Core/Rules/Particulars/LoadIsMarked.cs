using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class LoadIsMarked : Rule<ItemCase>
{
    public LoadIsMarked() : base(new RuleInfo("PAR006", Severity.Warning, "The load is marked on the item",
        "A load that stands only in a document is easily forgotten in use.",
        "Mark the load on the item, or keep it with the document named as its basis.", "SI 1998/2307 Schedule 1 para 5")) =>
        Forbid(i => i.Item.SafeWorkingLoad is { NotMarked: true, Basis: not null }, "/safeWorkingLoad",
            i => $"no safe working load is marked on the item (basis: {i.Item.SafeWorkingLoad!.Basis})");
}
