using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Core.Service;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class LimitsApplyToSomething : Rule<RowCase<MakersLimits>>
{
    public LimitsApplyToSomething()
        : base(
            new RuleInfo(
                "CON011",
                Severity.Warning,
                "Maker's limits apply to an item of the record",
                "Limits under a misspelt model apply to nothing, and the item that they were meant for has none.",
                $"Spell maker and model in the limits as they are spelt at the item.",
                "common practice, no source"
            )
        ) =>
        Forbid(
            l => IsUnused(l) && !l.Context.MissedLimits.Contains(l) && IsLikeSome(l),
            "/model",
            l =>
                l.Row.PartNumber is { } part
                    ? (Message)(
                        $"these limits for {l.Row.Maker} {l.Row.Model}, part number {part}, apply to no item of the record, and an "
                        + $"item with a similar name has no limits"
                    )
                    : $"these limits for {l.Row.Maker} {l.Row.Model} apply to no item of the record, and an item with a similar name "
                        + $"has no limits"
        );

    private static bool IsUnused(RowCase<MakersLimits> limits) =>
        limits.Row is { Maker: { } maker, Model: { } model } && !limits.Context.Models.Contains(LimitsIndex.Key(maker, model));

    /// <summary>
    /// True where an item without limits has a maker or model like this entry's. A firm may keep one long list of limits, so an unused
    /// entry alone is no fault.
    /// </summary>
    private static bool IsLikeSome(RowCase<MakersLimits> limits)
    {
        var (maker, model) = (LimitsName.Of(limits.Row.Maker)!, LimitsName.Of(limits.Row.Model)!);
        return limits.Context.WithoutLimits.Any(n =>
            (n.Maker is not null && maker.IsNear(n.Maker, isOther: false)) || (n.Model is not null && model.IsNear(n.Model, isOther: false))
        );
    }
}
