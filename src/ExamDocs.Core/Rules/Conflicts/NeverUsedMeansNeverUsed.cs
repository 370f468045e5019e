using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class NeverUsedMeansNeverUsed : Rule<ItemCase>
{
    public NeverUsedMeansNeverUsed()
        : base(
            new RuleInfo(
                "CON012",
                Severity.Error,
                "Kit never used has no date of first use",
                "Storage and use are counted differently; both at once cannot be.",
                $"Take out neverUsed, or the date of first use.",
                "record format examdocs/1"
            )
        ) =>
        Forbid(
            i => i.Item is { NeverUsed: true, FirstUsed: not null },
            "/neverUsed",
            i => $"it is recorded as never used, and as first used on {i.Item.FirstUsed}"
        );
}
