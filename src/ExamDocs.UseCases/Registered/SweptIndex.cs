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

    /// <summary>The places of those that had this id in any record, and in any record were or may be of this owner.</summary>
    public IEnumerable<int> WithId(string? id, string? owner) =>
        WithId(id).Where(at => _all[at].Thing.Entries.Any(e => FirmName.MayBeSame(e.Owner, owner)));

    /// <summary>
    /// The places of what a part says that it is fitted to, where its owner has no such thing: kit of another owner at the same employer's,
    /// as where a hired part is on the employer's own harness.
    /// </summary>
    public IEnumerable<int> OfAnotherOwner(SweptThing part) =>
        part.Thing.Rows[0].Item.FittedTo is { } whole && !WithId(whole, part.Thing.Owner).Any()
            ? WithId(whole).Where(at => FirmName.Same(_all[at].Shown.Employer, part.Shown.Employer))
            : [];

    /// <summary>The place of an item; null where it is none of them.</summary>
    public int? PlaceOf(ThingOnRecord thing) => _places.TryGetValue(thing, out var at) ? at : null;

    private IEnumerable<int> WithId(string? id) => Folded.Keys(id).SelectMany(key => _byId[key]).Distinct();
}
