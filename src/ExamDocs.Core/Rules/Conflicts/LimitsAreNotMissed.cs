using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class LimitsAreNotMissed : Rule<ItemCase>
{
    public LimitsAreNotMissed()
        : base(
            new RuleInfo(
                "CON031",
                Severity.Error,
                "No item misses its maker's limits by the spelling of maker or model",
                "An item whose limits stand under a name nearly its own, or whose own name is missing, would go without "
                    + "them: a life that has ended or a part that is forbidden would pass.",
                "Spell maker and model at the item as in the limits; where it is another model, enter limits of its own for "
                    + "it, with noLimit where its maker says so.",
                "common practice, no source"
            )
        ) =>
        Each(i =>
            i
                .Context.MissedLimits.Of(i)
                .Select(l => $"{l.Row.Maker} {l.Row.Model}")
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal)
                .Take(3)
                .ToList()
                is { Count: > 0 } names
                ?
                [
                    new Fault(
                        i.Item is { Maker: null, Model: not null } ? "/maker" : "/model",
                        $"it has no limits, and {Why(i)} those for {string.Join(" or ", names)}"
                    ),
                ]
                : []
        );

    private static string Why(ItemCase item) =>
        item.Item switch
        {
            { Maker: null, Model: null } => "without maker and model it may be meant by",
            { Model: null } => "without its model it may be meant by",
            { Maker: null } => "without its maker it may be meant by",
            _ => $"its own name {item.Item.Maker} {item.Item.Model} is nearly that of",
        };
}
