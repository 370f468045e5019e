using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Particulars;

public sealed class ItemIsDescribed : Rule<ItemCase>
{
    public ItemIsDescribed()
        : base(
            new RuleInfo(
                "PAR017",
                Severity.Error,
                "Every item has an id, a category and a description",
                "Particulars that identify the item come before anything said about it.",
                $"Type an id that no other item has, the category and a description.",
                "SI 1998/2307 Schedule 1 para 3"
            )
        )
    {
        Require(i => i.Item.Id, "/id", $"the item has no id");
        Require(i => i.Item.Category, "/category", $"the item has no category");
        Require(i => i.Item.Description, "/description", $"the item has no description");
    }
}
