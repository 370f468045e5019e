using ExamDocs.Core.Identity;
using ExamDocs.Core.Known;
using ExamDocs.Core.Records;

namespace ExamDocs.UseCases.Registered;

internal sealed partial class ItemsOnRecord
{
    /// <summary>Items that a visit recorded, as they stand today; those that the visit decided nothing about are left out.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="ids">The items' ids there.</param>
    /// <returns>What is shown of each, what the visit decided, and what its latest later version did; null for none.</returns>
    public IEnumerable<(FoundItem Shown, ItemEntry Own, ItemEntry? Correction)> Of(int visit, IReadOnlyCollection<string> ids)
    {
        var asked = ids.ToHashSet(StringComparer.Ordinal);
        var rows = FilledIn(visit).Items.Where(i => i.Id is { } id && asked.Contains(id)).ToList();
        var touching = Touching([.. rows, .. asked.Select(id => new Item { Id = id })]);
        var entries = Entries(touching);
        var byId = entries
            .SelectMany(e => Folded.Keys(e.Item.Id).Select(key => (key, e)))
            .ToLookup(e => e.key, e => e.e, StringComparer.Ordinal);
        // Of the visits only the rows that have to do with an item are looked at: there may be thousands.
        var groups = new KnownGroups([.. touching.Select(Knowledge.Known)]);
        var things = new KnownThings(Documents, new AskedToday(groups.Touching, today).Of, entries, today);
        foreach (var own in entries.Where(e => e.Visit.Visit == visit && asked.Contains(e.Item.Id!)))
        {
            var correction = Folded
                .Keys(own.Item.Id)
                .SelectMany(key => byId[key])
                .Where(e => ThingOnRecord.IsReplacedBy(own, e))
                .MaxBy(e => e.Visit.Visit);
            yield return (things.Shown(things.Of([own])).MinBy(f => f.Standing)!, own, correction);
        }
    }
}
