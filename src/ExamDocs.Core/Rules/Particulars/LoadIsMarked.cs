using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class LoadIsMarked : RegimeRule
{
    public LoadIsMarked()
        : base(
            new RuleInfo(
                "PAR006",
                Severity.Warning,
                "The load is marked on the item",
                "A load that is only in a document is easily forgotten in use.",
                $"Mark the load on the item, or keep it with the document named as its basis.",
                "SI 1998/2307 Schedule 1 para 5"
            )
        ) =>
        Forbid(
            e => e.Item is { Item.SafeWorkingLoad: { NotMarked: true, Basis: not null } },
            "/safeWorkingLoad",
            e => $"no safe working load is marked on the item (basis: {e.Item!.Item.SafeWorkingLoad!.Basis})"
        );

    /// <summary>The place of the item, because the value is typed there.</summary>
    protected override string PathOf(Cases.ExaminationCase subject) => subject.Item?.Path ?? subject.Path;
}
