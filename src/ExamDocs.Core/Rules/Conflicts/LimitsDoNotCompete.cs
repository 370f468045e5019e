using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class LimitsDoNotCompete : Rule<ItemCase>
{
    public LimitsDoNotCompete()
        : base(
            new RuleInfo(
                "CON009",
                Severity.Error,
                "One set of maker's limits applies to an item",
                "Of two sets for the same maker, model and part nobody can say which holds.",
                $"Keep one of them, or give the part number that tells them apart.",
                "record format examdocs/1"
            )
        ) => Forbid(i => i.Limits.IsTie, "/model", i => $"{i.Limits.All.Count} sets of maker's limits apply to it equally");
}
