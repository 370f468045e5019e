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
                "An item whose limits are entered under a name nearly its own, or whose own name is missing, would go without "
                    + "them: a life that has ended or a part that is forbidden would pass.",
                $"Spell maker and model at the item as in the limits; where it is another model, enter limits of its own for "
                    + $"it, with noLimit where its maker says so.",
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
                        $"it has no limits; those for {Or(names)} may be meant for it, but {Why(i)}"
                    ),
                ]
                : []
        );

    private static Message Or(IReadOnlyList<string> names) =>
        names is [var only] ? Message.AsIs(only) : $"{string.Join(", ", names.SkipLast(1))} or {names[^1]}";

    private static Message Why(ItemCase item) =>
        item.Item switch
        {
            { Maker: null, Model: null } => $"its maker and model are missing",
            { Model: null } => $"its model is missing",
            { Maker: null } => $"its maker is missing",
            _ => $"its own name is {item.Item.Maker} {item.Item.Model}",
        };
}
