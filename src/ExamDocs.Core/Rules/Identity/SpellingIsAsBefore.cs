using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Identity;

public sealed class SpellingIsAsBefore : Rule<ItemCase>
{
    public SpellingIsAsBefore()
        : base(
            new RuleInfo(
                "IDN012",
                Severity.Warning,
                "An item is written as it was before",
                "It counts as the same item, with all that is known of it. A search by the old spelling still misses the new one.",
                $"Type it as the marking on the item reads.",
                "common practice, no source"
            )
        ) =>
        Each(i =>
            i.Context.History.Respellings.Where(r => i.ItemId is not null && string.Equals(r.ItemId, i.ItemId, StringComparison.Ordinal))
                .Select(r => new Fault($"/{r.Member}", $"the latest earlier record has '{r.Earlier}'; it counts as the same item"))
        );
}
