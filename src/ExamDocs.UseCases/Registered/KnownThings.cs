using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using ExamDocs.Register;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// The things that entries are about, one for each owner and id however it is spelt, and how they hang together: what is fitted to
/// what, and what can be one thing under two tags.
/// </summary>
internal sealed class KnownThings
{
    private readonly FoldedIds _ids = new();
    private readonly IReadOnlyList<StandingToday> _things;
    private readonly ILookup<string, StandingToday> _bySerial;
    private readonly ILookup<string, StandingToday> _parts;

    /// <param name="register">The register.</param>
    /// <param name="known">Everything that is known of them.</param>
    /// <param name="today">The day on which it is looked at.</param>
    public KnownThings(DocumentRegister register, IReadOnlyList<ItemEntry> known, LocalDate today)
    {
        var entries = known.DistinctBy(e => (e.Visit.Visit, e.Item.Id)).ToList();
        _things =
        [
            .. entries
                .ToLookup(e => _ids.Of(e.Item.Id!), StringComparer.Ordinal)
                .SelectMany(OfOwners)
                .Select(of => new StandingToday(register, of, today)),
        ];
        _bySerial = _things
            .SelectMany(t => t.SerialKeys.Select(key => (Key: key, Thing: t)))
            .ToLookup(t => t.Key, t => t.Thing, StringComparer.Ordinal);
        var renewals = Renewals(entries);
        _parts = _things.ToLookup(t => t.Whole(renewals[_ids.Of(t.Id)]) is { } whole ? _ids.Of(whole) : "", StringComparer.Ordinal);
    }

    /// <summary>The things that these entries are about.</summary>
    public IReadOnlyList<StandingToday> Of(IEnumerable<ItemEntry> entries)
    {
        var wanted = entries.Select(e => (_ids.Of(e.Item.Id!), FirmName.Fold(e.Owner))).ToHashSet();
        return [.. _things.Where(t => wanted.Contains((_ids.Of(t.Id), FirmName.Fold(t.Owner))))];
    }

    /// <summary>What can be the same thing under another tag.</summary>
    public IEnumerable<StandingToday> Alike(StandingToday thing) =>
        thing.SerialKeys.SelectMany(key => _bySerial[key]).Distinct().Where(thing.MayBe);

    /// <summary>Each no better than what is fitted to it, over any number of steps, and than what it may be under another tag.</summary>
    public IReadOnlyList<FoundItem> Shown(IEnumerable<StandingToday> things) => [.. things.Select(t => Shown(t, []))];

    private FoundItem Shown(StandingToday thing, HashSet<StandingToday> above)
    {
        above.Add(thing);
        var parts = _parts[_ids.Of(thing.Id)].Where(p => FirmName.MayBeSame(p.Owner, thing.Owner) && !above.Contains(p)).ToList();
        return thing.With([.. parts.Select(p => Shown(p, [.. above]))], Alike(thing).Select(t => t.Alone));
    }

    /// <summary>What names no owner can belong to any of them.</summary>
    private static IEnumerable<IReadOnlyList<ItemEntry>> OfOwners(IEnumerable<ItemEntry> entries)
    {
        var owners = entries.ToLookup(e => FirmName.Fold(e.Owner), StringComparer.Ordinal);
        return owners
            .Where(o => o.Key.Length > 0 || owners.Count == 1)
            .Select(o => (IReadOnlyList<ItemEntry>)[.. o.Key.Length > 0 ? o.Concat(owners[""]) : o]);
    }

    /// <summary>Every renewal by the parts that it names, with its day.</summary>
    private ILookup<string, (Renewal, LocalDate)> Renewals(IEnumerable<ItemEntry> entries) =>
        entries
            .DistinctBy(e => e.Visit.Visit)
            .SelectMany(e => e.Record.Renewals.Select(r => (Renewal: r, Day: r.DoneOn ?? e.Visit.ExaminedOn ?? LocalDate.MinIsoValue)))
            .SelectMany(r =>
                new[] { r.Renewal.FittedPart, r.Renewal.RemovedPart }.OfType<string>().Select(part => (Part: _ids.Of(part), r))
            )
            .ToLookup(r => r.Part, r => r.r, StringComparer.Ordinal);
}
