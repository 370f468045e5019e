using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Identity;

public sealed class SerialIsKnown : Rule<ItemCase>
{
    public SerialIsKnown()
        : base(
            new RuleInfo(
                "IDN004",
                Severity.Warning,
                "The maker's serial number is known",
                "An item traced by the owner's mark alone cannot be found in a maker's safety notice.",
                $"Type the serial number if it can still be read.",
                "common practice, no source"
            )
        ) =>
        Forbid(
            i => i.Item is { Serial: null, OwnersMark: not null },
            "/serial",
            i => $"the item has no serial number; only the owner's mark identifies it: {i.Item.OwnersMark}"
        );
}
