using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Identity;

namespace ExamDocs.Core.Rules.Identity;

public sealed class ItemIdIsUnique : Rule<VisitCase>
{
    public ItemIdIsUnique()
        : base(
            new RuleInfo(
                "IDN001",
                Severity.Error,
                "Every item has an id of its own",
                "What is said of one of two items with the same id is said of both. Capitals, blanks, separators and leading "
                    + "zeros tell no two items apart.",
                $"Give one of the two another id.",
                "SI 1998/2307 Schedule 1 para 3"
            )
        ) =>
        Each(v =>
            v.Context.Items.Where(i => i.Item.Id is not null)
                .SelectMany(i => Keys(i.Item.Id!).Select(key => (Key: key, Item: i)))
                .GroupBy(k => k.Key, StringComparer.Ordinal)
                .Where(g => g.Skip(1).Any())
                .SelectMany(g =>
                    g.Select(k => new Fault($"{k.Item.Path}/id", Words(k.Item, [.. g.Select(o => o.Item)]), Item: k.Item.Item.Id))
                )
                .DistinctBy(f => f.Member, StringComparer.Ordinal)
        );

    private static Message Words(ItemCase item, IReadOnlyList<ItemCase> all) =>
        all.FirstOrDefault(o => !string.Equals(o.ItemId, item.ItemId, StringComparison.Ordinal)) is { } other
            ? (Message)$"'{item.ItemId}' and '{other.ItemId}' count as the same id: they differ only in spelling"
            : $"there is more than one item '{item.ItemId}'";

    /// <summary>An id without a letter or digit has no folded key: it is compared as typed.</summary>
    private static IReadOnlyList<string> Keys(string id) => Folded.Keys(id) is { Count: > 0 } keys ? keys : ["=" + id];

    /// <summary>Empty, because the faults have whole pointers: the rule compares items with each other.</summary>
    protected override string PathOf(VisitCase subject) => "";
}
