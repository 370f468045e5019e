using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class LimitsApplyToSomething : Rule<RowCase<MakersLimits>>
{
    public LimitsApplyToSomething() : base(new RuleInfo("CON011", Severity.Warning, "Maker's limits apply to an item of the record",
        "Limits under a misspelt model hold for nothing, and the item they were meant for goes without.",
        "Spell maker and model in the limits as they are spelt at the item.", "common practice, no source")) =>
        Forbid(l => l.Row is { Maker: not null, Model: not null } && !l.Context.Items.Any(i => i.Limits.All.Contains(l)),
            "/model", l => $"no item of the record is a {l.Row.Maker} {l.Row.Model}{(l.Row.PartNumber is { } n ? $" with part number {n}" : "")} that these limits apply to");
}
