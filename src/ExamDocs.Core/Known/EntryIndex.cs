namespace ExamDocs.Core.Known;

/// <summary>Finds the entries that could be the same item: by id, former id and serial number.</summary>
internal sealed class EntryIndex
{
    private readonly ILookup<string, KnownEntry> _byId;
    private readonly ILookup<string, KnownEntry> _byFormerId;
    private readonly ILookup<string, KnownEntry> _bySerial;

    public EntryIndex(IReadOnlyList<KnownEntry> entries) =>
        (_byId, _byFormerId, _bySerial) = (
            Index(entries, e => e.Particulars.Id),
            Index(entries, e => e.Particulars.Formerly),
            Index(entries, e => e.Particulars.Serial)
        );

    /// <summary>Entries with this id, folded.</summary>
    public IEnumerable<KnownEntry> WithId(IReadOnlyList<string> idKeys) => idKeys.SelectMany(k => _byId[k]).Distinct();

    /// <summary>Entries that have this id, folded, or say that they had it formerly.</summary>
    public IEnumerable<KnownEntry> Called(IReadOnlyList<string> idKeys) =>
        idKeys.SelectMany(k => _byId[k].Concat(_byFormerId[k])).Distinct();

    /// <summary>Every entry that could be the same item, or that a question could be about; the entry itself left out.</summary>
    public IEnumerable<KnownEntry> Near(KnownEntry entry) =>
        entry
            .Particulars.Id.SelectMany(k => _byId[k].Concat(_byFormerId[k]))
            .Concat(entry.Particulars.Formerly.SelectMany(k => _byId[k]))
            .Concat(entry.Particulars.Serial.SelectMany(k => _bySerial[k]))
            .Where(e => !ReferenceEquals(e, entry))
            .Distinct();

    private static ILookup<string, KnownEntry> Index(IReadOnlyList<KnownEntry> entries, Func<KnownEntry, IReadOnlyList<string>> keys) =>
        entries.SelectMany(e => keys(e).Select(key => (key, e))).ToLookup(p => p.key, p => p.e, StringComparer.Ordinal);
}
