using ExamDocs.Core.Cases;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Determination.Undetermined;

/// <summary>U6. From the part to the whole, never the other way round.</summary>
internal sealed class FittedPartIsUndetermined : IItemRule
{
    public OutcomeRuleInfo Info { get; } =
        new(
            "U6",
            "A part fitted to it is undetermined",
            "An item is used with the parts on it: nothing can be said of the whole that cannot be said of the part.",
            "common practice, no source"
        );

    public IEnumerable<Reason> Reasons(ItemCase item, Verdicts verdicts) =>
        item
            .Parts.Where(part => verdicts[part].Outcome is Outcome.Undetermined)
            .Select(part => Info.Because(w => w.Reasons.PartUndetermined(w.Name(part.Item))))
            .Concat(item.PartsElsewhere.SelectMany(part => Elsewhere(item, part)));

    /// <summary>A part of another record that is past its next examination, or past its last day of use, counts as undetermined.</summary>
    private IEnumerable<Reason> Elsewhere(ItemCase item, PartElsewhere part)
    {
        var on = item.ExaminedOn ?? item.Context.Record.Visit.ExaminedOn ?? item.Context.AsOf;
        if (part.Outcome is Outcome.Undetermined)
            yield return Info.Because(w => w.Reasons.PartUndetermined(part.Id));
        else if (part.Outcome is not Outcome.Withdraw && (part.NextBy < on || part.Until < on))
            yield return Info.Because(w => w.Reasons.PartOverdue(part.Id, part.NextBy < on ? part.NextBy!.Value : part.Until!.Value));
    }
}
