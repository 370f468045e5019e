using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Identity;

public sealed class ItemCanBeTold : Rule<ItemCase>
{
    public ItemCanBeTold()
        : base(
            new RuleInfo(
                "IDN003",
                Severity.Error,
                "Every item bears a serial number or the owner's mark",
                "If an item cannot be told from its neighbour, the report is about neither.",
                $"Type the serial number; where there is none, mark the item and type that mark.",
                "SI 1998/2307 Schedule 1 para 3"
            )
        ) =>
        Forbid(
            i => i.Item is { Serial: null, OwnersMark: null },
            "/serial",
            _ => $"neither a serial number nor an owner's mark is recorded"
        );
}
