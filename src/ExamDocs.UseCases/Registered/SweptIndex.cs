using ExamDocs.Core.Identity;

namespace ExamDocs.UseCases.Registered;

/// <summary>Finds items of a register by their ids, so that not all are gone through for each.</summary>
internal sealed class SweptIndex
{
    private readonly IReadOnlyList<SweptThing> _all;
    private readonly ILookup<string, int> _byId;
    private readonly Dictionary<ThingOnRecord, int> _places;

    public SweptIndex(IReadOnlyList<SweptThing> all)
    {
        _all = all;
        _byId = all.Index()
            .SelectMany(
                t => t.Item.Thing.Entries.SelectMany(e => Folded.Keys(e.Item.Id)).Distinct(StringComparer.Ordinal),
                (t, key) => (key, t.Index)
            )
            .ToLookup(k => k.key, k => k.Index, StringComparer.Ordinal);
        _places = all.Index().ToDictionary(t => t.Item.Thing, t => t.Index);
    }

    /// <summary>The places of those that had this id in any record, and are or may be of this owner.</summary>
    public IEnumerable<int> WithId(string? id, string? owner) => WithId(id).Where(at => FirmName.MayBeSame(_all[at].Thing.Owner, owner));

    /// <summary>The place of an item; null where it is none of them.</summary>
    public int? PlaceOf(ThingOnRecord thing) => _places.TryGetValue(thing, out var at) ? at : null;

    private IEnumerable<int> WithId(string? id) => Folded.Keys(id).SelectMany(key => _byId[key]).Distinct();
}
