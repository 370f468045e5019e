using ExamDocs.Core.Cases;
using NodaTime;

namespace ExamDocs.Core.Determination.FitUntil;

/// <summary>D3.</summary>
internal sealed class FittedPartMayBeUsedUntil : IUntilRule
{
    public OutcomeRuleInfo Info { get; } = new("D3", "A part fitted to it may be used only until a day",
        "The whole may be used no longer than the part on it, unless that part is renewed.", "common practice, no source");

    public IEnumerable<(LocalDate LastDay, Reason Reason)> Days(ItemCase item, Verdicts verdicts) =>
        from part in item.Parts
        let last = verdicts[part].LastDay
        where last is not null
        select (last.Value, Info.Because(w => w.NotAfterPart(last.Value, w.Name(part))));
}
