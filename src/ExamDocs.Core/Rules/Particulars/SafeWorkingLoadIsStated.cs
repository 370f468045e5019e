using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class SafeWorkingLoadIsStated : RegimeRule
{
    public SafeWorkingLoadIsStated()
        : base(
            new RuleInfo(
                "PAR005",
                Severity.Error,
                "The safe working load is stated with its unit",
                "Whoever uses the item must know what it may carry; the report states it, or that none is marked and why.",
                $"Type the load marked on the item, with its unit; where none is marked, say so and give the basis.",
                "SI 1998/2307 Schedule 1 para 5"
            )
        ) => Each(e => e.Item is null ? [] : Faults(e.Item, e.Item.Category?.Id is "helmet"));

    /// <summary>The place of the item, because the value is typed there.</summary>
    protected override string PathOf(ExaminationCase subject) => subject.Item?.Path ?? subject.Path;

    /// <param name="item">The item examined.</param>
    /// <param name="bearsNone">A helmet carries no load: the law on lifting asks for one of what lifts (CON020).</param>
    private static IEnumerable<Fault> Faults(ItemCase item, bool bearsNone)
    {
        var load = item.Item.SafeWorkingLoad;
        if (load is { NotMarked: true, Basis: null })
            yield return new("/safeWorkingLoad/basis", $"the safe working load is not marked, and why not is not recorded");
        else if (load is null && bearsNone)
            yield break;
        else if (load is null or { NotMarked: false, Value: null or <= 0 })
            yield return new("/safeWorkingLoad/value", $"the safe working load is missing");
        else if (load is { NotMarked: false, Unit: null })
            yield return new("/safeWorkingLoad/unit", $"the safe working load has no unit");
        else if (load is { NotMarked: true, Value: not null })
            yield return new("/safeWorkingLoad/notMarked", $"the safe working load is recorded as not marked, and a value is given too");
    }
}
