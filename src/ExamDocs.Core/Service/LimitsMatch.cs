using ExamDocs.Core.Records;

namespace ExamDocs.Core.Service;

/// <summary>
/// The maker's limits that apply to an item: by maker and model, and by part number where an entry gives one. The most
/// specific entry applies. Where entries give part numbers and the item's own is not among them, the item may be any of those
/// parts: then every entry of its maker and model applies, and the strictest of each limit holds.
/// </summary>
public sealed class LimitsMatch
{
    private LimitsMatch(IReadOnlyList<MakersLimits> applying, IReadOnlyList<MakersLimits> touching, bool partIsUnknown)
    {
        (All, Touching, PartIsUnknown) = (applying, touching, partIsUnknown);
        IsTie =
            applying.DistinctBy(l => l.PartNumber is { } part ? LimitsSpelling.Folded(part) : null, StringComparer.Ordinal).Count()
            < applying.Count;
        Applying = StrictestLimits.Of(applying);
        OfDiameter = StrictestLimits.NarrowestBand(applying);
    }

    /// <summary>The entries that apply as one: the strictest of each limit; null where none applies.</summary>
    public MakersLimits? Applying { get; }

    /// <summary>
    /// The entry whose diameters apply: of several, the one whose band lies within all others; null where there is none.
    /// </summary>
    public MakersLimits? OfDiameter { get; }

    /// <summary>True where two of the entries are for the same part number, or for none.</summary>
    public bool IsTie { get; }

    /// <summary>True where the item's own part number does not say which of the entries is for it.</summary>
    public bool PartIsUnknown { get; }

    /// <summary>Every entry that applies; of several, each binds.</summary>
    public IReadOnlyList<MakersLimits> All { get; }

    /// <summary>
    /// The entries whose errors reach the item: those that apply, and those too incomplete to say that they do not.
    /// </summary>
    public IReadOnlyList<MakersLimits> Touching { get; }

    internal static LimitsMatch For(Item item, LimitsIndex limits)
    {
        var matching = limits.Of(item);
        var ofPart = matching.Where(l => l.PartNumber is { } part && LimitsSpelling.AreSame(part, item.PartNumber)).ToList();
        var applying = ofPart.Count > 0 ? ofPart : matching;
        var partIsUnknown = ofPart.Count == 0 && matching.Exists(l => l.PartNumber is not null);
        return new LimitsMatch(applying, [.. applying, .. limits.Incomplete(item)], partIsUnknown);
    }
}
