using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Identity;

public sealed class ItemIdIsUnique : Rule<ItemCase>
{
    public ItemIdIsUnique() : base(new RuleInfo("IDN001", Severity.Error, "Every item has an id of its own",
        "What is said of one of two items with the same id is said of both.",
        "Give one of the two another id.", "SI 1998/2307 Schedule 1 para 3")) =>
        Forbid(i => i.Item.Id is not null && i.Context.ItemsWithId(i.Item.Id).Skip(1).Any(), "/id", i => $"there is more than one item '{i.Item.Id}'");
}
