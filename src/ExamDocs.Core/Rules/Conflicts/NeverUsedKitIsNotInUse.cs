using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class NeverUsedKitIsNotInUse : Rule<ItemCase>
{
    public NeverUsedKitIsNotInUse()
        : base(
            new RuleInfo(
                "CON034",
                Severity.Warning,
                "Kit never used is not recorded as in use",
                "Time in use is not counted for kit never used; what is in use has a first day of use.",
                $"Type stored as the status; or take out neverUsed and type the date of first use.",
                "record format examdocs/1"
            )
        ) =>
        Forbid(
            i => i.Item is { NeverUsed: true, FirstUsed: null, Status: ItemStatus.InUse },
            "/neverUsed",
            _ => $"it is recorded as never used, but its status is in-use"
        );
}
