using ExamDocs.Core.Identity;

namespace ExamDocs.UseCases.Registered;

internal sealed partial class ItemsOnRecord
{
    /// <summary>An item that a visit recorded, as it stands today; null where the visit decided nothing about it.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="item">The item's id there.</param>
    /// <returns>What is shown of it, what the visit decided, and what the latest later version of that visit did; null for none.</returns>
    public (FoundItem Shown, ItemEntry Own, ItemEntry? Correction)? Of(int visit, string item)
    {
        var row = FilledIn(visit).Items.FirstOrDefault(i => string.Equals(i.Id, item, StringComparison.Ordinal));
        var touching = Touching(item, row?.Serial);
        var (entries, visits) = (Entries(touching), touching.Select(Knowledge.Known).ToList());
        if (entries.Find(e => e.Visit.Visit == visit && string.Equals(e.Item.Id, item, StringComparison.Ordinal)) is not { } own)
            return null;
        var things = new KnownThings(Documents, new AskedToday(_ => visits, today).Of, entries, today);
        var correction = entries.Where(e => Folded.Same(e.Item.Id, item) && ThingOnRecord.IsReplacedBy(own, e)).MaxBy(e => e.Visit.Visit);
        return (things.Shown(things.Of([own])).MinBy(f => f.Standing)!, own, correction);
    }
}
