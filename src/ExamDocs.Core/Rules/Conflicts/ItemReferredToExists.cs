using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class ItemReferredToExists : Rule<VisitCase>
{
    public ItemReferredToExists() : base(new RuleInfo("CON002", Severity.Error, "Every item referred to is in the record",
        "A row about an item that is not there says something about nothing, and what it says is lost.",
        "Type the id of an item of this record.", "record format examdocs/1")) =>
        Each(v => References(v.Context)
            .Where(r => r.Id is not null && !v.Context.KnowsItem(r.Id))
            .Select(r => Missing(r, v.Context)));

    /// <summary>These faults carry whole pointers: the rule looks at every list, not at the visit.</summary>
    protected override string PathOf(VisitCase subject) => "";

    private static Fault Missing((string Path, string? Id, string? About, bool MayMean) reference, RecordContext context)
    {
        if (reference.Id is "")
            return new Fault(reference.Path, "the row does not say of which item it is");
        var near = NearMiss.Of(reference.Id!, context.ItemIds);
        return new Fault(reference.Path, $"there is no item '{reference.Id}' in this record",
            near is null ? null : $"Did you mean '{near}'?", reference.About ?? (reference.MayMean ? near : null));
    }

    /// <summary>
    /// Every reference with the item it is about besides its own place, and whether the item that it was meant for must
    /// be held until that is known: a part that may be on it, a record that it is gone.
    /// </summary>
    private static IEnumerable<(string Path, string? Id, string? About, bool MayMean)> References(RecordContext c) =>
        c.Items.Select(i => ($"{i.Path}/fittedTo", i.Item.FittedTo, (string?)null, true))
            .Concat(c.Examinations.Select(e => ($"{e.Path}/item", e.ItemId, (string?)null, false)))
            .Concat(c.Renewals.SelectMany(r => new[]
            {
                ($"{r.Path}/item", r.Row.Item, null, false),
                ($"{r.Path}/removedPart", r.Row.RemovedPart, r.Row.Item, false),
                ($"{r.Path}/fittedPart", r.Row.FittedPart, r.Row.Item, false),
            }))
            .Concat(c.Remedies.Select(r => ($"{r.Path}/item", (string?)(r.Row.Item ?? ""), (string?)null, true)))
            .Concat(c.Releases.Select(r => ($"{r.Path}/item", r.Row.Item, (string?)null, true)))
            .Concat(c.Disposals.Select(r => ($"{r.Path}/item", (string?)(r.Row.Item ?? ""), (string?)null, true)));
}
