using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Core.Service;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class LimitsApplyToSomething : Rule<RowCase<MakersLimits>>
{
    public LimitsApplyToSomething() : base(new RuleInfo("CON011", Severity.Warning, "Maker's limits apply to an item of the record",
        "Limits under a misspelt model hold for nothing, and the item they were meant for goes without.",
        "Spell maker and model in the limits as they are spelt at the item.", "common practice, no source")) =>
        Forbid(l => IsUnused(l) && l.Context.Items.Any(i => i.Limits.All.Count == 0 && IsLike(l.Row, i.Item)) && !IsHeldFor(l), "/model",
            l => $"no item of the record is a {l.Row.Maker} {l.Row.Model}{(l.Row.PartNumber is { } n ? $" with part number {n}" : "")} that these limits apply to, and one like it has no limits");

    private static bool IsUnused(RowCase<MakersLimits> limits) => limits.Row is { Maker: { } maker, Model: { } model }
        && limits.Context.OfModel(maker, model).Count == 0;

    /// <summary>An item that is held because it may have missed these limits is told so itself.</summary>
    private static bool IsHeldFor(RowCase<MakersLimits> limits) => limits.Context.Items.Any(i => i.Limits.All.Count == 0 && MissedLimits.Of(i).Contains(limits));

    /// <summary>A list of limits may be longer than the record; only one that an item may have missed is worth a word.</summary>
    private static bool IsLike(MakersLimits limits, Item item) => IsNear(limits.Maker!, item.Maker) || IsNear(limits.Model!, item.Model);

    private static bool IsNear(string one, string? other) => other is not null && NearMiss.Of(other, [one]) is not null;
}
