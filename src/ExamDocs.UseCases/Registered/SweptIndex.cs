using ExamDocs.Core.Identity;

namespace ExamDocs.UseCases.Registered;

/// <summary>Finds items of a register by their ids, so that not all are gone through for each.</summary>
internal sealed class SweptIndex
{
    private readonly ILookup<string, int> _byId;
    private readonly Dictionary<ThingOnRecord, int> _places;

    public SweptIndex(IReadOnlyList<SweptThing> all)
    {
        _byId = all.Index()
            .SelectMany(
                t => t.Item.Thing.Entries.SelectMany(e => Folded.Keys(e.Item.Id)).Distinct(StringComparer.Ordinal),
                (t, key) => (key, t.Index)
            )
            .ToLookup(k => k.key, k => k.Index, StringComparer.Ordinal);
        _places = all.Index().ToDictionary(t => t.Item.Thing, t => t.Index);
    }

    /// <summary>The places of those that had this id in any record.</summary>
    public IEnumerable<int> WithId(string? id) => Folded.Keys(id).SelectMany(key => _byId[key]).Distinct();

    /// <summary>The places of these, in order.</summary>
    public IEnumerable<int> Of(IEnumerable<ThingOnRecord> things) =>
        things.Select(t => _places.GetValueOrDefault(t, -1)).Where(at => at >= 0).Order();
}
