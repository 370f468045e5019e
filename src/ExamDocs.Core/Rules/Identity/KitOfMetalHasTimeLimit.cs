using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Identity;

public sealed class KitOfMetalHasTimeLimit : Rule<ItemCase>
{
    public KitOfMetalHasTimeLimit()
        : base(
            new RuleInfo(
                "IDN008",
                Severity.Warning,
                "The maker's time limit is recorded, for kit of metal too",
                "Makers of metal kit mostly say that there is no limit; that too should be read, not supposed.",
                $"Record the limit, or noLimit, with the maker's document.",
                "common practice, no source"
            )
        ) =>
        Forbid(
            i => i.Category is { Ages: false } && i.LacksTimeLimit,
            "/model",
            _ => $"the maker's time limit is not recorded, nor that the maker sets none"
        );
}
