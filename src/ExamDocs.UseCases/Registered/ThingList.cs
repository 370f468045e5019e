using ExamDocs.Core.Identity;

namespace ExamDocs.UseCases.Registered;

/// <summary>Things in the order found, looked up by an entry about them and by a tag, so that not all are gone through.</summary>
internal sealed class ThingList
{
    private readonly List<StandingToday> _things = [];
    private readonly Dictionary<(int Visit, string? Id), SortedSet<int>> _byEntry = [];
    private readonly Dictionary<string, SortedSet<int>> _byTag = new(StringComparer.Ordinal);

    /// <summary>Those that this entry is about.</summary>
    public IEnumerable<StandingToday> About(ItemEntry entry) =>
        _byEntry.GetValueOrDefault((entry.Visit.Visit, entry.Item.Id), []).Select(at => _things[at]).Where(t => t.Thing.Has(entry));

    /// <summary>The place of the first that this entry may be about, by its tag and owner; null where there is none.</summary>
    public int? UnderOneTag(ItemEntry entry) =>
        Folded
            .Keys(entry.Item.Id)
            .SelectMany(key => _byTag.GetValueOrDefault(key, []))
            .Order()
            .Where(at => _things[at].Thing.MayBeUnderOneTag(entry))
            .Select(at => (int?)at)
            .FirstOrDefault();

    public StandingToday this[int at] => _things[at];

    public void Add(StandingToday thing)
    {
        _things.Add(thing);
        Enter(thing, _things.Count - 1);
    }

    /// <param name="at">Its place.</param>
    /// <param name="thing">Has every entry of the one that it replaces.</param>
    public void Replace(int at, StandingToday thing)
    {
        _things[at] = thing;
        Enter(thing, at);
    }

    private void Enter(StandingToday thing, int at)
    {
        foreach (var entry in thing.Thing.Entries)
        {
            Under(_byEntry, (entry.Visit.Visit, entry.Item.Id)).Add(at);
            foreach (var key in Folded.Keys(entry.Item.Id))
                Under(_byTag, key).Add(at);
        }
    }

    private static SortedSet<int> Under<TKey>(Dictionary<TKey, SortedSet<int>> index, TKey key)
        where TKey : notnull
    {
        if (!index.TryGetValue(key, out var places))
            index[key] = places = [];
        return places;
    }
}
